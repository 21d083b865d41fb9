import { canonicalJson, type Json } from '../ledger/canonical-json.ts';
import { Wrong, type Place } from './wrong.ts';

/** Decodes strictly: no byte that would be replaced, and no byte order mark that would be dropped. */
export function strictText(bytes: Uint8Array, place: Place): string {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Wrong('not-utf8', place);
  }
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) throw new Wrong('not-utf8', place);
  return text;
}

/** Reads text that must be canonical JSON (RFC 8785); `from` is the byte at which it begins in its file. */
export function canonicalValue(text: string, place: Place, from = 0): Json {
  let value: Json;
  try {
    value = JSON.parse(text) as Json;
  } catch {
    throw new Wrong('not-json', place);
  }
  let canonical = '';
  try {
    canonical = canonicalJson(value);
  } catch {
    // A lone surrogate, which no canonical text holds.
  }
  if (canonical === text) return value;
  throw new Wrong('not-canonical', { ...place, byte: from + firstDifference(text, canonical) });
}

function firstDifference(text: string, canonical: string): number {
  let at = 0;
  while (at < text.length && text[at] === canonical[at]) at += 1;
  return new TextEncoder().encode(text.slice(0, at)).length;
}
