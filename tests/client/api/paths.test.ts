import { describe, expect, test } from 'vitest';
import { ROUTES } from '#domain/contract/routes';
import { addressOf } from '../../../client/api/address.ts';
import { PATHS } from '../../../client/api/paths.ts';

test('the table of paths is the contract', () => {
  const contract = Object.entries(ROUTES).map(([name, route]) => [name, [route.method, route.path]]);
  expect(PATHS).toEqual(Object.fromEntries(contract));
});

describe('addresses', () => {
  // RFC 3986, 2.1: everything outside the unreserved set is percent-encoded as UTF-8.
  test('escape marks', () => {
    expect(addressOf('readMember', { house: 'h', mark: 'い三/又' })).toBe(
      '/api/v1/houses/h/members/%E3%81%84%E4%B8%89%2F%E5%8F%88',
    );
  });
  test('leave out what the query does not say', () => {
    expect(addressOf('listPhotos', { house: 'h' }, { untagged: '1', after: undefined })).toBe(
      '/api/v1/houses/h/photos?untagged=1',
    );
  });
  test('refuse a path that would go elsewhere', () => {
    expect(() => addressOf('readPhoto', {} as { photo: string })).toThrow(/photo/);
  });
});
