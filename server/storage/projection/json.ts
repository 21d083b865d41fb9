/** jsonb takes its value as text: pg would send a JavaScript array as a PostgreSQL array. */
export function jsonOrNull(value: object | null): string | null {
  return value === null ? null : JSON.stringify(value);
}
