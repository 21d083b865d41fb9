import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ROOT } from '../support/project-files.ts';

/** A small project of its own, so that nobody who works in this one meets a planted file. */
const PLANTED: Record<string, string> = {
  'package.json': JSON.stringify({
    type: 'module',
    imports: { '#domain/*': './server/domain/*.ts' },
    dependencies: { pg: '*', zod: '*', 'csv-parse': '*', kysely: '*' },
    devDependencies: { esbuild: '*', react: '*' },
  }),
  'tsconfig.json': '{}',
  'server/http/app.ts': 'export const app = 1;',
  'server/storage/tags.ts': 'export interface Row { id: string }\nexport const tags = 1;',
  'server/imaging/read.ts': "import { tags } from '../storage/tags.ts';\nexport const read = tags;",
  'server/config.ts': "export const readConfig = 1;\nexport type Config = 'a';",
  'server/serve.ts': "import { app } from './http/app.ts';\nexport const serve = app;",
  'server/main.ts':
    "import { serve } from './serve.ts';\nimport { readConfig } from './config.ts';\nexport const main = [serve, readConfig];",
  'server/domain/good.ts': "import { z } from 'zod';\nexport const good = z.string();",
  'server/domain/bad-http.ts': "import { app } from '../http/app.ts';\nexport const bad = app;",
  'server/domain/bad-node.ts': "import fs from 'node:fs';\nexport const bad = fs;",
  'server/domain/bad-package.ts': "import type pg from 'pg';\nexport type Bad = pg.Pool;",
  'server/domain/ledger/canonical-json.ts': 'export const encode = 1;',
  'server/domain/verify/good.ts':
    "import { encode } from '../ledger/canonical-json.ts';\nexport const good = encode;",
  'server/domain/verify/bad.ts': "import { good } from '../good.ts';\nexport const bad = good;",
  'server/domain/verify/bad-package.ts': "import { z } from 'zod';\nexport const bad = z.string();",
  'server/services/good.ts':
    "import { good } from '#domain/good';\nimport type { Row } from '../storage/tags.ts';\nimport type { Kysely } from 'kysely';\nimport { parse } from 'csv-parse';\nimport { createHash } from 'node:crypto';\nexport type R = [Row, Kysely<unknown>];\nexport const s = [good, parse, createHash];",
  'server/services/bad-storage.ts': "import { tags } from '../storage/tags.ts';\nexport const bad = tags;",
  'server/services/bad-file.ts': "import fs from 'node:fs/promises';\nexport const bad = fs;",
  'server/services/bad-http.ts': "import type { app } from '../http/app.ts';\nexport type Bad = typeof app;",
  'server/services/bad-config.ts':
    "import { readConfig } from '../config.ts';\nexport const bad = readConfig;",
  'server/storage/bad-http.ts': "import { app } from '../http/app.ts';\nexport const bad = app;",
  'server/storage/bad-dev.ts': "import { build } from 'esbuild';\nexport const bad = build;",
  'server/http/bad-composition.ts': "import { main } from '../main.ts';\nexport const bad = main;",
  'server/storage/loop-a.ts': "import { b } from './loop-b.ts';\nexport const a = (): unknown => b;",
  'server/storage/loop-b.ts': "import { a } from './loop-a.ts';\nexport const b = (): unknown => a;",
  'server/storage/bad-lost.ts': "import { x } from './nowhere.ts';\nexport const bad = x;",
  'server/demo/good.ts':
    "import { good } from '#domain/good';\nimport { Worker } from 'node:worker_threads';\nexport const demo = [good, Worker];",
  'server/demo/site/good.ts':
    "import { demo } from '../good.ts';\nimport { createServer } from 'node:http';\nexport const site = [demo, createServer];",
  'server/demo/site/bad-service.ts': "import { s } from '../../services/good.ts';\nexport const bad = s;",
  'server/demo.ts': "import { site } from './demo/site/good.ts';\nexport const run = site;",
  'server/demo/bad-storage.ts': "import { tags } from '../storage/tags.ts';\nexport const bad = tags;",
  'server/storage/bad-demo.ts': "import { demo } from '../demo/good.ts';\nexport const bad = demo;",
  'client/good.tsx':
    "import { good } from '#domain/good';\nimport { useState } from 'react';\nexport const c = [good, useState];",
  'client/bad-server.ts': "import { tags } from '../server/storage/tags.ts';\nexport const bad = tags;",
  'client/bad-node.ts': "import path from 'node:path';\nexport const bad = path;",
  'client/bad-package.ts': "import pg from 'pg';\nexport const bad = pg;",
  'server/http/bad-client.ts': "import { c } from '../../client/good.tsx';\nexport const bad = c;",
};

const EXPECTED = [
  'client-sees-the-domain-only: client/bad-package.ts',
  'client-sees-the-domain-only: client/bad-server.ts',
  'composition-is-the-top: server/http/bad-composition.ts',
  'configuration-is-handed-on: server/services/bad-config.ts',
  'demo-is-a-room-of-its-own: server/demo/bad-storage.ts',
  'demo-uses-the-api: server/demo/site/bad-service.ts',
  'domain-is-pure: server/domain/bad-http.ts',
  'domain-is-pure: server/domain/bad-node.ts',
  'domain-is-pure: server/domain/bad-package.ts',
  'http-is-the-outside: server/domain/bad-http.ts',
  'http-is-the-outside: server/services/bad-http.ts',
  'http-is-the-outside: server/storage/bad-http.ts',
  'no-cycle: server/storage/loop-a.ts',
  'no-node-in-the-browser: client/bad-node.ts',
  'nobody-needs-the-demo: server/storage/bad-demo.ts',
  'not-found: server/storage/bad-lost.ts',
  'server-needs-real-dependencies: server/storage/bad-dev.ts',
  'server-stands-alone: server/http/bad-client.ts',
  'services-decide-only: server/services/bad-config.ts',
  'services-decide-only: server/services/bad-file.ts',
  'services-decide-only: server/services/bad-storage.ts',
  'services-do-not-know-http: server/services/bad-http.ts',
  'storage-and-imaging-are-strangers: server/imaging/read.ts',
  'verifier-is-a-stranger: server/domain/verify/bad-package.ts',
  'verifier-is-a-stranger: server/domain/verify/bad.ts',
];

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-planted-'));
  for (const [file, text] of Object.entries(PLANTED)) {
    await mkdir(path.join(folder, path.dirname(file)), { recursive: true });
    await writeFile(path.join(folder, file), text);
  }
  await symlink(path.join(ROOT, 'node_modules'), path.join(folder, 'node_modules'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test('every planted import against the direction is reported, and no allowed one', async () => {
  const report = await cruise(folder, ['server', 'client']);
  const found = new Set(report.violations.map((one) => `${one.rule.name}: ${one.from}`));
  expect([...found].sort()).toEqual(EXPECTED);
});

interface Report {
  readonly violations: readonly { from: string; rule: { name: string } }[];
}

/** Dependency-cruiser ends with the number of violations as its exit code: its report counts, not the code. */
function cruise(cwd: string, rooms: string[]): Promise<Report> {
  const program = path.join(ROOT, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const config = path.join(ROOT, '.dependency-cruiser.cjs');
  const args = [program, '--config', config, '--output-type', 'json', ...rooms];
  return new Promise((resolve, reject) => {
    execFile(process.execPath, args, { cwd, maxBuffer: 50_000_000 }, (_error, stdout, stderr) => {
      try {
        resolve((JSON.parse(stdout) as { summary: Report }).summary);
      } catch {
        reject(new Error(`dependency-cruiser gave no report: ${stderr}`));
      }
    });
  });
}
