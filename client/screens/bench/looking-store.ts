import { BLANK, openDesk } from './desk-state.ts';
import { createDeskStore, type DeskStore } from './desk-store.ts';

/** A desk on which tags can be chosen and nothing is drawn. */
export function createLookingStore(selected: string | null): DeskStore {
  const store = createDeskStore(openDesk({ begun: null, fresh: BLANK, selected, tool: 'look' }));
  return {
    ...store,
    tell(event) {
      if (event.type === 'press')
        store.tell({ type: 'select', tag: event.hit.on === 'tag' ? event.hit.tag.id : null });
      else if (event.type === 'select' || event.type === 'escape') store.tell(event);
    },
  };
}
