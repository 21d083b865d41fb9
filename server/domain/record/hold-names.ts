import type { HoldPhase } from './hold-phase.ts';

/** Where a covering stands with its inspection, on screen and in files: a part of a sentence. */
export const HOLD_NAMES = {
  en: {
    planned: 'not inspected yet',
    ready: 'ready for inspection',
    refused: 'refused',
    released: 'released',
    outrun: 'released, but not as it stands now',
    'under-release': 'closed under release',
    'under-taken-back': 'closed under a release taken back since',
    'without-release': 'closed without release',
  },
  ja: {
    planned: '検査前',
    ready: '検査待ち',
    refused: '差し戻し',
    released: '承認済み',
    outrun: '承認後に変わり、再検査が必要',
    'under-release': '承認を受けてふさいだ',
    'under-taken-back': '承認を受けてふさいだが、承認は後に取り消された',
    'without-release': '承認なしにふさいだ',
  },
} as const satisfies Record<'en' | 'ja', Record<HoldPhase, string>>;
