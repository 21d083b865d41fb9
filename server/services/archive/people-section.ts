import { html, type Html } from './html.ts';
import type { RoleEntry } from './roles.ts';
import type { Telling } from './telling.ts';

/** Who had which role in the house from when to when. */
export function peopleSection(telling: Telling): Html {
  return html`<ul>
    ${telling.roles.map((entry) => roleLine(telling, entry))}
  </ul>`;
}

function roleLine({ words, role, local, speaker }: Telling, entry: RoleEntry): Html {
  const { kind, payload, at, seq } = entry;
  const what =
    kind === 'role.granted'
      ? words.roleGiven(payload.person.name, role[payload.role])
      : words.roleTaken(payload.person.name);
  return html`<li>${local(at)} ${what}${words.and}${speaker(entry)} · ${words.entry(seq)}</li> `;
}
