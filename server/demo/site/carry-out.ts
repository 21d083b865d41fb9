import type { ReviewView } from '#domain/contract/review-views';
import type { UploadOutcome } from '#domain/contract/views';
import type { Act, ActOf, Story } from '../story/act.ts';
import { PASSWORD, PEOPLE, type Who } from '../story/people.ts';
import { SiteClient } from './site-client.ts';

export interface Instance {
  readonly origin: string;
  /** The address by which the first account is made. */
  readonly firstLink: string | null;
  /** Where it is aborted, no more is done. */
  readonly signal: AbortSignal;
  /** Sets the clock of the instance. */
  at(instant: string): void;
}

/** Each as somebody has signed in. */
export type Crew = Readonly<Record<Who, SiteClient>>;

/** Does all that the story tells, each at its time, through the public API. `tell` is given each act before it is done. */
export async function carryOut(
  instance: Instance,
  story: Story,
  jpegs: ReadonlyMap<string, Uint8Array>,
  tell: (act: Act) => void,
): Promise<Crew> {
  const client = () => new SiteClient(instance.origin);
  const crew = { carpenter: client(), second: client(), inspector: client(), builder: client() };
  instance.at(story.acts[0]?.at ?? '');
  await makeAccount(crew.carpenter, instance.firstLink?.split('/').at(-1) ?? '', 'carpenter');
  const doing = new Doing(story.house, crew, jpegs);
  for (const act of story.acts) {
    instance.signal.throwIfAborted();
    tell(act);
    instance.at(act.at);
    await doing.do(act);
  }
  return crew;
}

function makeAccount(client: SiteClient, link: string, who: Who): Promise<unknown> {
  const { name, email } = PEOPLE[who];
  return client.send('POST', `/links/${link}`, { name, email, password: PASSWORD });
}

class Doing {
  readonly #photos = new Map<string, string>();

  constructor(
    private readonly house: string,
    private readonly crew: Crew,
    private readonly jpegs: ReadonlyMap<string, Uint8Array>,
  ) {}

  async do(act: Act): Promise<void> {
    const by = this.crew[act.by];
    switch (act.does) {
      case 'say':
        return void (await by.send(act.method, act.path, act.body));
      case 'hand-in-schedule':
        return void (await by.sendText(
          `/houses/${this.house}/schedule?fileName=boathouse.csv`,
          'text/csv',
          act.text,
        ));
      case 'join':
        return this.#join(act.by);
      case 'add-photo':
        return this.#addPhoto(by, act);
      case 'tag':
        return void (await by.send('POST', `/photos/${this.#idOf(act.photo)}/tags`, act.tag));
      case 'say-of-photo':
        return void (await by.send('POST', `/photos/${this.#idOf(act.photo)}/${act.path}`, act.body));
      case 'release':
        return release(by, act);
    }
  }

  async #join(who: Who): Promise<void> {
    const { email, role } = PEOPLE[who];
    const { carpenter } = this.crew;
    const { link } = await carpenter.send<{ link: string }>('POST', `/houses/${this.house}/people`, {
      email,
      role,
    });
    await makeAccount(this.crew[who], link, who);
  }

  async #addPhoto(by: SiteClient, { photo, fileName }: ActOf<'add-photo'>): Promise<void> {
    const path = `/houses/${this.house}/photos`;
    const jpeg = this.jpegs.get(photo) ?? new Uint8Array();
    const { results } = await by.sendPhoto<{ results: UploadOutcome[] }>(path, fileName, jpeg);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(`${fileName} was not taken.`);
    this.#photos.set(photo, outcome.photo.id);
  }

  #idOf(name: string): string {
    const id = this.#photos.get(name);
    if (id === undefined) throw new Error(`${name} is said to show something before it was added.`);
    return id;
  }
}

const LOOK_EVERY_MS = 100;

/** Looks at every line once all regions are measured, and accepts by name what has no record. */
async function release(inspector: SiteClient, { covering, release }: ActOf<'release'>): Promise<void> {
  let review = await inspector.get<ReviewView>(`/coverings/${covering}/review`);
  while (review.evidence.some(isUnmeasured)) {
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    review = await inspector.get<ReviewView>(`/coverings/${covering}/review`);
  }
  const { id, note, waived } = release;
  const members = review.lines.map(({ mark, basis, state }) => ({
    ...{ mark, basis, waived: state === 'on-record' || state === 'hidden-before' ? null : waived },
  }));
  await inspector.send('POST', `/coverings/${covering}/releases`, { id, members, note });
}

const isUnmeasured = ({ tag }: ReviewView['evidence'][number]) =>
  tag.legibility.verdict === null && !tag.legibility.reasons.includes('not-measured');
