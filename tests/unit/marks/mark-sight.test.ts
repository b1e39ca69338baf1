/** Who sees what: hidden remarks, sketches whose leave was taken back, pictures that are not for somebody. */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { BoardReaders } from '#app/_live/read-board.ts';
import type { BoardView, PictureView } from '#server/core/contract/responses.ts';
import type { BoardRole } from '#server/core/contract/roles.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { type PictureRemarks, sightOf } from '#server/core/live/mark-sight.ts';
import { type Mark, putMark, threadsOf } from '#server/core/live/marks.ts';

const mark = (id: string, change: Partial<Mark> = {}): Mark => ({
  ...{ id, author: 'ben', pictureId: 'p', kind: 'pin', points: [[0.5, 0.5]], text: id, planeId: null },
  ...{ parent: null, at: 1 },
  ...change,
});
const sketch = (id: string, change: Partial<Mark> = {}): Mark =>
  mark(id, {
    kind: 'sketch',
    points: [
      [0.1, 0.1],
      [0.4, 0.4],
    ],
    paint: { hex: '#808080', width: 0.02, opacity: 0.5 },
    ...change,
  });
const said = (hidden: string[], allowsSketch = false, isReference = false): PictureRemarks => ({
  isReference,
  hidden: new Set(hidden),
  allowsSketch,
});
const who = (personId: string, role: BoardRole, paints = false) => ({ personId, role, paints });

describe('a hidden remark', () => {
  const remark = mark('remark');
  const answer = mark('answer', { kind: 'reply', points: [], parent: 'remark', author: 'cora' });
  const sees = (person: ReturnType<typeof who>, of = remark, hidden = ['remark']) =>
    sightOf(of, remark, said(hidden), person);

  test('is seen by its author, the painter, a teacher and the host, with a word that it is hidden', () => {
    for (const person of [
      who('ben', 'peer'),
      who('ada', 'painter', true),
      who('tove', 'teacher'),
      who('hedda', 'host'),
    ]) {
      expect(sees(person)).toBe('hidden');
    }
  });

  test('is away for everybody else, the board’s owner and who guards a minor among them', () => {
    for (const role of ['owner', 'peer', 'painter', 'viewer', 'guardian'] as const) {
      expect(sees(who('dora', role))).toBe('away');
    }
  });

  test('takes its answers with it, even for who wrote them; a hidden answer leaves the remark', () => {
    expect(sees(who('cora', 'peer'), answer)).toBe('away');
    expect(sees(who('ben', 'peer'), answer)).toBe('hidden');
    expect(sees(who('dora', 'peer'), answer, ['answer'])).toBe('away');
    expect(sees(who('dora', 'peer'), remark, ['answer'])).toBe('shown');
  });

  test('on a reference is seen by whoever runs the scene', () => {
    const onReference = (role: BoardRole) =>
      sightOf(remark, remark, said(['remark'], false, true), who('dora', role));
    expect([onReference('owner'), onReference('teacher'), onReference('painter')]).toEqual([
      'hidden',
      'hidden',
      'away',
    ]);
  });

  test('nothing is shown of a picture before it is known what is hidden there', () => {
    expect(sightOf(remark, remark, null, who('ben', 'peer'))).toBe('away');
  });
});

describe('a sketch over a painting', () => {
  const layer = sketch('layer');
  test('is shown while it is allowed', () => {
    expect(sightOf(layer, layer, said([], true), who('dora', 'viewer'))).toBe('shown');
  });
  test('is kept for its author alone once it is not', () => {
    expect(sightOf(layer, layer, said([]), who('ben', 'peer'))).toBe('kept');
    for (const role of ['host', 'teacher', 'owner', 'peer'] as const) {
      expect(sightOf(layer, layer, said([]), who('dora', role, role === 'owner'))).toBe('away');
    }
  });
  test('is one layer of strokes by one person on one picture', () => {
    const marks = [
      layer,
      sketch('second', { parent: 'layer' }),
      sketch('somebody else’s', { parent: 'layer', author: 'cora' }),
      sketch('on another picture', { parent: 'layer', pictureId: 'q' }),
      sketch('of one that is gone', { parent: 'gone' }),
      mark('answer', { kind: 'reply', points: [], parent: 'second' }),
    ];
    const threads = threadsOf(marks).map(({ mark: first, strokes, replies }) => [
      first.id,
      strokes.map(({ id }) => id),
      replies.map(({ id }) => id),
    ]);
    expect(threads).toEqual([
      ['layer', ['second'], ['answer']],
      ['somebody else’s', [], []],
      ['on another picture', [], []],
      ['of one that is gone', [], []],
    ]);
  });
});

describe('the marks that a screen is given', () => {
  const ada = { id: 'ada', name: 'Ada' };
  const painting: PictureView = {
    ...{ id: 'p', kind: 'painting', width: 100, height: 80, painter: ada, follows: null, medium: null },
    ...{ drying: null, light: null, rights: null, credit: null, caption: null, createdAt: '2026-01-01' },
  };
  const board = (pictures: PictureView[]): BoardView => ({
    ...{ id: 'b', title: 'A scene', demo: false, scenario: null, role: 'peer', group: null, pictures },
    ...{ blocked: [], school: { noPublicLinks: false, noMixingHints: false, aliases: false }, alias: null },
    ...{ me: { id: 'dora', name: 'Dora' }, owner: ada, members: [{ id: 'ben', name: 'Ben', role: 'peer' }] },
  });
  const doc = declareRoots(new Y.Doc(), 'marks');
  putMark(doc, mark('first', { at: 1 }));
  putMark(doc, mark('hidden', { at: 2 }));
  putMark(doc, mark('third', { at: 3 }));
  putMark(doc, mark('elsewhere', { at: 4, pictureId: 'withdrawn' }));
  putMark(doc, mark('answer', { at: 5, kind: 'reply', points: [], parent: 'hidden' }));

  test('keep the numbers they have for everybody, and leave out what is not for this person', () => {
    const views = new BoardReaders().marks(doc, board([painting]), new Map([['p', said(['hidden'])]]));
    expect(views.map(({ id, number }) => [id, number])).toEqual([
      ['first', 1],
      ['third', 3],
    ]);
  });

  test('of a picture that somebody may not see are none', () => {
    expect(new BoardReaders().marks(doc, board([]), new Map())).toEqual([]);
  });

  test('are the same ones as long as nothing that touches them has changed', () => {
    const readers = new BoardReaders();
    const scene = board([painting]);
    const before = readers.marks(doc, scene, new Map([['p', said([])]]));
    const after = readers.marks(doc, scene, new Map([['p', said(['gone'])]]));
    expect(after).toBe(before);
  });
});
