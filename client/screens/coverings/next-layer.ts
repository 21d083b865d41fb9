import type { CoveringView } from '#domain/contract/views';
import type { LengthUnit } from '#domain/frame/length';
import type { Language } from '../../i18n/language.ts';
import { draftOf, EMPTY_DRAFT, type CoveringDraft } from './covering-draft.ts';
import { LAYER_WORDS } from './layer-words.ts';
import type { ZoneDraft } from './zone-draft.ts';

/** Where a layer lies that comes after another one at its place. */
export type LayerPlace = 'other-face' | 'on-top' | 'below' | 'same';

/** The places that a layer after this one can have, the usual one first; none where it has no zone. */
export function placesAfter({ zone, kind }: Pick<CoveringView, 'zone' | 'kind'>): readonly LayerPlace[] {
  switch (zone?.shape) {
    case undefined:
      return [];
    case 'wall':
      return zone.face === 'both' ? ['same'] : ['other-face', 'same'];
    case 'flat':
      // A ceiling is seen from below, and so are the layers that follow it.
      return [kind === 'ceiling' || kind === 'plaster' ? 'below' : 'on-top', 'same'];
    case 'slope':
      return ['on-top', 'same'];
  }
}

const OTHER = { both: 'both', lower: 'higher', higher: 'lower' } as const;

/** Its zone there: lines are carried over, and heights that a layer has of its own are left to be typed. */
export function zoneAfter(zone: ZoneDraft, place: LayerPlace): ZoneDraft {
  switch (place) {
    case 'same':
      return zone;
    case 'other-face':
      return { ...zone, face: OTHER[zone.face] };
    case 'on-top':
      return zone.shape === 'slope'
        ? { ...zone, eavesHeight: '', ridgeHeight: '', below: '' }
        : { ...zone, bottom: zone.top, top: '' };
    case 'below':
      return { ...zone, top: zone.bottom, bottom: '' };
  }
}

/** The coat that follows the rough coat of an earthen wall on its other face has a name of its own (裏返し). */
export function nameAfter(covering: CoveringView, lang: Language): string {
  const isBackCoat = covering.kind === 'plaster' && placesAfter(covering)[0] === 'other-face';
  return LAYER_WORDS[lang].name[isBackCoat ? 'back-coat' : 'next'](covering.name);
}

/** The next layer after a covering, as the form proposes it. Members listed by hand go with a zone that stays. */
export function layerAfter(covering: CoveringView, name: string, unit: LengthUnit): CoveringDraft {
  const [place = 'same'] = placesAfter(covering);
  const { kind, zone, except, hides } = draftOf(covering, unit);
  const isSameStretch = place === 'same' || place === 'other-face';
  return {
    ...{ ...EMPTY_DRAFT, name, kind, zone: zoneAfter(zone, place) },
    ...(isSameStretch ? { except, hides } : {}),
  };
}
