// Ids for notebooks and for what is kept aside, hardly to be met twice. `crypto.randomUUID` is there only where the
// page came over HTTPS; random bytes are there everywhere.

/** 13 characters: 48 random bits as two groups. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(6));
  const digits = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${digits.slice(0, 8)}-${digits.slice(8)}`;
}
