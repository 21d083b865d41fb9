/// <reference types="vite/client" />

/** Its published types bring those of Node.js with them. */
declare module 'qrcode' {
  export function create(
    text: string,
    options: { errorCorrectionLevel: 'M' },
  ): { modules: { size: number; data: Uint8Array } };
}
