import { useMemo, useState } from 'react';
import type { FrameView } from '#domain/contract/frame-views';
import type { CoveringKind } from '#domain/contract/shapes';
import { elevation } from '#domain/frame/drawing/elevations';
import type { Flat } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';
import type { GridReader } from '#domain/frame/grid-reader';
import type { Zone } from '#domain/frame/zone';
import { formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';
import { frameModel, labelOf, type FrameModel } from './frame-model.ts';
import { inkOf } from './ink.ts';
import { sheetName } from './sheet-name.ts';
import { SheetView } from './sheet-view.tsx';
import { draggedZone, usualHeights } from './zone-drag.ts';
import { DrawnZone } from './drawn-zone.tsx';
import './frame.css';

export interface DrawZoneProps {
  readonly frame: FrameView;
  /** Decides which drawings stand first, and between which heights a floor or ceiling hides. */
  readonly kind: CoveringKind;
  readonly zone: Zone | null;
  /** Told once a drag has ended at a zone that has width and height; face and posts of a wall are kept. */
  readonly onChange: (zone: Zone) => void;
}

/**
 * A zone by a drag: on an elevation a wall between two lines and two heights, on a plan a floor or ceiling
 * between two crossings. Slopes of a roof have fields only. Nothing is drawn without a grid.
 */
export function DrawZone(props: DrawZoneProps) {
  const model = useMemo(() => frameModel(props.frame), [props.frame]);
  return model.reader ? <Drawing {...props} model={model} reader={model.reader} /> : null;
}

function Drawing({ frame, kind, zone, onChange, model, reader }: DrawZoneProps & WithModel) {
  const { t, lang } = useWords();
  const sheets = useMemo(() => sheetsFor(frame, kind, model, reader), [frame, kind, model, reader]);
  const [key, setKey] = useState(() => sheetWith(sheets, zone)?.key);
  const [going, setGoing] = useState<Zone | null>(null);
  const [isTooSmall, setIsTooSmall] = useState(false);
  const sheet = sheets.find((one) => one.key === key) ?? sheets[0];
  if (!sheet) return null;
  const draw = (from: Flat, to: Flat, isDone: boolean) => {
    const next = draggedZone(sheet, from, to, reader, zone, usualHeights(kind, sheet, reader));
    setGoing(isDone ? null : next);
    setIsTooSmall(isDone && next === null);
    if (isDone && next) onChange(next);
  };
  const shown = going ?? zone;
  return (
    <div className="stack">
      <p>{t(sheet.subject.kind === 'elevation' ? 'frame.zoneDraw.wall' : 'frame.zoneDraw.flat')}</p>
      <Select
        label={t('frame.zoneDraw.drawOn')}
        description={t('frame.zoneDraw.hint')}
        value={sheet.key}
        onChange={setKey}
        choices={sheets.map((one) => ({ value: one.key, label: sheetName(t, one) }))}
      />
      <SheetView
        sheet={sheet}
        paths={inkOf(sheet, model, frame.today)}
        label={sheetName(t, sheet)}
        zoneOf={(id) => nameAlone(model, id)}
        onDraw={draw}
      >
        {() => <DrawnZone sheet={sheet} zone={shown} reader={reader} />}
      </SheetView>
      <p role="status">{shown ? zoneWords(shown) : t('frame.zoneDraw.none')}</p>
      {isTooSmall ? (
        <p role="alert" className="field-error">
          {t('frame.zoneDraw.tooSmall')}
        </p>
      ) : null}
    </div>
  );

  function zoneWords(said: Zone): string {
    if (said.shape === 'slope') return '';
    const heights = { bottom: formatNumber(said.bottom, lang), top: formatNumber(said.top, lang) };
    if (said.shape === 'wall') {
      const { line, from, to } = said;
      return t('frame.zoneDraw.wallNow', { line, from, to, ...heights });
    }
    const [from, to] = [said.corners[0] ?? '', said.corners.at(-1) ?? ''];
    return t('frame.zoneDraw.flatNow', { from, to, ...heights });
  }
}

/** The day says nothing about where a zone is. */
function nameAlone(model: FrameModel, id: string) {
  const name = model.coverings.get(id)?.name ?? '';
  return { name, text: name, isClosed: false };
}

interface WithModel {
  readonly model: FrameModel;
  readonly reader: GridReader;
}

/** All lines, also those in whose plane no member lies; for a floor or ceiling the plans first. */
function sheetsFor(frame: FrameView, kind: CoveringKind, model: FrameModel, reader: GridReader): Sheet[] {
  const drawable = { ...frame, members: [...model.members.values()] };
  const walls = (['first', 'second'] as const).flatMap((family) =>
    reader.places(family).map((line) => elevation(drawable, family, line, reader)),
  );
  const flats = model.sheets.filter(({ subject }) => subject.kind === 'plan');
  return kind === 'floor' || kind === 'ceiling' ? [...flats, ...walls] : [...walls, ...flats];
}

function sheetWith(sheets: readonly Sheet[], zone: Zone | null): Sheet | undefined {
  if (zone?.shape === 'wall')
    return sheets.find(
      (sheet) =>
        sheet.subject.kind === 'elevation' &&
        sheet.subject.family === zone.family &&
        labelOf(sheet) === zone.line,
    );
  if (zone?.shape !== 'flat') return sheets[0];
  const plans = sheets.filter(({ subject }) => subject.kind === 'plan');
  return plans.findLast(({ subject }) => heightOf(subject) <= zone.top) ?? plans[0];
}

const heightOf = (subject: Sheet['subject']) =>
  subject.kind === 'plan' ? (subject.level?.height ?? 0) : Infinity;
