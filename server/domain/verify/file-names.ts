/** What an archive consists of. */
export const MANIFEST = 'manifest.json';
export const LEDGER = 'ledger.jsonl';
export const PAGES = ['check.html', 'index.html'] as const;
export const TABLES = ['coverings', 'members', 'photos', 'releases', 'tags'] as const;
export type TableName = (typeof TABLES)[number];

export const tableFile = (table: TableName) => `tables/${table}.json`;

const EXTENSIONS: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/tiff': 'tif',
  'image/heic': 'heic',
  'image/avif': 'avif',
};

/** The name of an original; a media type that is not known here has no ending of its own. */
export function originalFile(sha256: string, mediaType: string): string {
  return `originals/${sha256}.${EXTENSIONS[mediaType] ?? 'bin'}`;
}
