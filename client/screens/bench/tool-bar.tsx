import type { RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { TOOLS, isEmpty, type Tool } from './bench-state.ts';
import { boxInView } from './box-in-view.ts';
import type { Desk, DeskEvent } from './desk-state.ts';
import type { Viewer } from './viewer.ts';

export interface ToolBarProps {
  desk: Desk;
  tell: (event: DeskEvent) => void;
  tallness: number;
  viewer: RefObject<Viewer | null>;
  focusOn: (selector: string) => void;
}

/** How each tool looks: a hand's way over the picture. */
const SIGNS: Readonly<Record<Tool, string>> = {
  look: 'M12 3v18M3 12h18M12 3l-2.5 3M12 3l2.5 3M12 21l-2.5-3M12 21l2.5-3M3 12l3-2.5M3 12l3 2.5M21 12l-3-2.5M21 12l-3 2.5',
  rectangle: 'M4 6h16v12H4z',
  polygon: 'M5 19L3 8l8-5 10 7-4 10z',
  tap: 'M9 9h6v6H9zM12 2v4M12 18v4M2 12h4M18 12h4',
};

/** Nothing comes or goes here while one draws: that would move the picture under the hand. */
export function ToolBar({ desk: { bench }, tell, tallness, viewer, focusOn }: ToolBarProps) {
  const { t } = useWords();
  const { work, past, future, tool } = bench;
  return (
    <div className="bench-tools">
      <div className="bench-tool-row" role="group" aria-label={t('bench.tool.title')}>
        {TOOLS.map((name) => (
          <button
            key={name}
            type="button"
            className="bench-tool"
            aria-pressed={tool === name}
            onClick={() => tell({ type: 'choose-tool', tool: name })}
          >
            <svg viewBox="0 0 24 24" aria-hidden="true">
              <path d={SIGNS[name]} />
            </svg>
            {t(`bench.tool.${name}`)}
          </button>
        ))}
      </div>
      <div className="bench-tool-row">
        <Plain label={t('bench.undo')} isOff={past.length === 0} onPress={() => tell({ type: 'undo' })} />
        <Plain label={t('bench.redo')} isOff={future.length === 0} onPress={() => tell({ type: 'redo' })} />
        <Plain
          label={t('bench.boxInMiddle')}
          onPress={() => {
            tell({ type: 'box-in-middle', ...boxInView(viewer.current, tallness) });
            focusOn('[data-hit=draft]');
          }}
        />
        <Plain label={t('bench.zoom.in')} onPress={() => viewer.current?.zoom('in')} />
        <Plain label={t('bench.zoom.out')} onPress={() => viewer.current?.zoom('out')} />
        <Plain label={t('bench.zoom.all')} onPress={() => viewer.current?.zoom('all')} />
        <Plain
          label={t('bench.closeOutline')}
          isOff={work.corners.length < 3}
          onPress={() => tell({ type: 'close-outline', reach: [0, 0] })}
        />
        <Plain label={t('bench.drop')} isOff={isEmpty(work)} onPress={() => tell({ type: 'drop' })} />
      </div>
    </div>
  );
}

function Plain({ label, isOff = false, onPress }: { label: string; isOff?: boolean; onPress: () => void }) {
  return (
    <button type="button" className="bench-plain" disabled={isOff} onClick={onPress}>
      {label}
    </button>
  );
}
