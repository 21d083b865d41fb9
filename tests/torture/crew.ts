import { randomUUID } from 'node:crypto';
import type { UploadOutcome } from '#domain/contract/views';
import { HttpProblem, type Client } from '../support/server.ts';
import { between, oneOf, type Chance } from '../support/seeded.ts';
import type { SomeFile } from './distinct-jpegs.ts';
import type { Asked, Claim, Journal } from './journal.ts';

export const MARKS = ['い一', 'い二', 'い三', 'ろ一', 'ろ二', 'は通り貫', '又一'];
const STAGES = ['cut', 'raised', 'pegged'];

type Draft = Omit<Asked, 'acknowledged'>;

/**
 * One person with a phone: uploads and tags without a pause, remembers what was asked and what was
 * answered, and after a break first repeats the request that got no answer.
 */
export class CrewMember {
  readonly #photos: string[] = [];
  /** Standing tags of this person. */
  #tags: { id: string; photo: string; mark: string }[] = [];
  #open: string[] = [];
  #unanswered: Asked | null = null;
  #notes = 0;

  constructor(
    private readonly house: string,
    private readonly number: number,
    private readonly journal: Journal,
    private readonly chance: Chance,
    private readonly nextFile: (chance: Chance) => SomeFile,
  ) {}

  /** Works until the server has been killed; a refusal, or a break before that, is a defect and is thrown. */
  async workUntilCutOff(client: Client, isKilled: () => boolean): Promise<void> {
    for (;;) {
      const asked: Asked = { ...this.#next(), acknowledged: false };
      this.journal.asked.push(asked);
      this.#unanswered = asked;
      try {
        await this.#send(asked, client);
      } catch (error) {
        if (isKilled() && isBroken(error)) return;
        throw error;
      }
    }
  }

  /** True when there was a request without an answer. */
  async repeatUnanswered(client: Client): Promise<boolean> {
    const asked = this.#unanswered;
    if (asked) await this.#send(asked, client);
    return asked !== null;
  }

  async #send(asked: Asked, client: Client): Promise<void> {
    await asked.send(client);
    asked.acknowledged = true;
    asked.learn();
    this.#unanswered = null;
  }

  #next(): Draft {
    const dice = this.chance();
    if (dice < 0.3 || this.#photos.length === 0) return this.#upload();
    if (dice < 0.6 || this.#tags.length < 2) return this.#tag();
    if (dice < 0.72) return this.#supersede();
    if (dice < 0.8) return this.#withdraw();
    if (dice < 0.86 || this.#open.length === 0) return this.#plan();
    return dice < 0.93 ? this.#close() : this.#note();
  }

  #upload(): Draft {
    const files = Array.from({ length: Math.ceil(between(this.chance, 0, 3)) }, () =>
      this.nextFile(this.chance),
    );
    let added: string[] = [];
    return {
      claims: files.map(claimOfFile),
      send: async (client) => {
        const { results } = await client.upload<{ results: UploadOutcome[] }>(this.house, files);
        added = results.map((result) => {
          if (result.outcome === 'refused') throw new HttpProblem(result.problem.status, result.problem);
          return result.photo.id;
        });
      },
      learn: () => void this.#photos.push(...added),
    };
  }

  #tag(): Draft {
    const [id, photo, facts] = [randomUUID(), oneOf(this.chance, this.#photos), this.#facts()];
    return {
      claims: [claim('tag.placed', id, { tag: id, photo, ...facts })],
      send: (client) => client.post(`/photos/${photo}/tags`, { id, ...facts }),
      learn: () => void this.#tags.push({ id, photo, mark: facts.mark }),
    };
  }

  #supersede(): Draft {
    const old = oneOf(this.chance, this.#tags);
    const [id, facts] = [randomUUID(), this.#facts()];
    const payload = { tag: id, photo: old.photo, supersedes: old.id, was: old.mark, ...facts };
    return {
      claims: [claim('tag.superseded', id, payload)],
      send: (client) => client.put(`/tags/${old.id}`, { id, ...facts }),
      learn: () => {
        this.#tags = this.#tags.filter((tag) => tag !== old);
        this.#tags.push({ id, photo: old.photo, mark: facts.mark });
      },
    };
  }

  #withdraw(): Draft {
    const old = oneOf(this.chance, this.#tags);
    const reason = `seen again ${Math.floor(this.chance() * 1000)}`;
    return {
      claims: [claim('tag.withdrawn', old.id, { tag: old.id, photo: old.photo, mark: old.mark, reason })],
      send: (client) => client.delete(`/tags/${old.id}?reason=${encodeURIComponent(reason)}`),
      learn: () => void (this.#tags = this.#tags.filter((tag) => tag !== old)),
    };
  }

  #plan(): Draft {
    const id = randomUUID();
    const hides = MARKS.filter(() => this.chance() < 0.4).map((mark) => ({ mark, least: 'pegged' }));
    const facts = { name: `Rough coat ${id}`, kind: 'plaster', plannedDay: '2026-05-20', hides, note: '' };
    return {
      claims: [claim('covering.planned', id, { covering: id, ...facts })],
      send: (client) => client.post(`/houses/${this.house}/coverings`, { id, ...facts }),
      learn: () => void this.#open.push(id),
    };
  }

  #close(): Draft {
    const id = oneOf(this.chance, this.#open);
    const closing = { closedAt: '2026-05-21T03:00:00.000Z', note: `by ${this.number}` };
    const why = 'Nobody inspects this house.';
    return {
      claims: [claim('covering.closed', id, { covering: id, ...closing, release: null, without: why })],
      send: (client) => client.post(`/coverings/${id}/close`, { ...closing, withoutRelease: why }),
      learn: () => void (this.#open = this.#open.filter((other) => other !== id)),
    };
  }

  /** Everybody has a day of their own, since a note replaces the same person's note of that day. */
  #note(): Draft {
    const day = `2026-05-0${this.number + 1}`;
    const text = `雨。${this.number}の${(this.#notes += 1)}\n"quoted"`;
    return {
      claims: [claim('note.written', `${day} ${text}`, { day, text })],
      send: (client) => client.put(`/houses/${this.house}/days/${day}/note`, { text }),
      learn: () => undefined,
    };
  }

  #facts() {
    const [x, y] = [between(this.chance, 0, 0.5), between(this.chance, 0, 0.5)];
    return {
      mark: oneOf(this.chance, MARKS),
      stage: oneOf(this.chance, STAGES),
      region: { shape: 'rectangle', x, y, w: 0.3, h: 0.4 },
      note: this.chance() < 0.2 ? '継手' : '',
    };
  }
}

function claim(kind: string, key: string, payload: Record<string, unknown>): Claim {
  return { kind, key, payload };
}

function claimOfFile(file: SomeFile): Claim {
  const payload = { sha256: file.sha256, fileName: file.name, bytes: file.bytes.length };
  return { kind: 'photo.added', key: file.sha256, payload, file };
}

/** What fetch throws when the other side is gone, before, in the middle of or after the answer's head. */
function isBroken(error: unknown): boolean {
  return error instanceof TypeError && !(error instanceof HttpProblem);
}
