import express, { type Router } from 'express';
import path from 'node:path';
import { preferCompressed } from './compress.ts';

/** The built client: hashed files for ever, the page itself never from a cache, every other path is the page. */
export function serveClient(folder: string): Router {
  const router = express.Router();
  const assets = path.join(folder, 'assets');
  router.use(
    '/assets',
    preferCompressed(assets),
    express.static(assets, { immutable: true, maxAge: '1y', fallthrough: false }),
  );
  router.use(express.static(folder, { index: false, maxAge: '1h' }));
  router.get('/{*page}', (req, res, next) => {
    if (!req.accepts('html')) return next();
    res.setHeader('cache-control', 'no-cache');
    res.sendFile(path.join(folder, 'index.html'));
  });
  return router;
}
