import { useMemo } from 'react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import { lengthText, type LengthUnit } from '#domain/frame/length';
import { lineBeside } from '#domain/frame/line-beside';
import { formatList } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import { AMENDED } from '../../api/amended-query.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { CoveringDraft, CoveringEvent } from './covering-draft.ts';
import { DrawZone } from '../frame/draw-zone.tsx';
import { frameQuery } from '../frame/frame-query.ts';
import { ZONE_FIELDS, readZone, zoneDraft, type ZoneDraft, type ZoneField } from './zone-draft.ts';
import { ZoneHides } from './zone-hides.tsx';

const SHAPES = ['none', 'wall', 'flat', 'slope'] as const;

export interface ZonePartProps {
  draft: CoveringDraft;
  wasTried: boolean;
  tell: (event: CoveringEvent) => void;
  /** What lies there asks for no stage, and hides whatever lies in the zone. */
  isProtection?: boolean;
}

/** The space that a covering takes, typed by lines and heights, with what it hides. */
export function ZonePart({ draft, wasTried, tell, isProtection = false }: ZonePartProps) {
  const { t, lang } = useWords();
  const { id: house, unit } = useHouse();
  const frame = useQuery({ ...frameQuery(house), meta: { ...AMENDED, isAside: true } });
  const { zone } = draft;
  const change = (part: Partial<ZoneDraft>) => tell({ type: 'draw-zone', zone: { ...zone, ...part } });
  const read = readZone(zone, unit);
  const errorOf = (field: ZoneField) =>
    wasTried && !read.ok && read.field === field ? t(`coverings.zone.wrong.${read.reason}`) : null;
  const reader = useMemo(() => (frame.data?.grid ? gridReader(frame.data.grid) : null), [frame.data?.grid]);
  const faceName = (face: ZoneDraft['face']) => {
    const towards = face === 'both' || !reader ? null : lineBeside(zone, face, reader);
    return towards === null ? t(`coverings.zone.faceOf.${face}`) : t('zones.facing', { line: towards });
  };
  if (frame.data && frame.data.grid === null && zone.shape === 'none')
    return (
      <p className="soft">
        {t('coverings.zone.noGrid')} <Link to={`/houses/${house}/grid`}>{t('schedule.place.toGrid')}</Link>
      </p>
    );
  return (
    <fieldset className="fieldset form">
      <legend>{t('coverings.zone.title')}</legend>
      <Select
        label={t('coverings.zone.shape')}
        value={zone.shape}
        choices={SHAPES.map((value) => ({ value, label: t(`coverings.zone.shapeOf.${value}`) }))}
        onChange={(shape) => change({ shape })}
      />
      {zone.shape === 'wall' || zone.shape === 'slope' ? (
        <Select
          label={t('coverings.zone.family')}
          value={zone.family}
          choices={(['first', 'second'] as const).map((value) => ({
            value,
            label: t(`grid.${value}.title`),
          }))}
          onChange={(family) => change({ family })}
        />
      ) : null}
      {zone.shape === 'none' ? null : (
        <div className="zone-fields">
          {ZONE_FIELDS[zone.shape].map((field) => (
            <Field
              key={field}
              label={t(`coverings.zone.field.${field}`)}
              autoComplete="off"
              maxLength={2000}
              value={zone[field]}
              onChange={(text) => change({ [field]: text })}
              error={errorOf(field)}
            />
          ))}
        </div>
      )}
      {zone.shape === 'none' || !reader ? null : (
        <p className="soft">{t('zones.heights', { levels: levelsOf(reader, unit, lang) })}</p>
      )}
      {zone.shape === 'wall' && !isProtection ? (
        <div className="pair">
          <Select
            label={t('coverings.zone.over')}
            value={zone.over}
            choices={(['between-posts', 'over-posts'] as const).map((value) => ({
              value,
              label: t(`coverings.zone.overOf.${value}`),
            }))}
            onChange={(over) => change({ over })}
          />
          <Select
            label={t('coverings.zone.face')}
            value={zone.face}
            choices={(['both', 'lower', 'higher'] as const).map((value) => ({
              value,
              label: faceName(value),
            }))}
            onChange={(face) => change({ face })}
          />
        </div>
      ) : null}
      {frame.data?.grid && (zone.shape === 'wall' || zone.shape === 'flat') ? (
        <details>
          <summary>{t('coverings.zone.draw')}</summary>
          <DrawZone
            frame={frame.data}
            kind={draft.kind}
            zone={read.ok ? read.zone : null}
            onChange={(drawn) => tell({ type: 'draw-zone', zone: zoneDraft(drawn, unit) })}
          />
        </details>
      ) : null}
      {frame.data && read.ok && read.zone ? (
        <ZoneHides frame={frame.data} draft={draft} zone={read.zone} tell={tell} asksStage={!isProtection} />
      ) : null}
    </fieldset>
  );
}

/** 1F 450, 軒 3250: in the unit in which heights are typed. */
function levelsOf({ grid }: GridReader, unit: LengthUnit, lang: Language): string {
  return formatList(
    grid.levels.map(({ label, height }) => `${label} ${lengthText(height, unit)}`),
    lang,
  );
}
