import { X509Certificate } from 'node:crypto';
import { Certificate } from 'pkijs';

const PEM = /-----BEGIN CERTIFICATE-----[^-]+-----END CERTIFICATE-----/g;

/** The certificates of a PEM file. Throws Error where it holds none, or one that cannot be read. */
export function readRoots(pem: string): Certificate[] {
  const found = pem.match(PEM) ?? [];
  if (found.length === 0) throw new Error('The file of ARAKABE_TIMESTAMP_CA holds no certificate in PEM.');
  return found.map((one) => Certificate.fromBER(new X509Certificate(one).raw));
}
