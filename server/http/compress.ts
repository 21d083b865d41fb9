import compression from 'compression';
import type { RequestHandler } from 'express';
import { readdirSync } from 'node:fs';
import path from 'node:path';

/**
 * Answers of the API: JSON and CSV. An answer to a POST may hold a fresh secret beside what was sent, from
 * whose compressed length it could be guessed (BREACH). The event stream must never wait for more to come.
 */
export function compressAnswers(): RequestHandler {
  return compression({
    filter: (req, res) =>
      req.method === 'GET' &&
      !/^text\/event-stream/.test(String(res.getHeader('content-type'))) &&
      compression.filter(req, res),
  });
}

/** The better one first: brotli is RFC 7932, gzip RFC 1952. */
const CODINGS = [
  { coding: 'br', suffix: '.br' },
  { coding: 'gzip', suffix: '.gz' },
] as const;

/** Leads to the form of a file that the build has compressed, where the browser reads it and there is one. */
export function preferCompressed(folder: string): RequestHandler {
  const made = new Set(readdirSync(folder).filter((name) => /\.(br|gz)$/.test(name)));
  return (req, res, next) => {
    const name = req.path.slice(1);
    const found = CODINGS.find(
      ({ coding, suffix }) => made.has(name + suffix) && req.acceptsEncodings(coding),
    );
    res.vary('accept-encoding');
    if (found) {
      res.type(path.extname(name)).setHeader('content-encoding', found.coding);
      req.url = `/${name}${found.suffix}`;
    }
    next();
  };
}
