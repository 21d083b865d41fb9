export interface SheetRequest {
  readonly bytes: Uint8Array;
  readonly contentType: string;
}
