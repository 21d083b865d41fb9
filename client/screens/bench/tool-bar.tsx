import type { RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { TOOLS, isEmpty } from './bench-model.ts';
import { boxInView } from './box-in-view.ts';
import type { Desk, DeskEvent } from './desk-state.ts';
import { ToolSign, type Sign } from './tool-sign.tsx';
import type { Saying } from './use-saying.ts';
import type { Viewer } from './viewer.ts';

export interface ToolBarProps {
  desk: Desk;
  tell: (event: DeskEvent) => void;
  goBack: Saying['goBack'];
  canGoBack: Saying['canGoBack'];
  tallness: number;
  viewer: RefObject<Viewer | null>;
  focusOn: (selector: string) => void;
  toWords: () => void;
}

/** Nothing comes or goes here while one draws: that would move the picture under the hand. */
export function ToolBar(props: ToolBarProps) {
  const { tell, goBack, canGoBack, tallness, viewer, focusOn, toWords } = props;
  const { t } = useWords();
  const { work, tool } = props.desk.bench;
  const boxInMiddle = () => {
    tell({ type: 'box-in-middle', ...boxInView(viewer.current, tallness) });
    focusOn('[data-hit=draft]');
  };
  const closeOutline = () => {
    tell({ type: 'close-outline', reach: [0, 0] });
    toWords();
  };
  const isChange = (work.draft?.replaces ?? null) !== null;
  return (
    <div className="bench-tools" data-tool={tool}>
      <div className="bench-tool-row" role="group" aria-label={t('bench.tool.title')}>
        {TOOLS.map((name) => (
          <button
            key={name}
            type="button"
            className="bench-tool"
            aria-pressed={tool === name}
            onClick={() => tell({ type: 'choose-tool', tool: name })}
          >
            <ToolSign sign={name} />
            {t(`bench.tool.${name}`)}
          </button>
        ))}
      </div>
      <div className="bench-tool-row bench-acts">
        <Act sign="undo" isOff={!canGoBack.undo} onPress={() => goBack('undo')} />
        <Act sign="redo" isOff={!canGoBack.redo} onPress={() => goBack('redo')} />
        <Act sign="boxInMiddle" onPress={boxInMiddle} />
        <Act sign="in" onPress={() => viewer.current?.zoom('in')} />
        <Act sign="out" onPress={() => viewer.current?.zoom('out')} />
        <Act sign="all" onPress={() => viewer.current?.zoom('all')} />
        <Act sign="closeOutline" isOff={work.corners.length < 3} onPress={closeOutline} />
        <Act
          sign={isChange ? 'leave' : 'drop'}
          isOff={isEmpty(work)}
          onPress={() => tell({ type: 'drop' })}
        />
      </div>
    </div>
  );
}

type ActSign = Exclude<Sign, (typeof TOOLS)[number]>;

const NAMES = {
  undo: 'bench.undo',
  redo: 'bench.redo',
  boxInMiddle: 'bench.boxInMiddle',
  in: 'bench.zoom.in',
  out: 'bench.zoom.out',
  all: 'bench.zoom.all',
  closeOutline: 'bench.closeOutline',
  drop: 'bench.drop',
  leave: 'bench.leave',
} as const satisfies Record<ActSign, string>;

/** One short word to be read, the whole name to be heard and on hovering. */
export function Act({
  sign,
  isOff = false,
  onPress,
}: {
  sign: ActSign;
  isOff?: boolean;
  onPress: () => void;
}) {
  const { t } = useWords();
  const name = t(NAMES[sign]);
  return (
    <button
      type="button"
      className={`bench-plain bench-act-${sign}`}
      disabled={isOff}
      aria-label={name}
      title={name}
      onClick={onPress}
    >
      <ToolSign sign={sign} />
      {t(`bench.short.${sign}`)}
    </button>
  );
}
