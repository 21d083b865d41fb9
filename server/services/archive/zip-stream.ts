import { makeZip, predictLength } from 'client-zip';

/** A file on its way into an archive. */
export interface OutgoingFile {
  readonly name: string;
  readonly bytes: number;
  content(): AsyncIterable<Uint8Array>;
}

/** Bytes of the ZIP with these files, exactly. */
export function zipBytes(files: readonly OutgoingFile[]): number {
  return Number(predictLength(files.map(({ name, bytes }) => ({ name, size: bytes }))));
}

/**
 * A ZIP of stored files (ZIP64 where it must be), made no faster than it is read, so that nothing large is held.
 * Ends the reading of the file in hand when it is itself ended early. Throws where a file has other bytes than it said.
 */
export async function* zipStream(
  files: readonly OutgoingFile[],
  madeAt: Date,
): AsyncGenerator<Uint8Array, void> {
  let inHand: AsyncGenerator<Uint8Array> | undefined;
  const inputs = function* () {
    for (const file of files) {
      inHand = exactly(file);
      yield { name: file.name, size: file.bytes, lastModified: madeAt, input: inHand };
    }
  };
  const reader = makeZip(inputs()).getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    await reader.cancel().catch(() => undefined);
    await inHand?.return(undefined);
  }
}

async function* exactly(file: OutgoingFile): AsyncGenerator<Uint8Array> {
  const { name, bytes } = file;
  let given = 0;
  for await (const piece of file.content()) {
    given += piece.length;
    if (given > bytes) break;
    yield piece;
  }
  if (given !== bytes) throw new Error(`${name} has not the ${bytes} bytes that it should have.`);
}
