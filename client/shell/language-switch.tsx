import { LANGUAGES } from '../i18n/language.ts';
import { useWords } from '../i18n/use-words.ts';

/** Each language is named in itself, so that whoever cannot read the present one finds their own. */
export function LanguageSwitch() {
  const { t, lang, setLang } = useWords();
  return (
    <div className="language-switch" role="group" aria-label={t('common.language')}>
      {LANGUAGES.map((language) => (
        <button
          key={language}
          type="button"
          lang={language}
          aria-pressed={language === lang}
          onClick={() => setLang(language)}
        >
          {t(`common.languageName.${language}`)}
        </button>
      ))}
    </div>
  );
}
