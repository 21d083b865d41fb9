import type { Figure } from './figure.ts';

const [WIDTH, HEIGHT, LEFT, TOP] = [640, 300, 56, 24];
const INNER = { width: WIDTH - LEFT - 16, height: HEIGHT - TOP - 48 };
const MOST = 0.18;
const INK = '#1f1a14';

/** Share of regions judged unreadable and clear over blur, with the contrast that bars keep. */
export function plot(chosen: readonly Figure[], held: readonly Figure[]): string {
  const x = (share: number) => LEFT + (share / MOST) * INNER.width;
  const y = (part: number) => TOP + (1 - part) * INNER.height;
  const at = [...chosen, ...held].filter(({ across }) => across === 64).sort((a, b) => a.share - b.share);
  const parts = (of: (figure: Figure) => number) =>
    at.map((figure) => `${x(figure.share).toFixed(1)},${y(Math.min(1, of(figure))).toFixed(1)}`).join(' ');
  const all = ({ judged }: Figure) => judged.clear + judged.weak + judged.unreadable;
  const line = (points: string, dash: string, colour: string) =>
    `<polyline points="${points}" fill="none" stroke="${colour}" stroke-width="2" stroke-dasharray="${dash}"/>`;
  const dots = held
    .filter(({ across }) => across === 64)
    .map(
      (f) =>
        `<circle cx="${x(f.share).toFixed(1)}" cy="${y(f.judged.unreadable / all(f)).toFixed(1)}" r="3"/>`,
    );
  const ticks = [0, 0.0234, 0.0854, 0.12, 0.17].map(
    (share) =>
      `<line x1="${x(share)}" x2="${x(share)}" y1="${y(1)}" y2="${y(0)}" stroke="#d3c6b0"/>` +
      `<text x="${x(share)}" y="${y(0) + 16}" text-anchor="middle">${share}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" font-family="sans-serif" font-size="11" fill="${INK}">
<rect width="${WIDTH}" height="${HEIGHT}" fill="#fdfaf3"/>
${ticks.join('\n')}
<text x="8" y="${y(1) + 4}">1</text><text x="8" y="${y(0) + 4}">0</text>
${line(
  parts((f) => f.judged.clear / all(f)),
  '',
  '#47562c',
)}
${line(
  parts((f) => f.judged.unreadable / all(f)),
  '',
  '#a92f17',
)}
${line(
  parts((f) => f.contrast.large),
  '5 3',
  INK,
)}
${line(
  parts((f) => f.contrast.small),
  '2 3',
  INK,
)}
${dots.join('\n')}
<text x="${LEFT}" y="14">64 px across. Green: judged clear. Red: judged unreadable (dots: held back).</text>
<text x="${LEFT}" y="${HEIGHT - 6}">blur / narrow side. Dashed: contrast left in bars of 1/8; dotted: of 1/16.</text>
</svg>
`;
}
