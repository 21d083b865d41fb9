import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '#domain/ledger/canonical-json';

/** RFC 8785 test data of its author (cyberphone/json-canonicalization, testdata/): input and SHA-256 of the output. */
const FILES: [name: string, input: string, sha256: string][] = [
  [
    'arrays',
    '[56,{"d":true,"10":null,"1":[]}]',
    '099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42',
  ],
  [
    'structures',
    '{"1":{"f":{"f":"hi","F":5},"\\n":56},"10":{},"":"empty","a":{},"111":[{"e":"yes","E":"no"}],"A":{}}',
    '605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5',
  ],
  [
    'values, the example of RFC 8785 §3.2.2',
    '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    '2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb',
  ],
  [
    'french',
    '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"}',
    'd99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5',
  ],
  [
    'unicode',
    '{"Unnormalized Unicode":"A\\u030a"}',
    '0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3',
  ],
];

/** RFC 8785 Appendix B: IEEE 754 bits and the text of the number. */
const NUMBERS: [bits: string, text: string][] = [
  ['4340000000000001', '9007199254740994'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['44b52d02c7e14af6', '1e+23'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
];

describe('RFC 8785 canonical JSON', () => {
  it.each(FILES)('gives the published bytes: %s', (_, input, sha256) => {
    const canonical = canonicalJson(JSON.parse(input));
    expect(createHash('sha256').update(canonical).digest('hex')).toBe(sha256);
  });

  it.each(NUMBERS)('writes the number %s as %s', (bits, text) => {
    const number = Buffer.from(bits, 'hex').readDoubleBE();
    expect(canonicalJson(number)).toBe(text);
  });

  it('orders keys by UTF-16 code units: an emoji before U+FB33 (RFC 8785 §3.2.3, example "weird")', () => {
    const keys = ['\ufb33', '😂', '€', 'ö', '\u0080', '1', '\r', '\n'];
    const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
    expect(Object.keys(JSON.parse(text) as object)).toHaveLength(8);
    expect(text.indexOf('😂')).toBeLessThan(text.indexOf('\ufb33'));
    expect(text.indexOf('€')).toBeLessThan(text.indexOf('😂'));
  });

  it.each([
    [undefined],
    [NaN],
    [Infinity],
    [-Infinity],
    ['\ud800'],
    [{ a: undefined }],
    [[undefined]],
    [new Date(0)],
    [1n],
    [{ '\udfff': 1 }],
  ])('refuses what JSON cannot say: %s', (value) => {
    expect(() => canonicalJson(value)).toThrow(TypeError);
  });

  it('refuses a hole in an array', () => {
    const holed: unknown[] = [];
    holed[1] = 1;
    expect(() => canonicalJson(holed)).toThrow(TypeError);
  });

  it('agrees with the npm package canonicalize on any JSON value, and reads back as the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        const text = canonicalJson(value);
        expect(text).toBe(canonicalize(value));
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
      { numRuns: 500 },
    );
  });
});
