/**
 * What each step of a turn allows, tried cell by cell through a y-websocket client: what the table lets through is
 * stored, what it does not is taken back with a sentence, and DEVELOPERS.md shows the same table.
 */
import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import type * as Y from 'yjs';
import {
  CLASS_WHO,
  CLASS_WRITES,
  type ClassCell,
  type ClassWho,
  type ClassWrite,
  everyCell,
  STEP_TABLE,
} from '#server/core/class/allowed.ts';
import { writeNote, writeSaid } from '#server/core/class/notes.ts';
import { STEPS, type Step } from '#server/core/class/steps.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import { setFocus, writeIntention } from '#server/core/live/painting.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { cast, server } from './a-live-board.ts';
import { eventually, join, type Somebody } from './a-live-server.ts';

interface Try {
  what: string;
  room: (who: Somebody) => RoomName;
  edit: (doc: Y.Doc, who: Somebody) => void;
  /** Whether the server has it. */
  stored: (doc: Y.Doc, who: Somebody) => boolean;
}

const painting = (): RoomName => `painting/${cast.pictureId}`;
const setup = (): RoomName => 'setup';
/** By the permission table: what a person may never write, whatever the step. */
const NEVER: Record<ClassWho, readonly string[]> = {
  teacher: ['says back'],
  painter: ['writes a card', 'sets a condition'],
  others: [
    ...['writes the intention', 'marks the focus', 'notes the size', 'sets a condition'],
    ...['writes a card', 'answers a card', 'means it', 'says back'],
  ],
};

const entry = (what: string, room: Try['room'], root: string, key: string, value: unknown): Try => ({
  what,
  room,
  edit: (doc) => doc.getMap(root).set(key, value),
  stored: (doc) => doc.getMap(root).has(key),
});

const TRIES: Record<ClassWrite, Try[]> = {
  impression: [
    {
      what: 'writes what they see first',
      room: ({ id }) => `silent/${id}`,
      edit: (doc) => writeNote(doc, cast.pictureId, 'The light behind the reeds'),
      stored: (doc) => doc.getMap('notes').has(cast.pictureId),
    },
  ],
  marks: [
    {
      what: 'marks',
      room: () => 'marks',
      edit: (doc, { id }) => putMark(doc, aPin(`pin-of-${id}`, id)),
      stored: (doc, { id }) => readMarks(doc).some((mark) => mark.id === `pin-of-${id}`),
    },
  ],
  intention: [
    {
      what: 'writes the intention',
      room: painting,
      edit: (doc) => writeIntention(doc, 'Quiet before rain'),
      stored: (doc) => doc.getText('intention').length > 0,
    },
    {
      what: 'marks the focus',
      room: painting,
      edit: (doc) => setFocus(doc, [0.4, 0.6]),
      stored: (doc) => doc.getMap('focus').has('point'),
    },
  ],
  work: [
    entry('notes the size', painting, 'photo', 'size', [40, 30]),
    entry('sets a condition', setup, 'conditions', 'against-light', true),
  ],
  cards: [entry('writes a card', painting, 'cards', 'own-one.what', 'Lift the far hills a touch')],
  answers: [
    entry('answers a card', painting, 'answers', 'own-one', { state: 'accepted', words: '', about: [] }),
    entry('means it', painting, 'meant', 'V4', true),
  ],
  said: [
    {
      what: 'says back',
      room: painting,
      edit: (doc) => writeSaid(doc, 'First I lift the far hills'),
      stored: (doc) => doc.getMap('said').has('first'),
    },
  ],
};

const aPin = (id: string, author: string) => ({
  ...{
    id,
    author,
    at: 1,
    pictureId: cast.pictureId,
    kind: 'pin' as const,
    text: 'Softer here',
    planeId: null,
  },
  ...{ parent: null, points: [[0.5, 0.5] as [number, number]] },
});

const PEOPLE: Record<ClassWho, () => Somebody> = {
  teacher: () => cast.teacher,
  painter: () => cast.painter,
  others: () => cast.peer,
};

let number = 0;

/** Puts the class into a step of the painter's turn. */
async function stepInto(step: Step, opened = false): Promise<void> {
  number += 1;
  await server.live.writeAsServer(cast.boardId, 'class', (doc) => {
    const now = {
      number,
      pictureId: cast.pictureId,
      painterId: cast.painter.id,
      step,
      paused: false,
      opened,
    };
    doc.getMap('class').set('now', now);
    // The silent look was over long ago, so that no last word is waited for.
    if (step !== 'silent') doc.getMap('kept').set(`shown-${cast.pictureId}`, 1);
  });
}

