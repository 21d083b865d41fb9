import { QueryClient } from '@tanstack/react-query';
import { expect, test } from 'vitest';
import { amendedQuery } from '../../../client/api/amended-query.ts';
import { touchLogOf } from '../../../client/api/touch-logs.ts';

let houses = 0;

/** A view that counts, of each photo, how much has been read of it. */
function site() {
  const client = new QueryClient();
  const house = `h${String((houses += 1))}`;
  const log = touchLogOf(house);
  const reads: string[] = [];
  let told = 'first';
  const query = amendedQuery({
    house,
    queryKey: ['house', house, 'report'],
    readWhole: () => {
      reads.push('whole');
      return Promise.resolve({ whole: told, parts: [] as string[] });
    },
    readPart: (photo) => {
      reads.push(photo);
      return Promise.resolve(photo);
    },
    amend: (view, photo) => (photo === 'stranger' ? null : { ...view, parts: [...view.parts, photo] }),
  });
  const read = () => client.fetchQuery({ ...query, staleTime: 0 });
  const readIfStale = () => client.fetchQuery(query);
  const invalidate = () => client.invalidateQueries({ queryKey: query.queryKey });
  return { log, reads, read, readIfStale, invalidate, tell: (text: string) => (told = text) };
}

test('is read whole first, and by parts after tags on a few photos', async () => {
  const { log, reads, read } = site();
  expect(await read()).toEqual({ whole: 'first', parts: [] });
  log.note('a');
  log.note('b');
  log.note('a');
  expect(await read()).toEqual({ whole: 'first', parts: ['a', 'b'] });
  expect(reads).toEqual(['whole', 'a', 'b']);
});

test('is read whole where anything may have changed, where nothing was heard, and after many photos', async () => {
  const { log, reads, read } = site();
  await read();
  log.note('a');
  log.note(null);
  await read();
  await read();
  for (const photo of ['a', 'b', 'c', 'd']) log.note(photo);
  await read();
  expect(reads).toEqual(['whole', 'whole', 'whole', 'whole']);
});

test('is read whole where a part does not fit', async () => {
  const { log, reads, read, tell } = site();
  await read();
  tell('second');
  log.note('stranger');
  expect(await read()).toEqual({ whole: 'second', parts: [] });
  expect(reads).toEqual(['whole', 'stranger', 'whole']);
});

test('what is said while it is read belongs to the next reading', async () => {
  const { log, reads, read } = site();
  const reading = read();
  log.note('late');
  await reading;
  await read();
  expect(reads).toEqual(['whole', 'late']);
});

test('is read whole once something else was said, whatever photos were heard of besides', async () => {
  const { log, reads, read, invalidate } = site();
  await read();
  log.note('a');
  await invalidate();
  await read();
  log.note('b');
  await read();
  expect(reads).toEqual(['whole', 'whole', 'b']);
});

test('is read again only where a photo was heard of since', async () => {
  const { log, reads, readIfStale } = site();
  await readIfStale();
  await readIfStale();
  log.note('a');
  await readIfStale();
  await readIfStale();
  expect(reads).toEqual(['whole', 'a']);
});
