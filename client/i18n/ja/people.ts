import type { TranslationOf } from '../catalog.ts';
import type { people as english } from '../en/people.ts';

export const people = {
  title: '関係者',
  lead: 'この建物の記録に携わる人です。ここに載っていない人には、建物があることも分かりません。',
  list: 'この建物の関係者',
  name: 'お名前',
  email: 'メールアドレス',
  role: '役割',
  action: '操作',
  you: '（あなた）',
  roles: {
    owner: '建物概要と関係者の変更もできます。',
    carpenter: '写真を撮り、記入し、未記録の部材を探します。',
    inspector: '隠蔽部を確かめます。',
    builder: '工事の進み具合を見ます。',
  },
  onlyOne: 'ただ一人の責任者です。外す前に、ほかの人を責任者にしてください。',
  removeNamed: '{{name}}の役割を外す',
  removeTitle: '{{name}}の役割を外しますか？',
  removeText: 'この人には建物が見えなくなります。この人の記入や入力は、名前とともに残ります。',
  removeYes: '役割を外す',
  addTitle: '役割を与える',
  addRole: 'この建物での役割',
  submit: '役割を与える',
  added: '{{name}}が関係者に加わりました。',
  linkTitle: '{{email}} のアカウントはまだありません',
  linkText_other:
    'このリンクを渡してください。{{count, number}}日以内に一度だけ使え、アカウントと役割が同時にできます。リンクが出るのは今この場だけです。',
  invited: '招待済み（まだ参加していません）',
  linkUntil: 'リンクの期限：{{when}}',
  link: '一度だけのリンク',
  onlyKeeper: '関係者を変更できるのは記録の責任者だけです。',
} as const satisfies TranslationOf<typeof english>;
