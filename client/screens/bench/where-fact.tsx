import { Link } from 'react-router';
import { mayAct } from '#domain/contract/acts';
import { COMPLAINTS } from '#domain/contract/complaints';
import type { Place, PlaceHeading } from '#domain/contract/place';
import type { PhotoView } from '#domain/contract/views';
import { compassPoint } from '#domain/place/compass-point';
import { measureLine } from '#domain/place/geodesic';
import { formatInstant, formatNumber } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords, type WordsInUse } from '../../i18n/use-words.ts';
import { SitePlan } from '../../parts/site-plan.tsx';
import { useHouse, type PlainHouse } from '../../shell/use-house.ts';
import { lengthWords, pairWords } from '../place/length-words.ts';
import { fromMiddle, isTrue, planWords } from '../place/place-words.ts';
import { marksOf } from '../place/plan-marks.ts';

export interface WhereFactProps {
  photo: Pick<PhotoView, 'id' | 'place' | 'readings'>;
}

/** Where a photo was taken, how sure that is, which way it looked, and whether that was on site. */
export function WhereFact({ photo: { id, place, readings } }: WhereFactProps) {
  const words = useWords();
  const { t, lang } = words;
  const house = useHouse();
  const { position, device, heading, fieldOfView } = place;
  const marks = marksOf(id, place);
  const middle = house.site ?? marks[0]?.at;
  return (
    <>
      <dt>{t('bench.facts.where')}</dt>
      <dd className="stack where-fact">
        {position ? <p>{positionWords(words, position)}</p> : <NoPosition readings={readings} />}
        {position?.datum === 'tokyo' ? <p>{t('place.tokyo')}</p> : null}
        {position ? <OnSite place={place} house={house} /> : null}
        {heading ? <p>{headingWords(words, heading)}</p> : null}
        {fieldOfView ? <p>{t('place.view', { degrees: Math.round(fieldOfView.horizontal) })}</p> : null}
        {device ? <p className="soft">{deviceWords(words, device, house)}</p> : null}
        {middle && marks.length > 0 ? (
          <SitePlan
            middle={middle}
            site={house.site}
            marks={marks}
            label={t('place.plan.labelOne', { words: planWords(t, lang, place, house.site) ?? '' })}
          />
        ) : null}
      </dd>
    </>
  );
}

/** Of a position that is there and cannot be, it stands below what is wrong with it. */
const NOT_TAKEN: readonly string[] = COMPLAINTS.filter((code) => /^position-(?!error)/.test(code));

function NoPosition({ readings }: Pick<PhotoView, 'readings'>) {
  const { t } = useWords();
  if (readings.complaints.some((code) => NOT_TAKEN.includes(code))) return <p>{t('place.notTaken')}</p>;
  return (
    <p>
      {t('place.noPosition')} <span className="soft">{t('place.removed')}</span>
    </p>
  );
}

function OnSite({ place: { site, position }, house }: { place: Place; house: PlainHouse }) {
  const { t, lang } = useWords();
  if (!site || !house.site || !position)
    return (
      <p>
        {t('place.noSite')}{' '}
        {mayAct(house.role, 'rule') ? (
          <Link className="alone" to={`/houses/${house.id}/settings`}>
            {t('place.enterSite')}
          </Link>
        ) : null}
      </p>
    );
  const radius = lengthWords(t, lang, house.site.radiusM);
  return (
    <p>
      <strong className={site.verdict === 'off-site' ? 'act-text' : undefined}>
        {t(`place.verdict.${site.verdict}`)}
      </strong>
      {lang === 'ja' ? '：' : ': '}
      {t(`place.why.${site.verdict}`, { radius })}{' '}
      <span className="soft">{fromMiddle(t, lang, site, position.errorM)}</span>
    </p>
  );
}

function positionWords({ t, lang }: WordsInUse, position: NonNullable<Place['position']>): string {
  const error = lengthWords(t, lang, position.errorM);
  const { altitudeM } = position;
  return joinWords(
    [
      t('place.latLon', pairWords(position)),
      t(position.errorStated ? 'place.errorStated' : 'place.errorAssumed', { error }),
      altitudeM === null ? null : t('place.altitude', { metres: formatNumber(Math.round(altitudeM), lang) }),
    ],
    lang,
  );
}

function headingWords({ t, lang }: WordsInUse, heading: PlaceHeading): string {
  const { trueDegrees, stated, declination, flags } = heading;
  const values = {
    degrees: Math.round(trueDegrees) % 360,
    point: t(`place.point.${compassPoint(trueDegrees)}`),
  };
  const sentences = flags.map((flag) => t(`place.heading.flag.${flag}`));
  if (declination !== null) {
    const off = t(declination < 0 ? 'place.heading.west' : 'place.heading.east', {
      degrees: formatNumber(Math.round(Math.abs(declination) * 10) / 10, lang),
    });
    sentences.unshift(t('place.heading.turned', { ...values, stated: Math.round(stated), declination: off }));
  } else {
    const isKnown = isTrue(heading) && flags.length === 0;
    sentences.unshift(t(isKnown ? 'place.heading.true' : 'place.heading.asStated', values));
  }
  return [...sentences, t('place.heading.compass')].join(lang === 'ja' ? '' : ' ');
}

function deviceWords(
  { t, lang }: WordsInUse,
  device: NonNullable<Place['device']>,
  { site, zone }: PlainHouse,
): string {
  const text = t('place.device.text', {
    ...pairWords(device),
    who: device.by?.name ?? t('common.nobody'),
    error: lengthWords(t, lang, device.errorM),
    when: formatInstant(device.measuredAt, zone, lang),
  });
  if (!site) return text;
  const { distanceM, azimuth } = measureLine(site, device);
  const from = t('place.device.from', {
    distance: lengthWords(t, lang, distanceM),
    point: t(`place.point.${compassPoint(azimuth)}`),
  });
  return [text, from].join(lang === 'ja' ? '' : ' ');
}
