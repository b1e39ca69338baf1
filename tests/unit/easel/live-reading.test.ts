/** What the screen is given of the live documents: numbers, names, rights, and what was lost in a refusal. */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { lostWords } from '#app/_live/lost-words.ts';
import { BoardReaders, PerDocument } from '#app/_live/read-board.ts';
import { writersFor } from '#app/_live/writers.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { editMarkText, type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { writeIntention } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';

const ADA = { id: 'ada', name: 'Ada' };
const BEN = { id: 'ben', name: 'Ben' };
const picture = (id: string, kind: 'reference' | 'painting') => ({
  ...{ id, kind, width: 100, height: 80, painter: ADA, follows: null },
  ...{ medium: null, drying: null, light: null },
  ...{ rights: null, credit: null, caption: null, createdAt: '2026-01-01T00:00:00Z' },
});
const board: BoardView = {
  blocked: [],
  school: { noPublicLinks: false, noMixingHints: false, aliases: false },
  alias: null,
  ...{ id: 'b', title: 'A scene', demo: false, scenario: null, role: 'owner', me: ADA, owner: ADA },
  group: null,
  pictures: [picture('r', 'reference'), picture('p', 'painting')],
  members: [{ ...BEN, role: 'peer' }],
};
/** Nothing is hidden, nothing may be sketched over. */
const KNOWN = new Map(
  board.pictures.map(({ id, kind }) => [
    id,
    { isReference: kind === 'reference', hidden: new Set<string>(), allowsSketch: false },
  ]),
);
const mark = (id: string, at: number, change: Partial<Mark> = {}): Mark => ({
  ...{ id, author: 'ben', pictureId: 'p', kind: 'pin', points: [[0.5, 0.5]], text: id, planeId: null },
  ...{ parent: null, at },
  ...change,
});
const room = (name: 'setup' | 'marks' | 'painting/p') => declareRoots(new Y.Doc(), name);

describe('marks on the screen', () => {
  const doc = room('marks');
  putMark(doc, mark('second', 2));
  putMark(doc, mark('first', 1, { author: 'ada' }));
  putMark(doc, mark('elsewhere', 3, { pictureId: 'r' }));
  putMark(doc, mark('answer', 4, { kind: 'reply', points: [], parent: 'first' }));
  const views = new BoardReaders().marks(doc, board, KNOWN);

  test('are numbered by age on each picture, answers not at all', () => {
    expect(views.map(({ id, number }) => [id, number])).toEqual([
      ['first', 1],
      ['second', 2],
      ['elsewhere', 1],
      ['answer', null],
    ]);
  });

  test('carry the name of their author and whether this person may change them', () => {
    expect(views.map(({ authorName, mine }) => [authorName, mine])).toEqual([
      ['Ada', true],
      ['Ben', false],
      ['Ben', false],
      ['Ben', false],
    ]);
  });
});

describe('a board with many marks', () => {
  test('draws again only the mark that changed, and lists them as core does', () => {
    const doc = room('marks');
    for (let at = 0; at < 20; at++) putMark(doc, mark(`m${at}`, 100 - at));
    const readers = new BoardReaders();
    const before = readers.marks(doc, board, KNOWN);
    expect(before.map(({ id }) => id)).toEqual(readMarks(doc).map(({ id }) => id));
    editMarkText(doc, 'm7', 'Other words.');
    const after = readers.marks(doc, board, KNOWN);
    expect(after.filter((view, at) => view !== before[at]).map(({ id, text }) => [id, text])).toEqual([
      ['m7', 'Other words.'],
    ]);
    doc.getMap('marks').delete('m19');
    const fewer = readers.marks(doc, board, KNOWN);
    expect(fewer).toHaveLength(19);
    expect(fewer.map(({ number }) => number)).toEqual(Array.from({ length: 19 }, (_, at) => at + 1));
  });

  test('leaves out what does not parse and takes it in once it does', () => {
    const doc = room('marks');
    const readers = new BoardReaders();
    doc.getMap('marks').set('broken', 'not a mark');
    expect(readers.marks(doc, board, KNOWN)).toEqual([]);
    putMark(doc, mark('broken', 1));
    expect(readers.marks(doc, board, KNOWN).map(({ id }) => id)).toEqual(['broken']);
  });
});

