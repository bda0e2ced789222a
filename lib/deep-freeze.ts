// Plain data that nobody can change, at any depth.

/** The same data, frozen with all that is in it. */
export function deepFreeze<Data>(data: Data): Data {
  if (typeof data === 'object' && data !== null) for (const part of Object.values(data)) deepFreeze(part as unknown);
  return Object.freeze(data);
}
