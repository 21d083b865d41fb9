import type { RequestHandler } from 'express';
import helmet from 'helmet';

/**
 * Style elements that libraries of the client add by themselves, by the hashes of their texts (CSP Level 3 §8.2):
 * how react-aria's pressable things take touches, and OpenSeadragon's canvas its focus. A version with another text
 * is refused by the browser, and the browser tests hear it complain.
 */
const STYLES_OF_LIBRARIES = [
  "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='",
  "'sha256-9xTiqzfwFaL2SGb1rmr8gysEwVVjIvqWAgmZgqFqpEE='",
];

export function securityHeaders(secure: boolean): RequestHandler {
  return helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        'default-src': ["'self'"],
        'img-src': ["'self'", 'blob:', 'data:'],
        'style-src': ["'self'", ...STYLES_OF_LIBRARIES],
        'object-src': ["'none'"],
        'base-uri': ["'none'"],
        'form-action': ["'self'"],
        'frame-ancestors': ["'none'"],
      },
    },
    strictTransportSecurity: secure,
    crossOriginEmbedderPolicy: false,
  });
}

/** What the API answers with is data and pictures: opened by itself it runs nothing and loads nothing. */
export const filesOnly: RequestHandler = (_req, res, next) => {
  res.setHeader('content-security-policy', "default-src 'none'; frame-ancestors 'none'; sandbox");
  next();
};
