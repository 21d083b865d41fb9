import type { TranslationOf } from '../catalog.ts';
import type { zones as english } from '../en/zones.ts';

export const zones = {
  heights: '高さは建物の基準高さからの値です（通り芯の階：{{levels}}）。',
  facing: '{{line}}通り側だけ',
  problem: {
    'unknown-line': '{{field}}：「{{said}}」という通りは、選んだ並びにありません。',
    'unknown-corner':
      '「{{said}}」という番付は通り芯にありません。番付は空白で区切って書いてください（例：い一 ろ三）。',
    'no-width': '幅がありません。始まりと終わりが同じ通りです。',
    'no-height': '高さがありません。上端を下端より高くしてください。',
    'too-few-corners': '向かい合う二つの角、またはすべての角を、空白で区切って書いてください。',
    'not-convex': '角が内側に折れています。二つの範囲に分けてください。',
  },
} as const satisfies TranslationOf<typeof english>;
