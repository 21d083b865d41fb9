/** What can be said of an e-mail and a password before the server is asked. */
export const PASSWORD_MIN = 10;

export function looksLikeEmail(text: string): boolean {
  return /^[^\s@]+@[^\s@]+\.[^\s@]+$/.test(text.trim());
}

/** Counted as the server counts: UTF-16 code units. */
export function isLongEnough(password: string): boolean {
  return password.length >= PASSWORD_MIN;
}
