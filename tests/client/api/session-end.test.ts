import { expect, test } from 'vitest';
import { PROBLEMS, type ProblemCode } from '#domain/contract/problems';
import { createSessionEnd, refusal } from '../../../client/api/session-end.ts';

const answer = (code: ProblemCode) => ({
  type: '',
  title: '',
  status: PROBLEMS[code],
  detail: '',
  code,
  params: {},
});

test('one answer that nobody is signed in ends the session, and whoever listens is told once', () => {
  const end = createSessionEnd();
  let heard = 0;
  const stop = end.subscribe(() => (heard += 1));
  expect(refusal(401, answer('not-signed-in'), end).problem.code).toBe('not-signed-in');
  refusal(401, answer('not-signed-in'), end);
  expect([end.state(), heard]).toEqual(['ended', 1]);
  stop();
  end.signedIn();
  expect([end.state(), heard]).toEqual(['here', 1]);
});

test.each<ProblemCode>(['wrong-credentials', 'not-permitted', 'not-found', 'internal-error'])(
  '%s ends nothing',
  (code) => {
    const end = createSessionEnd();
    refusal(PROBLEMS[code], answer(code), end);
    expect(end.state()).toBe('here');
  },
);

test('an answer that is no problem document, even 401 from a proxy, is told as it is', () => {
  const end = createSessionEnd();
  expect(refusal(413, '<html>', end).problem).toMatchObject({ code: 'request-too-large', status: 413 });
  expect(end.state()).toBe('here');
});

test('whoever signs out on purpose is not told that they are signed out', () => {
  const end = createSessionEnd();
  end.leave();
  refusal(401, answer('not-signed-in'), end);
  expect(end.state()).toBe('leaving');
});

test('the server knows them again: an end is over, somebody else is said until it was read', () => {
  const end = createSessionEnd();
  end.hear();
  end.known();
  expect(end.state()).toBe('here');
  end.change();
  end.known();
  expect(end.state()).toBe('other');
  end.signedIn();
  expect(end.state()).toBe('here');
});
