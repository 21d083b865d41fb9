import * as asn1js from 'asn1js';
import { createHash } from 'node:crypto';
import { Certificate, ExtKeyUsage, IssuerAndSerialNumber, type SignerInfo } from 'pkijs';
import { StampTrouble } from '../services/stamps.ts';
import { TST_INFO, type TokenParts } from './token-parts.ts';

const CONTENT_TYPE = '1.2.840.113549.1.9.3';
const EXTENDED_KEY_USAGE = '2.5.29.37';
const TIME_STAMPING = '1.3.6.1.5.5.7.3.8';
/** id-aa-signingCertificate (RFC 2634 §5.4: SHA-1) and its second version (RFC 5035 §3: SHA-256 unless named). */
const SIGNING_CERTIFICATE = '1.2.840.113549.1.9.16.2.12';
const SIGNING_CERTIFICATE_V2 = '1.2.840.113549.1.9.16.2.47';
const HASHES: Readonly<Record<string, string>> = {
  '2.16.840.1.101.3.4.2.1': 'sha256',
  '2.16.840.1.101.3.4.2.2': 'sha384',
  '2.16.840.1.101.3.4.2.3': 'sha512',
};

/**
 * Whether the token was signed by a certificate for time stamping and by no other (RFC 3161 §2.3, §2.4.2): signature,
 * content type, the certificate that the signature names, its sole and critical purpose; with `roots`, also that it
 * leads to one of them at the time of the stamp. Throws StampTrouble 'bad-signature' or 'untrusted'.
 */
export async function checkSignature(
  { signed, info }: TokenParts,
  data: Uint8Array,
  roots: readonly Certificate[] | null,
): Promise<Certificate> {
  const [signer] = signed.signerInfos;
  const certificate = signer && certificateOf(signed.certificates ?? [], signer);
  if (!signer || !certificate) throw new StampTrouble('bad-signature', 'no certificate of the signer');
  assertSignsTimeStamps(certificate);
  assertNamed(signer, certificate);
  // A copy: a small Buffer is a part of a larger one, whole in `buffer`.
  const bytes = Uint8Array.from(data).buffer;
  if (!(await verified(() => signed.verify({ signer: 0, data: bytes }))))
    throw new StampTrouble('bad-signature', 'the signature does not fit');
  if (roots) {
    const chain = { checkChain: true, trustedCerts: [...roots], passedWhenNotRevValues: true };
    const fits = await signed
      .verify({ signer: 0, data: bytes, checkDate: info.genTime, ...chain })
      .catch(() => false);
    if (!fits) throw new StampTrouble('untrusted', 'the certificate leads to no root that is trusted');
  }
  return certificate;
}

async function verified(verify: () => Promise<unknown>): Promise<boolean> {
  try {
    return (await verify()) === true;
  } catch (error) {
    throw new StampTrouble('bad-signature', error instanceof Error ? error.message : String(error));
  }
}

function certificateOf(certificates: readonly unknown[], { sid }: SignerInfo): Certificate | undefined {
  const all = certificates.filter((one) => one instanceof Certificate);
  if (!(sid instanceof IssuerAndSerialNumber)) return all.length === 1 ? all[0] : undefined;
  return all.find(
    ({ issuer, serialNumber }) => issuer.isEqual(sid.issuer) && serialNumber.isEqual(sid.serialNumber),
  );
}

function assertSignsTimeStamps({ extensions = [] }: Certificate): void {
  const usage = extensions.find(({ extnID }) => extnID === EXTENDED_KEY_USAGE);
  const purposes: unknown = usage?.parsedValue;
  const isSole =
    purposes instanceof ExtKeyUsage && purposes.keyPurposes.join() === TIME_STAMPING && usage?.critical;
  if (!isSole) throw new StampTrouble('bad-signature', 'the certificate is not for time stamping alone');
}

/** The signature covers which certificate made it, so that another with the same key cannot take its place. */
function assertNamed({ signedAttrs }: SignerInfo, certificate: Certificate): void {
  const value = (type: string) =>
    signedAttrs?.attributes.find((attribute) => attribute.type === type)?.values[0] as unknown;
  const contentType = value(CONTENT_TYPE);
  if (!(contentType instanceof asn1js.ObjectIdentifier) || contentType.getValue() !== TST_INFO)
    throw new StampTrouble('bad-signature', 'the signature is over another type of content');
  const v2 = value(SIGNING_CERTIFICATE_V2);
  const named = v2 ? certificateHash(v2, 'sha256') : certificateHash(value(SIGNING_CERTIFICATE), 'sha1');
  if (!named) throw new StampTrouble('bad-signature', 'the signature names no certificate');
  const der = new Uint8Array(certificate.toSchema().toBER());
  if (!createHash(named.algorithm).update(der).digest().equals(named.hash))
    throw new StampTrouble('bad-signature', 'the signature names another certificate');
}

/** SigningCertificate(V2) ::= SEQUENCE { certs SEQUENCE OF SEQUENCE { [hashAlgorithm], certHash, … }, … } */
function certificateHash(value: unknown, usual: string): { algorithm: string; hash: Buffer } | null {
  const first = partsOf(partsOf(partsOf(value)[0])[0]);
  const algorithmId = first[0] instanceof asn1js.Sequence ? partsOf(first[0])[0] : null;
  const algorithm = algorithmId instanceof asn1js.ObjectIdentifier ? HASHES[algorithmId.getValue()] : usual;
  const hash = first.find((part) => part instanceof asn1js.OctetString);
  return hash && algorithm !== undefined ? { algorithm, hash: Buffer.from(hash.getValue()) } : null;
}

function partsOf(value: unknown): readonly unknown[] {
  return value instanceof asn1js.Sequence ? value.valueBlock.value : [];
}
