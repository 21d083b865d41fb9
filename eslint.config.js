import js from '@eslint/js';
import tseslint from 'typescript-eslint';
import { noLiteralText } from './tests/support/no-literal-text.mjs';

const TYPED = ['**/*.ts', '**/*.tsx'];
const PURE = 'The domain knows no clock, no chance and no machine: take the value as an argument.';

const importForms = [
  {
    regex: String.raw`^\.{1,2}/(?!.*\.(ts|tsx|css|json|svg|mjs)$)`,
    message: 'Relative imports carry their extension.',
  },
];
const domainByName = {
  regex: String.raw`^(\.\./)+(server/)?domain/`,
  message: 'Import the domain by its name: #domain/…',
};

export default tseslint.config(
  { ignores: ['dist', 'node_modules', 'data', 'test-results', 'tests/fixtures'] },
  {
    linterOptions: { noInlineConfig: true },
    rules: {
      'max-lines': ['warn', { max: 260, skipBlankLines: true }],
      'no-restricted-exports': [
        'error',
        { restrictDefaultExports: { direct: true, defaultFrom: true, named: true } },
      ],
    },
  },
  js.configs.recommended,
  {
    files: ['**/*.mjs', '**/*.js', '**/*.cjs'],
    languageOptions: {
      globals: { process: 'readonly', console: 'readonly', performance: 'readonly', module: 'writable' },
    },
  },
  {
    files: ['server/**/*.mjs', 'tests/**/*.mjs'],
    languageOptions: { globals: { setTimeout: 'readonly', clearTimeout: 'readonly', URL: 'readonly' } },
  },
  {
    files: TYPED,
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', ignoreRestSiblings: true }],
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/require-await': 'off',
      eqeqeq: 'error',
      'no-restricted-imports': ['error', { patterns: [...importForms, domainByName] }],
    },
  },
  {
    files: ['server/**/*.ts'],
    ignores: ['server/config.ts'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'process', property: 'env', message: 'Only server/config.ts reads the environment.' },
      ],
    },
  },
  {
    files: ['server/domain/**/*.ts'],
    rules: {
      'no-restricted-imports': ['error', { patterns: importForms }],
      'no-restricted-globals': [
        'error',
        ...[
          'fetch',
          'process',
          'Buffer',
          'performance',
          'crypto',
          'console',
          'setTimeout',
          'setInterval',
        ].map((name) => ({
          name,
          message: PURE,
        })),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: PURE },
        { object: 'Math', property: 'random', message: PURE },
        { object: 'Temporal', property: 'Now', message: PURE },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: PURE },
        { selector: "CallExpression[callee.name='Date']", message: PURE },
        { selector: "Identifier[name='globalThis']", message: PURE },
      ],
    },
  },
  {
    files: ['client/**/*.tsx'],
    plugins: { arakabe: { rules: { 'no-literal-text': noLiteralText } } },
    rules: {
      'arakabe/no-literal-text': 'error',
      'max-lines': ['warn', { max: 200, skipBlankLines: true }],
      // A promise in an event handler is what React expects.
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
    },
  },
  {
    // A wrong shape of an answer fails the test itself.
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    files: ['*.config.{js,ts}', 'client/*.config.ts', 'tests/support/*-reporter.mjs'],
    rules: { 'no-restricted-exports': 'off' },
  },
);
