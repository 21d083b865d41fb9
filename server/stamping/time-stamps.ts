import * as asn1js from 'asn1js';
import { createHash, randomBytes } from 'node:crypto';
import { AlgorithmIdentifier, type Certificate, MessageImprint, TimeStampReq } from 'pkijs';
import { StampTrouble, type HeadStamp, type TimeStamps } from '../services/stamps.ts';
import { askService } from './ask-service.ts';
import { checkSignature } from './check-signature.ts';
import { readResponse, type TokenParts } from './token-parts.ts';

const SHA_256 = '2.16.840.1.101.3.4.2.1';
const COMMON_NAME = '2.5.4.3';
const NAME_LENGTH = 200;

export interface TimeStampSettings {
  readonly url: string;
  /** null: the certificate that comes with a stamp is believed. */
  readonly roots: readonly Certificate[] | null;
  readonly patienceMs?: number;
}

/** Time stamps by the protocol of RFC 3161 over HTTP. */
export function timeStamps({ url, roots, patienceMs = 20_000 }: TimeStampSettings): TimeStamps {
  return {
    stamp: async (data) => {
      const imprint = createHash('sha256').update(data).digest();
      const nonce = newNonce();
      const parts = readResponse(await askService(url, request(imprint, nonce), patienceMs));
      assertAnswers(parts, imprint, nonce);
      const certificate = await checkSignature(parts, data, roots);
      return stampOf(parts, certificate);
    },
  };
}

/** RFC 3161 §2.4.1: the hash and nothing else of what is stamped, a nonce, the certificate wanted with the answer. */
function request(imprint: Buffer, nonce: Buffer): Uint8Array {
  const asked = new TimeStampReq({
    version: 1,
    messageImprint: new MessageImprint({
      hashAlgorithm: new AlgorithmIdentifier({ algorithmId: SHA_256, algorithmParams: new asn1js.Null() }),
      hashedMessage: new asn1js.OctetString({ valueHex: Uint8Array.from(imprint).buffer }),
    }),
    nonce: new asn1js.Integer({ valueHex: Uint8Array.from(nonce).buffer }),
    certReq: true,
  });
  return new Uint8Array(asked.toSchema().toBER());
}

/** 63 random bits behind a leading 1: as an integer positive, and always written in the same eight bytes. */
function newNonce(): Buffer {
  const nonce = randomBytes(8);
  nonce[0] = 0x40 | ((nonce[0] ?? 0) & 0x3f);
  return nonce;
}

function assertAnswers({ info }: TokenParts, imprint: Buffer, nonce: Buffer): void {
  const { hashAlgorithm, hashedMessage } = info.messageImprint;
  const isOurs =
    hashAlgorithm.algorithmId === SHA_256 &&
    Buffer.from(hashedMessage.valueBlock.valueHexView).equals(imprint);
  if (!isOurs) throw new StampTrouble('another-head', 'the token stamps something else');
  if (!info.nonce || !Buffer.from(info.nonce.valueBlock.valueHexView).equals(nonce))
    throw new StampTrouble('another-request', 'the token answers another request');
}

function stampOf({ token, info }: TokenParts, { subject }: Certificate): HeadStamp {
  const names = subject.typesAndValues;
  const name = names.find(({ type }) => type === COMMON_NAME) ?? names.at(-1);
  const by = String(name?.value.valueBlock.value ?? '')
    .replaceAll(/[\p{Cc}\p{Cs}]+/gu, ' ')
    .trim();
  return { token, at: info.genTime.toISOString(), by: Array.from(by).slice(0, NAME_LENGTH).join('') || '-' };
}
