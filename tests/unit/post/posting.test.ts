import { describe, expect, test } from 'vitest';
import {
  type DraftPicture,
  draftsFrom,
  fieldsOf,
  MOST_BYTES,
  troubleWith,
} from '#app/_post/draft-picture.ts';
import { stateNumber } from '#app/_post/picture-names.ts';
import { AT_A_TIME, nextPostings, type Posting, readyToStart } from '#app/_post/posting-queue.ts';
import { initialsOf } from '#app/_ui/initials.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { lightWords, notedWords } from '#words/noted.ts';

function fileOf(sizeBytes: number): File {
  const file = new File(['x'], 'valley.jpg', { type: 'image/jpeg' });
  Object.defineProperty(file, 'size', { value: sizeBytes });
  return file;
}

const rules = { paintingsOnly: false, firstKey: 0 };
const drafts = (count: number) =>
  draftsFrom(
    Array.from({ length: count }, () => fileOf(1000)),
    rules,
  );

function only(draft: DraftPicture | undefined): DraftPicture {
  if (!draft) throw new Error('There is no draft.');
  return draft;
}

describe('chosen pictures', () => {
  test('begin with the reference on a board that has none, and are paintings afterwards', () => {
    expect(drafts(3).map(({ kind }) => kind)).toEqual(['reference', 'painting', 'painting']);
    const later = draftsFrom([fileOf(1)], { paintingsOnly: true, firstKey: 3 });
    expect(later.map(({ kind, key }) => [kind, key])).toEqual([['painting', 'draft-3']]);
  });

  test('are not sent before the rights line of a reference is there', () => {
    const reference = only(drafts(1)[0]);
    expect(troubleWith(reference)).toMatch(/whose photograph/);
    expect(troubleWith({ ...reference, rights: 'mine' })).toBeNull();
    expect(troubleWith({ ...reference, rights: 'free', credit: '  ' })).toMatch(/credit/);
    expect(troubleWith({ ...reference, rights: 'free', credit: 'A. Walker, CC BY 4.0' })).toBeNull();
  });

  test('say their size when they are empty or too large', () => {
    const draft = only(drafts(1)[0]);
    expect(troubleWith({ ...draft, file: fileOf(0) })).toMatch(/0 bytes/);
    expect(troubleWith({ ...draft, file: fileOf(MOST_BYTES + 5_000_000) })).toMatch(/65 MB/);
  });

  test('send only the fields of their kind', () => {
    const draft = { ...only(drafts(1)[0]), rights: 'free' as const, credit: ' A. Walker ', follows: 'p1' };
    expect(fieldsOf(draft)).toEqual({ kind: 'reference', rights: 'free', credit: 'A. Walker' });
    expect(fieldsOf({ ...draft, kind: 'painting' })).toEqual({ kind: 'painting', follows: 'p1' });
  });

  test('send paint, drying and light of a painting as they are stored, and only what was said', () => {
    const draft = {
      ...only(drafts(1)[0]),
      kind: 'painting' as const,
      medium: ' Oil ',
      drying: 'wet' as const,
    };
    expect(fieldsOf(draft)).toEqual({ kind: 'painting', medium: 'oil', drying: 'wet' });
    expect(fieldsOf({ ...draft, medium: 'Egg tempera', drying: null, light: 'flash' })).toEqual({
      kind: 'painting',
      medium: 'Egg tempera',
      light: 'flash',
    });
    expect(fieldsOf({ ...draft, kind: 'reference', rights: 'mine' })).toEqual({
      kind: 'reference',
      rights: 'mine',
    });
  });

  test('are captioned by their paint and whether it was wet', () => {
    expect(notedWords({ medium: 'oil', drying: 'wet' })).toBe('Oil, wet');
    expect(notedWords({ medium: 'egg tempera', drying: null })).toBe('Egg tempera');
    expect(notedWords({ medium: null, drying: 'dry' })).toBe('Dry');
    expect(notedWords({ medium: null, drying: null })).toBeNull();
    expect(lightWords({ light: 'shade' })).toBe('Photographed in daylight, in the shade');
    expect(lightWords({ light: null })).toBeNull();
  });
});

describe('the queue', () => {
  const queued = nextPostings([], { type: 'added', drafts: drafts(4) });

  test(`starts ${AT_A_TIME} at a time, in order`, () => {
    expect(readyToStart(queued).map(({ key }) => key)).toEqual(['draft-0', 'draft-1']);
    const begun = nextPostings(queued, { type: 'began', key: 'draft-0' });
    expect(readyToStart(begun).map(({ key }) => key)).toEqual(['draft-1']);
  });

  test('goes on with the next when one is refused, and can try that one again', () => {
    let postings: Posting[] = queued;
    for (const key of ['draft-0', 'draft-1']) postings = nextPostings(postings, { type: 'began', key });
    postings = nextPostings(postings, { type: 'refused', key: 'draft-0', sentence: 'No room.' });
    expect(readyToStart(postings).map(({ key }) => key)).toEqual(['draft-2']);
    postings = nextPostings(postings, { type: 'again', key: 'draft-0' });
    expect(readyToStart(postings).map(({ key }) => key)).toEqual(['draft-0']);
  });

  test('does not come back to life by progress that arrives after a stop', () => {
    const begun = nextPostings(queued, { type: 'began', key: 'draft-0' });
    const stopped = nextPostings(begun, { type: 'stopped', key: 'draft-0' });
    const late = nextPostings(stopped, { type: 'sent', key: 'draft-0', share: 0.9 });
    expect(late[0]?.at).toEqual({ stage: 'stopped' });
    expect(nextPostings(late, { type: 'put-away', key: 'draft-0' })).toHaveLength(3);
  });
});

describe('names', () => {
  const painting = (id: string, follows: string | null): PictureView => ({
    ...{ id, follows, kind: 'painting', width: 3, height: 2, rights: null, credit: null, caption: null },
    ...{ medium: null, drying: null, light: null },
    ...{ painter: { id: 'x', name: 'Ines' }, createdAt: '2026-01-01T00:00:00Z' },
  });

  test('a painting’s state is how many came before it, and a ring of states ends', () => {
    const states = [painting('a', null), painting('b', 'a'), painting('c', 'b')];
    expect(states.map((state) => stateNumber(state, states))).toEqual([1, 2, 3]);
    const ring = [painting('a', 'b'), painting('b', 'a')];
    expect(ring.map((state) => stateNumber(state, ring))).toEqual([2, 2]);
  });

  test('a monogram has two letters, whatever the script', () => {
    expect(['Tessa Ehrenreich', 'maren', 'Ángel de la Vega', '山田 花', 'X'].map(initialsOf)).toEqual([
      'TE',
      'MA',
      'ÁV',
      '山花',
      'X',
    ]);
  });
});
