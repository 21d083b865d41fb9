import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { useNavigate, useSearchParams } from 'react-router';
import { mirrored } from '#domain/frame/drawing/mirrored';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { dayWithin } from './day-steps.ts';
import { DaySlider } from './day-slider.tsx';
import { FilterFields } from './filter-fields.tsx';
import { fitsIn, NO_FILTER } from './frame-filter.ts';
import { FrameLegend } from './frame-legend.tsx';
import { addressOf, gapsOn, sheetOf, type FrameModel } from './frame-model.ts';
import { FramePrint } from './frame-print.tsx';
import { FrameSheet } from './frame-sheet.tsx';
import { MemberTell } from './member-tell.tsx';
import { MemberTree } from './member-tree.tsx';
import { SheetChoice } from './sheet-choice.tsx';
import { UnplacedList } from './unplaced-list.tsx';
import { useFrame } from './use-frame.ts';
import './frame.css';

/** The frame line by line, inked where it is on record, as it stood on any day. */
export function FrameScreen() {
  const { t } = useWords();
  const house = useHouse();
  const { query, model } = useFrame(house.id);
  const canPrint = model !== null && model.sheets.length > 0;
  return (
    <Page
      title={t('frame.title')}
      lead={t('frame.lead')}
      actions={
        canPrint ? (
          <>
            <LinkButton to={`/houses/${house.id}/shots`}>{t('common.toShots')}</LinkButton>
            <Button onPress={() => window.print()}>{t('frame.print')}</Button>
          </>
        ) : null
      }
    >
      <QueryState query={query}>{() => (model ? <Frame model={model} /> : null)}</QueryState>
    </Page>
  );
}

function Frame({ model }: { model: FrameModel }) {
  const { id } = useHouse();
  const [first] = model.sheets;
  if (first && model.members.size > model.unplaced.length) return <Sheets model={model} />;
  return (
    <>
      <NothingDrawn house={id} hasGrid={model.frame.grid !== null} />
      <UnplacedList model={model} house={id} />
    </>
  );
}

function NothingDrawn({ house, hasGrid }: { house: string; hasGrid: boolean }) {
  const { t } = useWords();
  const mayRecord = useMay('record');
  const way = hasGrid ? (
    <LinkButton look="act" to={`/houses/${house}/schedule`}>
      {t('frame.toSchedule')}
    </LinkButton>
  ) : (
    <LinkButton look="act" to={`/houses/${house}/grid`}>
      {t('frame.toGrid')}
    </LinkButton>
  );
  return (
    <EmptyState title={hasGrid ? t('frame.empty') : t('frame.noGrid')} action={mayRecord ? way : null}>
      {hasGrid ? t('frame.emptyText') : t('frame.noGridText')}
    </EmptyState>
  );
}

function Sheets({ model }: { model: FrameModel }) {
  const { t } = useWords();
  const { id: house, name } = useHouse();
  const go = useNavigate();
  const [params] = useSearchParams();
  const { today } = model.frame;
  const [day, setDay] = useDay(model);
  const [filter, setFilter] = useState(NO_FILTER);
  const [chosen, setChosen] = useState<string | null>(null);
  const gaps = useMemo(() => gapsOn(model, day), [model, day]);
  const fits = useMemo(() => fitsIn(filter, model, day), [filter, model, day]);
  const sheet = sheetOf(model.sheets, params.get('line'), params.get('level'));
  // The drawing goes on at once; the list, which can be long, follows when there is time.
  const modelInList = useDeferredValue(model);
  const sheetInList = useDeferredValue(sheet);
  const dayInList = useDeferredValue(day);
  const gapsInList = useDeferredValue(gaps);
  const chosenInList = useDeferredValue(chosen);
  const dayPart = dayInList === today ? '' : dayInList;
  const to = useCallback(
    (other: Sheet) => {
      const query = { ...addressOf(model.sheets, other), ...(dayPart === '' ? {} : { day: dayPart }) };
      return `?${new URLSearchParams(query).toString()}`;
    },
    [model.sheets, dayPart],
  );
  const [isBehind, setIsBehind] = useState(false);
  const shown = useMemo(() => (sheet && isBehind ? mirrored(sheet) : sheet), [sheet, isBehind]);
  const open = (mark: string) => void go(`/houses/${house}/members/${encodeURIComponent(mark)}`);
  if (!sheet || !shown) return null;
  const nothingFits = fits !== null && !sheet.members.some(({ mark }) => fits(mark));
  return (
    <>
      <div className="frame-controls">
        <SheetChoice sheets={model.sheets} current={sheet} gaps={gaps} to={to} />
        <DaySlider days={model.days} today={today} day={day} onChange={setDay} />
        <FilterFields model={model} value={filter} onChange={setFilter} />
      </div>
      {nothingFits ? <p role="status">{t('frame.nothingFits')}</p> : null}
      <div className="frame-columns no-print">
        <div className="stack frame-main">
          {sheet.subject.kind === 'elevation' ? (
            <Checkbox isSelected={isBehind} onChange={setIsBehind}>
              {t('frame.behind')}
            </Checkbox>
          ) : null}
          <FrameSheet
            {...{ model, day, gaps, fits, chosen }}
            sheet={shown}
            onChoose={setChosen}
            onPress={(mark, isFinger) => (isFinger && mark !== chosen ? setChosen(mark) : open(mark))}
          />
          <MemberTell model={model} house={house} mark={chosen} day={day} />
          <FrameLegend />
          <p className="soft frame-caution">{t('frame.caution')}</p>
        </div>
        <MemberTree
          {...{ house, to }}
          model={modelInList}
          day={dayInList}
          gaps={gapsInList}
          chosen={chosenInList}
          current={sheetInList ?? sheet}
          onChoose={setChosen}
        />
      </div>
      <UnplacedList model={model} house={house} />
      <FramePrint model={model} houseName={name} day={day} gaps={gaps} />
    </>
  );
}

const SETTLED_MS = 250;

/** The day of the address; it follows once the hand rests, since each step would be a navigation. */
function useDay({ days, frame: { today } }: FrameModel): [string, (day: string) => void] {
  const [params, setParams] = useSearchParams();
  const [day, setDay] = useState(() => dayWithin(params.get('day'), days[0] ?? today, today));
  useEffect(() => {
    const timer = setTimeout(() => {
      const said = day === today ? null : day;
      if (params.get('day') === said) return;
      const next = new URLSearchParams(params);
      if (said === null) next.delete('day');
      else next.set('day', said);
      setParams(next, { replace: true, preventScrollReset: true });
    }, SETTLED_MS);
    return () => clearTimeout(timer);
  }, [day, today, params, setParams]);
  return [day, setDay];
}
