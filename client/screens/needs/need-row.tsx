import { useState } from 'react';
import { TRACKS, type Stage } from '#domain/frame/stage';
import { nameOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Select } from '../../parts/select.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useMay } from '../../shell/use-house.ts';
import { usualLeast, type Need } from './needs-draft.ts';

interface NeedRowProps {
  need: Need;
  onChange: (need: Need) => void;
  onBack: (need: Need) => void;
}

/** In words until somebody changes it: dozens of rows of fields would be in everybody's way. */
export function NeedRow({ need, onChange, onBack }: NeedRowProps) {
  const { lang } = useWords();
  const mayChange = useMay('record');
  const [isChanging, setChanging] = useState(need.isOwn);
  const name = need.known ? nameOfKind(need.known, lang) : need.kind;
  if (!isChanging || !mayChange)
    return <SaidRow need={need} name={name} onChange={() => setChanging(true)} />;
  const back = () => {
    setChanging(false);
    onBack(need);
  };
  return <ChangedRow need={need} onChange={onChange} onBack={back} />;
}

function SaidRow({ need, name, onChange }: { need: Need; name: string; onChange: () => void }) {
  const { t } = useWords();
  const usual = usualLeast(need.form, need.known?.track ?? 'wall');
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{need.hides ? t('needs.isHidden') : t('needs.staysVisible')}</td>
      <td>{t('needs.usual', { stage: t(`common.stage.${need.least ?? usual}`) })}</td>
      <td>{t('common.count.photos', { count: need.views })}</td>
      <td>
        <IfMay act="record">
          <Button onPress={onChange} aria-label={t('needs.changeOf', { kind: name })}>
            {t('needs.change')}
          </Button>
        </IfMay>
      </td>
    </tr>
  );
}

function ChangedRow({ need, onChange, onBack }: NeedRowProps) {
  const { t, lang } = useWords();
  const name = need.known ? nameOfKind(need.known, lang) : need.kind;
  return (
    <tr>
      <th scope="row">
        {name}
        {need.isOwn ? <span className="needs-own">{t('needs.stated')}</span> : null}
      </th>
      <td>
        <Checkbox
          aria-label={t('needs.hidesKind', { kind: name })}
          isSelected={need.hides}
          onChange={(hides) => onChange({ ...need, hides })}
        >
          {need.hides ? t('needs.isHidden') : t('needs.staysVisible')}
        </Checkbox>
      </td>
      <td>{need.hides ? <Least need={need} name={name} onChange={onChange} /> : null}</td>
      <td>{need.hides ? <Views need={need} name={name} onChange={onChange} /> : null}</td>
      <td>
        {need.isOwn ? (
          <Button onPress={() => onBack(need)} aria-label={t('needs.backOf', { kind: name })}>
            {t('needs.back')}
          </Button>
        ) : null}
      </td>
    </tr>
  );
}

type Part = Omit<NeedRowProps, 'onBack'> & { name: string };

function Least({ need, name, onChange }: Part) {
  const { t } = useWords();
  const track = need.known?.track ?? 'wall';
  const isPlaster = need.form.startsWith('plaster');
  // After plastering a photo shows the plaster.
  const stages: readonly Stage[] = TRACKS[track].filter((stage) => !(isPlaster && stage === 'plastered'));
  const usual = t('needs.usual', { stage: t(`common.stage.${usualLeast(need.form, track)}`) });
  return (
    <Select
      label={t('needs.leastOf', { kind: name })}
      hideLabel
      value={need.least ?? 'usual'}
      choices={[
        { value: 'usual', label: usual },
        ...stages.map((value) => ({ value, label: t(`common.stage.${value}`) })),
      ]}
      onChange={(value) => onChange({ ...need, least: stages.find((stage) => stage === value) ?? null })}
    />
  );
}

/** As many as a person will take of one place. */
const MOST_VIEWS = 5;

function Views({ need, name, onChange }: Part) {
  const { t } = useWords();
  const most = Math.max(MOST_VIEWS, need.views);
  return (
    <Select
      label={t('needs.viewsOf', { kind: name })}
      hideLabel
      value={String(need.views)}
      choices={Array.from({ length: most }, (_, i) => ({
        value: String(i + 1),
        label: t('common.count.photos', { count: i + 1 }),
      }))}
      onChange={(value) => onChange({ ...need, views: Number(value) })}
    />
  );
}
