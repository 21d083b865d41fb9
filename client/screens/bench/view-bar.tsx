import type { RefObject } from 'react';
import { Act } from './tool-bar.tsx';
import type { Viewer } from './viewer.ts';

/** Nearer, farther, all of it: what stays of the tools where nothing is drawn. */
export function ViewBar({ viewer }: { viewer: RefObject<Viewer | null> }) {
  return (
    <div className="bench-tools" data-tool="look">
      <div className="bench-tool-row bench-acts">
        <Act sign="in" onPress={() => viewer.current?.zoom('in')} />
        <Act sign="out" onPress={() => viewer.current?.zoom('out')} />
        <Act sign="all" onPress={() => viewer.current?.zoom('all')} />
      </div>
    </div>
  );
}