describe('reading once', () => {
  test('gives the same thing while the document stays as it is, and a new one after an edit', () => {
    const doc = room('setup');
    const readers = new BoardReaders();
    const empty = readers.planes(doc);
    expect(readers.planes(doc)).toBe(empty);
    addPlane(doc, { id: 'a', name: 'Sky', kind: 'sky', tilt: null });
    expect(readers.planes(doc).map(({ name, number }) => [name, number])).toEqual([['Sky', 1]]);
  });

  test('keeps keys of one document apart', () => {
    const doc = room('setup');
    const echo = new PerDocument((_, key) => ({ key }));
    expect(echo.of(doc, 'x')).toBe(echo.of(doc, 'x'));
    expect(echo.of(doc, 'y').key).toBe('y');
  });
});

describe('what the server did not keep', () => {
  test('is given back: own remarks and the intention, not what stayed, not what others wrote', () => {
    const [before, fresh] = [room('marks'), room('marks')];
    putMark(before, mark('kept', 1, { author: 'ada', text: 'This stayed.' }));
    Y.applyUpdate(fresh, Y.encodeStateAsUpdate(before));
    putMark(before, mark('mine', 2, { author: 'ada', text: 'My lost words.' }));
    putMark(before, mark('theirs', 3, { author: 'ben', text: 'Not mine.' }));
    expect(lostWords(before, fresh, 'ada')).toBe('My lost words.');
    writeIntention(before, 'A cold wall of rock.');
    expect(lostWords(before, fresh, 'ada')).toBe('My lost words.\n\nA cold wall of rock.');
    expect(lostWords(fresh, fresh, 'ada')).toBeNull();
  });
});

describe('writing', () => {
  const rooms = { setup: room('setup'), marks: room('marks'), painting: room('painting/p') };
  const write = writersFor({
    setup: () => rooms.setup,
    marks: () => rooms.marks,
    painting: (id) => (id === 'p' ? rooms.painting : null),
    isReference: (id) => id === 'r',
    writer: { personId: 'ada', role: 'owner', paints: true },
    together: (act) => act(),
  });
  const readers = new BoardReaders();

  test('outlines laid on a painting are its own', () => {
    const a = write.addPlane({ name: 'Sky', kind: 'sky' });
    const b = write.addPlane({ name: 'Hill', kind: 'land' });
    const outline: [number, number][] = [
      [0, 0],
      [1, 0],
      [1, 1],
    ];
    write.setOutline('r', a, outline);
    write.setOutline('r', b, outline);
    write.layOutlines('p', new Map([[b, outline]]));
    expect([...readers.outlines('painting', rooms.painting, 'p').keys()]).toEqual([b]);
    write.setOutline('p', b, [
      [0, 0],
      [1, 0.5],
      [1, 1],
    ]);
    expect(readers.outlines('reference', rooms.setup, 'r').get(b)).toEqual(outline);
  });

  test('a remark is written in the name of this person and can be answered', () => {
    const id = write.addMark({
      ...{ pictureId: 'p', kind: 'pin', points: [[0.2, 0.3]] },
      ...{ text: 'Softer here.', planeId: null },
    });
    write.addReply({ id, pictureId: 'p' }, 'Yes.');
    // Both may bear the same millisecond, so their order is not told.
    const written = readMarks(rooms.marks).map(({ kind, author, parent }) => [kind, author, parent]);
    expect(written.sort()).toEqual([
      ['pin', 'ada', null],
      ['reply', 'ada', id],
    ]);
    write.deleteMark(id);
    expect(readMarks(rooms.marks)).toEqual([]);
  });

  test('a room that is not open is left alone', () => {
    expect(() => write.setCorners('other', null)).not.toThrow();
  });
});
