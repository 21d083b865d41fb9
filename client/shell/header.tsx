import { useQuery } from '@tanstack/react-query';
import { Link, useMatch } from 'react-router';
import { houseQuery } from '../api/house-query.ts';
import { useSession } from '../api/use-session.ts';
import { useWords } from '../i18n/use-words.ts';
import { LanguageSwitch } from './language-switch.tsx';
import { SignOut } from './sign-out.tsx';

export function Header() {
  const { t } = useWords();
  const account = useSession().data?.account;
  return (
    <header className="header">
      <Link to="/" className="header-name">
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M4 4.5H20M12 4.5V20M12 12H18.5M7 11V20M3 20H21" />
        </svg>
        {t('common.name')}
      </Link>
      {account ? <HouseName /> : null}
      <div className="header-end">
        <LanguageSwitch />
        {account ? (
          <>
            <Link
              className="button button-quiet"
              to="/account"
              aria-label={`${t('common.account')}: ${account.name}`}
            >
              {account.name}
            </Link>
            <SignOut />
          </>
        ) : null}
      </div>
    </header>
  );
}

function HouseName() {
  const house = useMatch('/houses/:house/*')?.params.house;
  const query = useQuery({ ...houseQuery(house ?? ''), enabled: house !== undefined });
  if (house === undefined || !query.data) return null;
  return (
    <Link className="header-house" to={`/houses/${house}`}>
      {query.data.name}
    </Link>
  );
}
