import { expect, test } from 'vitest';
import { whyNobodyReleases } from '../../../client/screens/coverings/who-releases.ts';

const [keeper, carpenter, inspector] = [
  { id: 'k', role: 'owner' },
  { id: 'c', role: 'carpenter' },
  { id: 'i', role: 'inspector' },
] as const;
const two = { fourEyes: true };

test('an inspector can release, and the keeper what another has said to be ready', () => {
  expect(whyNobodyReleases([keeper, inspector], { asker: 'k', ...two })).toBeNull();
  expect(whyNobodyReleases([keeper, carpenter], { asker: 'c', ...two })).toBeNull();
});

test('who asks alone cannot release, unless the house does without the second person', () => {
  expect(whyNobodyReleases([keeper, carpenter], { asker: 'k', ...two })).toBe('onlyYou');
  expect(whyNobodyReleases([keeper, carpenter], { asker: 'k', fourEyes: false })).toBeNull();
});

test('where nobody has a role for it, nobody can', () =>
  expect(whyNobodyReleases([carpenter], { asker: 'c', ...two })).toBe('nobody'));
