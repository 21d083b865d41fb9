import { BEAT_MS } from '#domain/contract/live';

/**
 * How a window stays in step with a house: over the event stream while that speaks, by asking while it does
 * not. Pure: what happens goes in with the time, what is to be done comes out.
 */
export interface Link {
  readonly isVisible: boolean;
  /**
   * 'silent': open, and nothing has come out of it yet, as behind a proxy that gathers. 'doubted': it speaks,
   * but an earlier one fell silent after its first words, so that asking goes on beside it for a while.
   */
  readonly stream: 'none' | 'silent' | 'doubted' | 'speaking';
  /** When the stream was opened or last heard. */
  readonly since: number;
  /** Streams in a row that never spoke. */
  readonly failures: number;
  readonly isDoubtful: boolean;
  /** From when on a word of this stream is enough to rely on it. */
  readonly trustAt: number;
  /** When to open one, while there is none. */
  readonly openAt: number;
  readonly askAt: number;
  readonly isAsking: boolean;
}

export type LinkEvent =
  | 'tick'
  | 'shown'
  | 'hidden'
  | 'online'
  | 'heard'
  | 'broken'
  /** It is known that something was missed. */
  | 'behind'
  | 'answered'
  | 'unanswered';

export type LinkEffect = 'open' | 'close' | 'ask';

/** A stream that works says its first word after one round trip. */
export const FIRST_WORD_MS = 3000;
export const SILENCE_MS = BEAT_MS + 3000;
export const ASK_MS = 1500;
export const UNANSWERED_MS = 5000;
export const HIDDEN_ASK_MS = 60_000;
export const DOUBT_MS = 60_000;
const REOPEN_MS = 1000;
const REOPEN_MOST_MS = 60_000;

/** Asks at once: what is on screen was read about now. */
export function startLink(isVisible: boolean, now: number): Link {
  return {
    isVisible,
    stream: 'none',
    since: now,
    failures: 0,
    isDoubtful: false,
    trustAt: now,
    openAt: now,
    askAt: now,
    isAsking: false,
  };
}

export function stepLink(link: Link, event: LinkEvent, now: number): { link: Link; effects: LinkEffect[] } {
  const effects: LinkEffect[] = [];
  let next = take(link, event, now);
  if (next.stream !== 'none' && (!next.isVisible || now >= silentUntil(next))) {
    effects.push('close');
    next = next.isVisible ? fellSilent(next, now) : { ...next, stream: 'none', openAt: now };
  }
  if (next.isVisible && next.stream === 'none' && now >= next.openAt) {
    effects.push('open');
    next = opened(next, now);
  }
  if (!next.isAsking && now >= next.askAt) {
    effects.push('ask');
    next = { ...next, isAsking: true, askAt: Infinity };
  }
  return { link: next, effects };
}

/** When the next 'tick' is due. */
export function wakeAt(link: Link): number {
  const ask = link.isAsking ? Infinity : link.askAt;
  if (!link.isVisible) return ask;
  return Math.min(ask, link.stream === 'none' ? link.openAt : silentUntil(link));
}

function take(link: Link, event: LinkEvent, now: number): Link {
  // The last word of a stream that was closed.
  if (link.stream === 'none' && (event === 'heard' || event === 'broken')) return link;
  switch (event) {
    case 'tick':
      return link;
    case 'shown':
      return { ...link, isVisible: true, askAt: now };
    case 'hidden':
      return { ...link, isVisible: false, askAt: now + HIDDEN_ASK_MS };
    case 'online':
      return { ...link, openAt: now, failures: 0, askAt: now };
    case 'heard':
      return heard(link, now);
    case 'broken':
      return broken(link, now);
    case 'behind':
      return { ...link, askAt: now };
    case 'answered':
      return asked(link, now + (link.isVisible ? ASK_MS : HIDDEN_ASK_MS));
    case 'unanswered':
      return asked(link, now + (link.isVisible ? UNANSWERED_MS : HIDDEN_ASK_MS));
  }
}

function asked(link: Link, next: number): Link {
  return {
    ...link,
    isAsking: false,
    askAt: link.stream === 'speaking' ? link.askAt : Math.min(link.askAt, next),
  };
}

function opened(link: Link, now: number): Link {
  const trustAt = now + (link.isDoubtful ? DOUBT_MS : 0);
  return { ...link, stream: 'silent', since: now, trustAt, askAt: Math.min(link.askAt, now + ASK_MS) };
}

function heard(link: Link, now: number): Link {
  const next: Link = { ...link, since: now, failures: 0 };
  if (now < link.trustAt) return { ...next, stream: 'doubted' };
  const askAt = link.stream === 'speaking' ? link.askAt : Infinity;
  return { ...next, stream: 'speaking', isDoubtful: false, askAt };
}

function fellSilent(link: Link, now: number): Link {
  return { ...broken(link, now), isDoubtful: link.isDoubtful || link.stream === 'speaking' };
}

/** What was missed is asked for at once; the next stream comes later each time that none has spoken. */
function broken(link: Link, now: number): Link {
  const openAt = now + Math.min(REOPEN_MS * 2 ** link.failures, REOPEN_MOST_MS);
  const askAt = link.stream === 'speaking' ? now : link.askAt;
  return { ...link, stream: 'none', openAt, failures: link.failures + 1, askAt };
}

function silentUntil({ stream, since }: Link): number {
  return since + (stream === 'silent' ? FIRST_WORD_MS : SILENCE_MS);
}
