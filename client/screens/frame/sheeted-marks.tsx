import type { Sheet } from '#domain/frame/drawing/sheet';
import type { FrameModel } from './frame-model.ts';
import { sheetedPath } from './sheeted-path.ts';

export interface SheetedMarksProps {
  readonly sheet: Sheet;
  readonly model: FrameModel;
  readonly day: string;
  /** Millimetres a pixel. */
  readonly unit: number;
}

/** What lies under protection on a day: a zigzag along it, like a fold of cloth; neither hatching nor a broken line. */
export function SheetedMarks({ sheet, model, day, unit }: SheetedMarksProps) {
  const path = sheetedPath(sheet, model, day, unit);
  if (path === '') return null;
  return (
    <>
      <path className="frame-ink frame-sheeted-edge" d={path} />
      <path className="frame-ink frame-sheeted" d={path} />
    </>
  );
}
