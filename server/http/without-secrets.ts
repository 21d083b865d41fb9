/** Addresses whose next part is a secret. */
const SECRET_FOLLOWS = /\/(links?|guests?|calendar|passwords?)\/[^/?]+/giu;
/** 256 bits in base64url have 43 characters. */
const LOOKS_SECRET = /[\w-]{40,}/gu;

/** The path of a request as it may be logged. */
export function withoutSecrets(path: string): string {
  return path.replace(SECRET_FOLLOWS, '/$1/[secret]').replace(LOOKS_SECRET, '[secret]').slice(0, 500);
}
