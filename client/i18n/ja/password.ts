import type { TranslationOf } from '../catalog.ts';
import type { password as english } from '../en/password.ts';

export const password = {
  account: {
    title: 'アカウント',
    details: '登録情報',
    nameLabel: 'お名前',
  },
  title: 'パスワード',
  lead: 'パスワードを変えると、ほかの端末でのサインインはすべて切れ、あなたのカレンダーのアドレスも無効になります。',
  present: '今のパスワード',
  next: '新しいパスワード',
  tokens: 'アクセストークンも無効にする',
  submit: 'パスワードを変える',
  changed:
    'パスワードを変えました。ほかの端末ではサインアウトし、カレンダーのアドレスは無効になりました。必要なら作り直してください。',
  sessions: {
    title: 'サインイン中の端末',
    lead: '心当たりのないものがあれば、すべての端末でサインアウトし、パスワードを変えてください。',
    list: 'サインインの一覧',
    device: '端末',
    since: 'サインイン',
    seen: '最後の利用',
    here: '（この端末）',
    unknown: '不明な端末',
    browserOn: '{{system}}の{{browser}}',
    end: 'すべての端末でサインアウト',
    endTitle: 'すべての端末でサインアウトしますか？',
    endText:
      'この端末も含めて、サインインがすべて切れ、カレンダーのアドレスも無効になります。この端末で送信を待っている記入は残ります。',
  },
  link: {
    title: 'パスワードを作り直す',
    by: 'アカウント {{email}} のために、{{name}}さんが作ったリンクです。使った人はあなたの名前で操作できるため、リンクを作ったことは、あなたが関わるすべての建物の台帳に残ります。',
    byProgram:
      'アカウント {{email}} のために、運用している人が作ったリンクです。作ったことは、あなたが関わるすべての建物の台帳に残ります。',
    ends: 'サインイン、カレンダーのアドレス、アクセストークンは、すべて無効になります。',
    submit: 'パスワードを決める',
  },
} as const satisfies TranslationOf<typeof english>;
