import type { releases as english } from '../en/releases.ts';
import type { TranslationOf } from '../catalog.ts';

export const releases = {
  print: '印刷',
  pdf: 'PDF で保存',
  code: 'この承認を確かめるページへのコード',
  member: '部材 {{mark}}',
  takeBack: {
    open: '承認を取り消す…',
    title: '「{{name}}」の承認を取り消しますか',
    text: 'この承認を受けてふさぐことは、もうできなくなります。承認も取り消しも、あなたの名前と理由とともに記録に残ります。',
    textClosed:
      '{{when}}に、この承認を受けてふさいでいます。取り消すと、そのことがふさぎ工事のページと「要確認」に示されます。承認も取り消しも、あなたの名前と理由とともに記録に残ります。',
    submit: '承認を取り消す',
  },
} as const satisfies TranslationOf<typeof english>;
