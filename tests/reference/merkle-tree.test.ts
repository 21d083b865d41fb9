import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  EMPTY_FRONTIER,
  appendLeaf,
  leafHash,
  nodeHash,
  packFrontier,
  treeHead,
  unpackFrontier,
  type Frontier,
} from '#domain/ledger/merkle-tree';

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest();
const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
const text = (value: string) => new TextEncoder().encode(value);

/** Certificate Transparency reference leaves and roots: transparency-dev/merkle, testonly/constants.go. */
const LEAVES = [
  '',
  '00',
  '10',
  '2021',
  '3031',
  '40414243',
  '5051525354555657',
  '606162636465666768696a6b6c6d6e6f',
];
const ROOTS = [
  'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
  'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
  '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
  '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
  'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
  '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
];

/** RFC 6962 §2.1 word for word, by recursion: the oracle for the frontier. */
function mth(data: readonly Uint8Array[]): Uint8Array {
  if (data.length === 0) return sha256(new Uint8Array());
  if (data.length === 1) return sha256(Buffer.concat([Buffer.of(0), data[0] as Uint8Array]));
  let k = 1;
  while (k * 2 < data.length) k *= 2;
  return sha256(Buffer.concat([Buffer.of(1), mth(data.slice(0, k)), mth(data.slice(k))]));
}

function grow(data: readonly Uint8Array[]): Frontier {
  return data.reduce((frontier, d) => appendLeaf(sha256, frontier, leafHash(sha256, d)), EMPTY_FRONTIER);
}

describe('RFC 6962 Merkle tree', () => {
  it('gives the published root at every size from 0 to 8', () => {
    const leaves = LEAVES.map((leaf) => Buffer.from(leaf, 'hex'));
    ROOTS.forEach((root, size) => expect(hex(treeHead(sha256, grow(leaves.slice(0, size))))).toBe(root));
  });

  it('hashes leaves and nodes as published (transparency-dev/merkle, rfc6962_test.go)', () => {
    expect(hex(leafHash(sha256, text('L123456')))).toBe(
      '395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56',
    );
    expect(hex(nodeHash(sha256, text('N123'), text('N456')))).toBe(
      'aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb',
    );
  });

  it('equals the recursive definition for any leaves', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 40 }), { maxLength: 70 }), (data) => {
        expect(hex(treeHead(sha256, grow(data)))).toBe(hex(mth(data)));
      }),
    );
  });

  it('packs and unpacks the frontier, and refuses bytes that do not fit the size', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 8 }), { maxLength: 40 }), (data) => {
        const frontier = grow(data);
        const again = unpackFrontier(frontier.size, packFrontier(frontier));
        expect(hex(treeHead(sha256, again))).toBe(hex(treeHead(sha256, frontier)));
        expect(() => unpackFrontier(frontier.size * 2 + 1, packFrontier(frontier))).toThrow(RangeError);
      }),
    );
  });
});
