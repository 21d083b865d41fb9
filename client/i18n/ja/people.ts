import type { TranslationOf } from '../catalog.ts';
import type { people as english } from '../en/people.ts';

export const people = {
  title: '関係者',
  lead: 'この記録に携わる人です。ここにない人には、建物があることも見えません。',
  list: 'この建物の関係者',
  name: 'お名前',
  email: 'メールアドレス',
  role: '役割',
  action: '操作',
  you: '（あなた）',
  roles: {
    owner: '建物の事項と関係者を変更できます。',
    carpenter: '写真を撮り、記入し、記録漏れを探します。',
    inspector: '隠れるところを確かめます。',
    builder: '工事の進みを見ます。',
  },
  removeNamed: '{{name}}の役割を外す',
  removeTitle: '{{name}}の役割を外しますか？',
  removeText: 'この建物は見えなくなります。記録したものは名前とともに残ります。',
  removeYes: '役割を外す',
  addTitle: '役割を渡す',
  addRole: 'この建物での役割',
  submit: '役割を渡す',
  added: '{{name}}が関係者に加わりました。',
  linkTitle: '{{email}} のアカウントはまだありません',
  linkText: 'このリンクを渡してください。一度だけ使え、アカウントと役割が同時にできます。',
  link: '一度だけのリンク',
  onlyKeeper: '関係者を変更できるのは記録の責任者だけです。',
} as const satisfies TranslationOf<typeof english>;
