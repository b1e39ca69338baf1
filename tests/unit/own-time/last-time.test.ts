/** What was said last time, and whether it was tried. */
import { describe, expect, test } from 'vitest';
import type { LiveAnswer } from '#server/core/live/layout.ts';
import type { Mark } from '#server/core/live/marks.ts';
import { showCards } from '#server/core/live/show-cards.ts';
import { lastTimeOf, type StateSaid } from '#server/core/own-time/last-time.ts';
import { card, sourceOf } from '../live/some-cards.ts';

const PLANES = new Map([['p-ridge', 'ridge']]);
const ASKED = Date.parse('2026-11-20T10:00:00Z');

function remark(
  id: string,
  pictureId: string,
  at: number,
  text = 'Lift it.',
  planeId: string | null = 'p-ridge',
): Mark {
  return {
    id,
    author: 'tove',
    pictureId,
    kind: 'pin',
    points: [[0.5, 0.5]],
    text,
    planeId,
    parent: null,
    at,
  };
}

const answer = (state: LiveAnswer['state'], words = '', about = ['V4']): LiveAnswer => ({
  state,
  words,
  about,
});

function state(id: string, more: Partial<StateSaid> & { measured?: string[] } = {}): StateSaid {
  const { measured = [], ...rest } = more;
  const answers = Object.fromEntries(rest.answers ?? []);
  return {
    id,
    postedAt: '2026-11-01T10:00:00.000Z',
    marks: [],
    answers: new Map(),
    cards: showCards(sourceOf({ measured: measured.map((reading) => card([reading], 'ridge')), answers })),
    ...rest,
  };
}

describe('last time', () => {
  test('nothing was said before', () => {
    expect(lastTimeOf([state('s1')], ASKED, PLANES)).toBeNull();
  });

  test('remarks on the state before come back with where they were and what became of them', () => {
    const before = state('s1', {
      marks: [remark('m1', 's1', ASKED - 9000), remark('m2', 's1', ASKED - 8000, 'Soften.', null)],
      answers: new Map([['m1', answer('tried', 'with a rag')]]),
    });
    const last = lastTimeOf([state('s2'), before], ASKED, PLANES);
    expect(last).toMatchObject({ pictureId: 's1', sameState: false });
    expect(last?.at).toBe(new Date(ASKED - 8000).toISOString());
    expect(last?.remarks).toEqual([
      { key: 'm1', where: 'ridge', words: 'Lift it.', state: 'tried', answer: 'with a rag', went: null },
      { key: 'm2', where: '', words: 'Soften.', state: 'open', answer: '', went: null },
    ]);
  });

  test('cards of the state before come back with the painter’s answer', () => {
    const before = state('s1', { measured: ['V4'], answers: new Map([['plane-p-ridge', answer('done')]]) });
    const last = lastTimeOf([state('s2', { measured: ['V4'] }), before], ASKED, PLANES);
    expect(last?.cards).toEqual([
      {
        key: 'plane-p-ridge',
        where: 'Ridge',
        words: 'darks: lift about half a step',
        state: 'done',
        answer: '',
        went: null,
      },
    ]);
  });

  test('a card that the painter declined is not forgotten', () => {
    const before = state('s1', {
      measured: ['V4'],
      answers: new Map([['plane-p-ridge', answer('declined', 'I like it dark')]]),
    });
    expect(lastTimeOf([state('s2'), before], ASKED, PLANES)?.cards).toMatchObject([
      { state: 'declined', answer: 'I like it dark' },
    ]);
  });

  test('what is said of the newest state since it was asked is no last time', () => {
    const now = state('s1', { marks: [remark('m1', 's1', ASKED + 1)], measured: ['V4'] });
    expect(lastTimeOf([now], ASKED, PLANES)).toBeNull();
  });

  test('asked anew about the same state, what was said of it before is the last time', () => {
    const now = state('s1', { marks: [remark('m1', 's1', ASKED - 1), remark('m2', 's1', ASKED + 1)] });
    const last = lastTimeOf([now], ASKED, PLANES);
    expect(last?.sameState).toBe(true);
    expect(last?.remarks.map(({ key }) => key)).toEqual(['m1']);
  });

  test('a state of which something was said stands before a newer one with measured cards alone', () => {
    const spoken = state('s1', { marks: [remark('m1', 's1', ASKED - 9000)] });
    const silent = state('s2', { measured: ['V4'] });
    expect(lastTimeOf([state('s3'), silent, spoken], ASKED, PLANES)?.pictureId).toBe('s1');
    expect(lastTimeOf([state('s3'), silent], ASKED, PLANES)?.pictureId).toBe('s2');
  });
});
