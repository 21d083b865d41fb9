import type { TranslationOf } from '../catalog.ts';
import type { account as english } from '../en/account.ts';

export const account = {
  signIn: {
    again:
      'サインインが切れました。サインインすると元のページに戻ります。この端末で送信を待っている記入は残っています。',
    title: 'サインイン',
    lead: '荒壁は木組みの写真記録です。どの写真にどの部材が写り、隠れる前に何の記録が足りないかを示し、部材ごとの履歴を残します。',
    email: 'メールアドレス',
    password: 'パスワード',
    submit: 'サインイン',
    lost: 'パスワードを忘れたときは、関わっている建物の記録の責任者に頼んでください。「関係者」の画面で、作り直すためのリンクを作れます。サーバーを運用している人は、どのアカウントのリンクも作れます：npm run reset-link -- メールアドレス',
    noAccount:
      'アカウントがない人は、建物の記録の責任者から一度だけ使えるリンクを受け取ってください。最初のアカウントは、サーバーの起動時に表示されるリンクで作ります。',
  },
  link: {
    deadTitle: 'このリンクは使えません',
    firstTitle: '最初のアカウントを作る',
    firstLead:
      'この設置先で最初のアカウントです。アカウントのある人は誰でも建物の記録を始められ、始めた人がその責任者となって、ほかの人に役割を与えます。データベースを失って責任者のいなくなった建物は、このアカウントが引き継ぎます。',
    joinTitle: '「{{house}}」の記録に加わる',
    joinLead: '役割：{{role}}',
    name: 'お名前',
    nameHint: '記入や入力のすべてに、この名前が残ります。',
    passwordHint: '10文字以上。短い文にすると覚えやすくなります。',
    submit: 'アカウントを作る',
    loading: 'リンクを確かめています…',
    signedIn:
      '{{name}}さんとしてサインインしています。このリンクは別のアカウントを作ります。ご自分用でなければ、先にサインアウトしてください。',
    openHouses: '建物の一覧へ',
  },
  missing: {
    email: 'メールアドレスを入れてください（例 name@example.org）。',
    password: 'パスワードを入れてください。',
    shortPassword: '10文字以上にしてください。今は{{count, number}}文字です。',
    name: 'お名前を入れてください。',
  },
} as const satisfies TranslationOf<typeof english>;
