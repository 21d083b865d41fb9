import { useEffect, useRef } from 'react';
import { Link, useLocation } from 'react-router';
import { useWords } from '../i18n/use-words.ts';
import { HOUSE_PARTS, partOf } from './house-parts.ts';

export function HouseNav({ house }: { house: string }) {
  const { t } = useWords();
  const { pathname } = useLocation();
  const list = useRef<HTMLUListElement>(null);
  const base = `/houses/${house}`;
  const current = partOf(pathname.slice(base.length + 1));
  useEffect(() => {
    // On a phone the row scrolls: where one is must be in sight. Only sideways, the page stays.
    const [here] = list.current?.querySelectorAll<HTMLElement>('[aria-current]') ?? [];
    if (here) list.current?.scrollTo({ left: here.offsetLeft - list.current.clientWidth / 3 });
  }, [current]);
  return (
    <nav className="house-nav" aria-label={t('common.houseMenu')}>
      <ul ref={list}>
        {HOUSE_PARTS.map(({ path, word }) => (
          <li key={word}>
            <Link
              to={path === '' ? base : `${base}/${path}`}
              aria-current={word === current ? 'page' : undefined}
            >
              {t(`common.nav.${word}`)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
