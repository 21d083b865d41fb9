// The two web-standard globals that pure code may use: both are functions of their input alone.
declare class TextEncoder {
  encode(text: string): Uint8Array;
}
declare class TextDecoder {
  constructor(label?: string, options?: { fatal?: boolean });
  decode(bytes: Uint8Array): string;
}
// ES2024, in every engine that this runs on.
interface String {
  isWellFormed(): boolean;
}
