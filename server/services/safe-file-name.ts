/** A file name that every system takes, and that leads to no other folder; `nameless` where nothing is left of `stem`. */
export function safeFileName(stem: string, extension: string, nameless: string): string {
  // By characters: half a surrogate pair cannot stand in a header.
  const short = [...withoutReserved(stem).trim()].slice(0, 200).join('');
  return `${short === '' ? nameless : short}.${extension}`;
}

/** Without path, control or reserved characters, or dots in front. */
export function withoutReserved(name: string): string {
  return name.replace(/[\p{Cc}\p{Cf}\p{Cs}/\\:*?"<>|]+/gu, '_').replace(/^[.\s]+/u, '');
}
