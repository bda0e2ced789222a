// A record without one of its fields.

export function without<Value>(record: Readonly<Record<string, Value>>, name: string): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([field]) => field !== name));
}
