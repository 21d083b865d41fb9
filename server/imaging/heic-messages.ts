/** What goes to the HEIC worker and back. */
export interface HeicRequest {
  readonly path: string;
  readonly maxPixels: number;
}

export type HeicAnswer =
  | { readonly ok: true; readonly width: number; readonly height: number; readonly data: ArrayBuffer }
  | { readonly ok: false };
