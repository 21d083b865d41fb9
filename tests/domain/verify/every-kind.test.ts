import { expect, it } from 'vitest';
import { STATEMENTS } from '#domain/ledger/statements';
import { ACTS } from '#domain/verify/replay/replay';

it('the verifier knows every kind and version of statement that the writer knows', () => {
  const unknown = Object.entries(STATEMENTS).flatMap(([kind, versions]) =>
    Object.keys(versions)
      .filter((version) => ACTS[kind]?.[Number(version)] === undefined)
      .map((version) => `${kind} ${version}`),
  );
  expect(unknown).toEqual([]);
});
