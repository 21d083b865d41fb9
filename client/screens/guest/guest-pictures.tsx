import type { GuestPictureView } from '#domain/contract/guests';
import { addressOf } from '../../api/address.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';

export interface GuestPicturesProps {
  secret: string;
  zone: string;
  mark: string;
  pictures: readonly GuestPictureView[];
}

/** Each around the member; pressed, the whole picture. */
export function GuestPictures({ secret, zone, mark, pictures }: GuestPicturesProps) {
  const { t, lang } = useWords();
  if (pictures.length === 0) return null;
  return (
    <ul className="guest-pictures plain-list">
      {pictures.map(({ tag, photo, stage, instant }) => {
        const words = { mark, stage: t(`common.stage.${stage}`) };
        const at = { secret, photo };
        return (
          <li key={tag}>
            <a
              href={addressOf('guestPicture', at)}
              target="_blank"
              rel="noreferrer"
              aria-label={t('guest.whole', words)}
            >
              <img
                src={addressOf('guestPicture', at, { tag })}
                alt={t('guest.alt', words)}
                loading="lazy"
                decoding="async"
              />
            </a>
            <StageName stage={stage} />
            <p className="soft">
              {instant === null
                ? t('guest.undated')
                : t('guest.taken', { when: formatInstant(instant, zone, lang) })}
            </p>
          </li>
        );
      })}
    </ul>
  );
}
