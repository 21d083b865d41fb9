import type { Answer } from '#domain/contract/routes';
import type { HouseEvent, HouseStateView } from '#domain/contract/house-events';
import { startLink, stepLink, wakeAt, type Link, type LinkEffect, type LinkEvent } from './live-link.ts';

/** What has changed in a house: statements, a finished picture; null where it may be anything. */
export type Change =
  Exclude<HouseEvent, { type: 'here' }> | { readonly type: 'pictures' | 'legibility'; readonly photo: null };
export type Changed = (changes: readonly Change[] | null) => void;

export interface LiveParts {
  /** Opens the event stream; the answer closes it. `broken` is not called any more after that. */
  readonly openStream: (heard: (event: HouseEvent) => void, broken: () => void) => () => void;
  readonly ask: (after: number | undefined) => Promise<Answer<'houseChanges'>>;
  readonly changed: Changed;
  /** How far the house is as this browser's memory of it knows; kept from one visit to the next. */
  readonly known: { state: HouseStateView | null };
  readonly now: () => number;
  readonly isVisible: boolean;
}

export interface LiveHouse {
  readonly tell: (event: 'shown' | 'hidden' | 'online') => void;
  readonly stop: () => void;
}

/** Tells of every change once, whichever way it was learned. */
export function startLiveHouse(parts: LiveParts): LiveHouse {
  const { known, changed } = parts;
  let link: Link = startLink(parts.isVisible, parts.now());
  let timer: ReturnType<typeof setTimeout> | undefined;
  let close = () => {};
  let isStopped = false;

  const happen = (event: LinkEvent) => {
    if (isStopped) return;
    const next = stepLink(link, event, parts.now());
    link = next.link;
    for (const effect of next.effects) doIt[effect]();
    clearTimeout(timer);
    const wait = wakeAt(link) - parts.now();
    if (Number.isFinite(wait)) timer = setTimeout(() => happen('tick'), Math.max(0, wait));
  };
  const doIt: Record<LinkEffect, () => void> = {
    open() {
      const closeThis = parts.openStream(hear, () => {
        closeThis();
        happen('broken');
      });
      close = closeThis;
    },
    close: () => close(),
    ask() {
      parts.ask(known.state?.size).then(
        (answer) => {
          if (isStopped) return;
          learn(answer);
          happen('answered');
        },
        () => happen('unanswered'),
      );
    },
  };
  const hear = (event: HouseEvent) => {
    if (isStopped) return;
    happen('heard');
    if (isGap(known.state, event)) happen('behind');
    else if (event.type !== 'here') note(event);
    else known.state ??= { size: event.size, made: event.made };
  };
  const note = (event: Exclude<HouseEvent, { type: 'here' }>) => {
    const state = known.state;
    if (event.type !== 'statement') {
      if (state) known.state = { ...state, made: Math.max(state.made, event.made) };
      changed([event]);
    } else if (!state || event.seq >= state.size) {
      if (state) known.state = { ...state, size: event.seq + 1 };
      changed([event]);
    }
  };
  const learn = ({ size, made, statements }: Answer<'houseChanges'>) => {
    const before = known.state;
    known.state = {
      size: Math.max(size, before?.size ?? 0),
      made: Math.max(made, before?.made ?? 0),
    };
    if (!before) return;
    if (size > before.size) changed(statements && statements.filter(({ seq }) => seq >= before.size));
    if (made > before.made) {
      const what = ['pictures', 'legibility'] as const;
      changed(what.map((type) => ({ type, photo: null })));
    }
  };

  happen('tick');
  return {
    tell: happen,
    stop() {
      isStopped = true;
      clearTimeout(timer);
      close();
    },
  };
}

/** Whether something before this event was not heard. */
function isGap(state: HouseStateView | null, event: HouseEvent): boolean {
  if (!state) return false;
  if (event.type === 'statement') return event.seq > state.size;
  return event.type === 'here' && (event.size > state.size || event.made > state.made);
}
