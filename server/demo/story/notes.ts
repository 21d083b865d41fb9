import type { Who } from './people.ts';

interface Note {
  /** After the raising. */
  readonly day: number;
  readonly by: Who;
  readonly text: string;
}

const both = (ja: string, en: string) => `${ja}\n${en}`;

/** What the crew wrote in the evenings. */
export const NOTES: readonly Note[] = [
  {
    day: -6,
    by: 'carpenter',
    text: both(
      '材を搬入。番付を確かめながら通りごとに並べた。柱二十五本、梁はまだ作業場に二本。',
      'Timber delivered and laid out line by line, checked by its marks. Twenty-five posts are here, two beams still in the shop.',
    ),
  },
  {
    day: 0,
    by: 'carpenter',
    text: both(
      '建方。一階の柱、足固め、床梁。風なし、八人。い通りから始めて、ほ通りまで。',
      'Raising: ground-floor posts, foot ties, floor beams. No wind, eight hands. From line い through to ほ.',
    ),
  },
  {
    day: 1,
    by: 'carpenter',
    text: both(
      '二階の柱、桁、小屋組、棟木。夕方上棟。仮筋かいは外さないこと。',
      'Loft posts, plates, roof beams, ridge. Topped out towards evening. The temporary braces stay where they are.',
    ),
  },
  {
    day: 2,
    by: 'second',
    text: both(
      '垂木を掛ける。軒先の出は糸で揃えた。',
      'Rafters up. Their tails are lined through to a string.',
    ),
  },
  {
    day: 3,
    by: 'carpenter',
    text: both(
      '梁と桁を締める。込栓を打ち終えたところから写真。',
      'Beams and plates drawn tight. Photographed bay by bay as the pegs went in.',
    ),
  },
  {
    day: 6,
    by: 'carpenter',
    text: both(
      '貫を通し、楔を打つ。緩い楔が二か所、打ち直し。',
      'Rails through and wedged. Two wedges sat loose and were driven again.',
    ),
  },
  {
    day: 7,
    by: 'second',
    text: both(
      '湖側の野地板は明日。検査員に見てもらう分の写真を揃えた。',
      'The lake side gets its boards tomorrow. Photos for the inspector are in.',
    ),
  },
  {
    day: 8,
    by: 'inspector',
    text: both(
      '湖側の屋根を確認。記録のないものは足場から見た。',
      'Looked over the lake side of the roof. What has no photo I saw from the scaffold.',
    ),
  },
  {
    day: 9,
    by: 'carpenter',
    text: both(
      '午後から雨の予報。山側も野地板を張り終えた。',
      'Rain forecast for the afternoon: the hill side is boarded, too.',
    ),
  },
  {
    day: 12,
    by: 'carpenter',
    text: both('施主が見学。足場は一人ずつ。', 'The owners came to look. One at a time on the scaffold.'),
  },
  {
    day: 18,
    by: 'second',
    text: both(
      '大引と床束。又三の床束は石の高さが合わず、削り直し。',
      'Floor bearers on their posts. Those on 又三 did not meet their stones and were cut again.',
    ),
  },
  {
    day: 22,
    by: 'carpenter',
    text: both('根太を留め終えた。明日から小舞。', 'Joists fixed. Lath begins tomorrow.'),
  },
  {
    day: 25,
    by: 'second',
    text: both(
      '西の壁と舟入りの壁の小舞。土は寝かせて三週間、よく練れている。',
      'Lath on the west wall and the wall of the slip. The clay has rested for three weeks and works well.',
    ),
  },
  {
    day: 28,
    by: 'carpenter',
    text: both(
      '西の壁は明後日に荒壁。写真の足りない貫がある。足りない所を撮ってから塗る。',
      'The west wall gets its first coat the day after tomorrow. Some rails lack a photo: camera first, then clay.',
    ),
  },
];