/** As nobody had written anything. */
async function wipe(): Promise<void> {
  const { boardId } = cast;
  await server.live.writeAsServer(boardId, 'class', (doc) => doc.getMap('class').delete('now'));
  await server.live.writeAsServer(boardId, 'marks', (doc) => doc.getMap('marks').clear());
  await server.live.writeAsServer(boardId, 'setup', (doc) => doc.getMap('conditions').clear());
  await server.live.writeAsServer(boardId, painting(), (doc) => {
    doc.getText('intention').delete(0, doc.getText('intention').length);
    for (const root of ['focus', 'photo', 'cards', 'answers', 'meant', 'said']) doc.getMap(root).clear();
  });
  for (const who of CLASS_WHO) {
    await server.live.writeAsServer(boardId, `silent/${PEOPLE[who]().id}`, (doc) =>
      doc.getMap('notes').clear(),
    );
  }
}

/** Joins, has the class put where it is wanted, edits. @returns Whether the server took it. */
async function tried(attempt: Try, who: Somebody, into: () => Promise<void>): Promise<boolean> {
  const room = attempt.room(who);
  const client = join(server.port, who, cast.boardId, room);
  try {
    await client.synced;
    await into();
    attempt.edit(client.doc, who);
    const read = () => server.live.read(cast.boardId, room, (doc) => attempt.stored(doc, who));
    const end = await Promise.race([
      eventually('it is stored', read).then(() => null),
      client.closed.then(({ code }) => code),
    ]);
    if (end === null) return true;
    expect(end).toBe(CLOSE.notAllowed);
    expect(client.refusals[0]).toMatch(/taken back/);
    expect(await read()).toBe(false);
    return false;
  } finally {
    client.leave();
  }
}

const TRIED = everyCell().flatMap((cell) => {
  return TRIES[cell.write].map((attempt) => ({ ...cell, attempt, name: attempt.what }));
});

describe('every cell of the step table', () => {
  beforeAll(wipe);

  test.each(TRIED)('$step: $who $name: $cell', async ({ step, who, cell, attempt }) => {
    await wipe();
    const somebody = PEOPLE[who]();
    const may = !NEVER[who].includes(attempt.what);
    expect(await tried(attempt, somebody, () => stepInto(step))).toBe(cell === 'yes' && may);
    if (cell !== 'opened') return;
    expect(await tried(attempt, somebody, () => stepInto(step, true))).toBe(may);
  });

  test.each(
    CLASS_WHO.flatMap((who) =>
      CLASS_WRITES.filter((write) => write !== 'impression').flatMap((write) =>
        TRIES[write].map((attempt) => ({ who, write, attempt, name: attempt.what })),
      ),
    ),
  )('outside a running turn $who $name as the permission table has it', async ({ who, attempt }) => {
    await wipe();
    expect(await tried(attempt, PEOPLE[who](), async () => {})).toBe(!NEVER[who].includes(attempt.what));
  });
});

test('a mark may be taken away in every step by who may, and a remark hidden by the painter', async () => {
  for (const step of STEPS) {
    await wipe();
    await server.live.writeAsServer(cast.boardId, 'marks', (doc) => putMark(doc, aPin('old', cast.peer.id)));
    const teacher = join(server.port, cast.teacher, cast.boardId, 'marks');
    const painter = join(server.port, cast.painter, cast.boardId, painting());
    await Promise.all([teacher.synced, painter.synced]);
    await stepInto(step);
    painter.doc.getMap('hidden').set(`in-${step}`, true);
    await eventually('it is hidden', () =>
      server.live.read(cast.boardId, painting(), (doc) => doc.getMap('hidden').has(`in-${step}`)),
    );
    teacher.doc.getMap('marks').delete('old');
    await eventually('it is gone', () =>
      server.live.read(cast.boardId, 'marks', (doc) => !doc.getMap('marks').has('old')),
    );
    teacher.leave();
    painter.leave();
  }
});

const WORDS: Record<ClassCell, string> = { yes: '', opened: ' once let in', no: '' };

/** As DEVELOPERS.md writes a cell: who may, in the order of the columns. */
function inWords(cells: Record<ClassWho, ClassCell>): string {
  const who = CLASS_WHO.filter((each) => cells[each] !== 'no');
  if (who.length === 0) return '–';
  if (who.length === CLASS_WHO.length && who.every((each) => cells[each] === 'yes')) return 'all';
  return who.map((each) => `${each}${WORDS[cells[each]]}`).join(', ');
}

test('DEVELOPERS.md shows the table as it is', async () => {
  const guide = await readFile(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
  const section = guide.split('\n## What a step of a class allows\n')[1]?.split('\n## ')[0] ?? '';
  const rows = section.split('\n').filter((line) => line.startsWith('| '));
  expect(rows.slice(1)).toEqual(
    STEPS.map((step) => {
      return `| ${step} | ${CLASS_WRITES.map((write) => inWords(STEP_TABLE[step][write])).join(' | ')} |`;
    }),
  );
});
