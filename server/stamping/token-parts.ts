import * as asn1js from 'asn1js';
import { SignedData, type ContentInfo, TimeStampResp, TSTInfo } from 'pkijs';
import { StampTrouble } from '../services/stamps.ts';

const SIGNED_DATA = '1.2.840.113549.1.7.2';
/** id-ct-TSTInfo. RFC 3161 §2.4.2. */
export const TST_INFO = '1.2.840.113549.1.9.16.1.4';
/** granted, grantedWithMods. RFC 3161 §2.4.2. */
const GRANTED: readonly number[] = [0, 1];

export interface TokenParts {
  /** The bytes as they came. */
  readonly token: Uint8Array;
  readonly signed: SignedData;
  readonly info: TSTInfo;
}

/** The parts of a time-stamp response. Throws StampTrouble 'unreadable' or 'rejected'. */
export function readResponse(response: Uint8Array): TokenParts {
  return readable(() => {
    const { result, offset } = asn1js.fromBER(response);
    if (offset !== response.length) throw new Error('bytes behind the response, or no ASN.1');
    const { status, timeStampToken } = new TimeStampResp({ schema: result });
    if (!GRANTED.includes(status.status)) {
      const said = (status.statusStrings ?? []).map((text) => text.valueBlock.value).join(' ');
      throw new StampTrouble('rejected', `status ${status.status} ${said}`.trim());
    }
    if (!timeStampToken) throw new Error('granted without a token');
    // As it came: encoded anew it might be other bytes than those that were signed.
    const [, token] = (result as asn1js.Sequence).valueBlock.value;
    return { token: (token as asn1js.Sequence).valueBeforeDecodeView.slice(), ...partsOf(timeStampToken) };
  });
}

function partsOf(token: ContentInfo): Omit<TokenParts, 'token'> {
  if (token.contentType !== SIGNED_DATA) throw new Error('the token is no signed data');
  const signed = new SignedData({ schema: token.content as asn1js.AsnType });
  const { eContentType, eContent } = signed.encapContentInfo;
  if (eContentType !== TST_INFO || !eContent) throw new Error('what is signed is no time stamp');
  if (signed.signerInfos.length !== 1) throw new Error('a token has one signer');
  const info = TSTInfo.fromBER(eContent.getValue());
  if (info.version !== 1) throw new Error(`version ${info.version} of TSTInfo`);
  return { signed, info };
}

function readable<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof StampTrouble) throw error;
    throw new StampTrouble('unreadable', error instanceof Error ? error.message : String(error));
  }
}
