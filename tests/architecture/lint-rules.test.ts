import path from 'node:path';
import { ESLint } from 'eslint';
import { expect, test } from 'vitest';
import { ROOT } from '../support/project-files.ts';

/** Lints a text as if it stood in that file. Types are left out: the file does not exist. */
async function lint(file: string, text: string): Promise<string[]> {
  const eslint = new ESLint({
    cwd: ROOT,
    overrideConfig: [
      {
        files: ['**/*.ts', '**/*.tsx'],
        languageOptions: { parserOptions: { projectService: false } },
        rules: await typedRulesOff(),
      },
    ],
  });
  const [result] = await eslint.lintText(text, { filePath: path.join(ROOT, file) });
  return (result?.messages ?? []).map((message) => message.ruleId ?? message.message);
}

async function typedRulesOff() {
  const { configs } = await import('typescript-eslint');
  return configs.disableTypeChecked.rules ?? {};
}

const PURITY: [string, string][] = [
  ['export const a = new Date();', 'no-restricted-syntax'],
  ['export const a = Date();', 'no-restricted-syntax'],
  ['export const a = Date.now();', 'no-restricted-properties'],
  ['export const a = Math.random();', 'no-restricted-properties'],
  ['export const a = globalThis;', 'no-restricted-syntax'],
  ["export const a = fetch('x');", 'no-restricted-globals'],
  ['export const a = process.pid;', 'no-restricted-globals'],
  ['export const a = Buffer.alloc(1);', 'no-restricted-globals'],
];
test.each(PURITY)('in the domain: %s', async (text, rule) => {
  expect(await lint('server/domain/planted.ts', text)).toEqual([rule]);
});
test('a date of a given instant is pure', async () => {
  expect(await lint('server/domain/planted.ts', 'export const a = new Date(0);')).toEqual([]);
});

const jsx = (inner: string) => `export const A = (p: { s: string; b: boolean }) => [p, ${inner}];`;
test.each([
  '<p>Photos</p>',
  '<p>写真</p>',
  "<p>{'Photos'}</p>",
  "<p>{p.b ? 'Photos' : p.s}</p>",
  '<p>{`Photos ${p.s}`}</p>',
  "<p>{p.b && 'Photos'}</p>",
  "<p>{'Photos ' + p.s}</p>",
  '<img alt="Photos" />',
  "<input placeholder={p.s || 'Photos'} />",
  '<a aria-label="Photos" href="x" />',
])('no text in a component: %s', async (inner) => {
  expect(await lint('client/planted.tsx', jsx(inner))).toEqual(['arakabe/no-literal-text']);
});
test.each([
  '<p className="a b">{p.s}</p>',
  '<p>— 12 × 3</p>',
  '<img alt="" />',
  "<p key={'x'}>{p.s} / {p.s}</p>",
])('what is no text passes: %s', async (inner) =>
  expect(await lint('client/planted.tsx', jsx(inner))).toEqual([]),
);

test.each([
  ['server/config.ts', 'export const a: any = 1;', '@typescript-eslint/no-explicit-any'],
  ['server/planted.ts', 'export const a = process.env;', 'no-restricted-properties'],
  ['server/planted.ts', "import { a } from './a';\nexport { a };", 'no-restricted-imports'],
  [
    'server/services/planted.ts',
    "import { a } from '../domain/a.ts';\nexport { a };",
    'no-restricted-imports',
  ],
  ['server/planted.ts', 'export default 1;', 'no-restricted-exports'],
])('%s: %s', async (file, text, rule) => {
  expect(await lint(file, text)).toEqual([rule]);
});

test('nothing can be switched off by a comment', async () => {
  const text = ['/* eslint-', 'disable */', '\nexport const a: any = 1;'].join('');
  expect(await lint('server/planted.ts', text)).toContain('@typescript-eslint/no-explicit-any');
});
