import { describe, expect, test } from 'vitest';
import type * as Y from 'yjs';
import { changeCard, readAnswers, readCards, setAnswer } from '#server/core/live/card-answers.ts';
import { readMeant, setFocus, setMeant } from '#server/core/live/painting.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { cast, server } from './a-live-board.ts';
import { eventually, join, type Somebody } from './a-live-server.ts';

const room = () => `painting/${cast.pictureId}` as const;

interface Forbidden {
  what: string;
  who: () => Somebody;
  edit: (doc: Y.Doc) => void;
}

const FORBIDDEN: Forbidden[] = [
  {
    what: 'a painter leaves an adjustment card out',
    who: () => cast.painter,
    edit: (doc) => changeCard(doc, 'picture', { dropped: true }),
  },
  {
    what: 'the board’s owner adds a card',
    who: () => cast.owner,
    edit: (doc) => changeCard(doc, 'own-1', { what: 'Rest the eye.' }),
  },
  {
    what: 'a peer answers for the painter',
    who: () => cast.peer,
    edit: (doc) => setAnswer(doc, 'picture', { state: 'accepted', words: '', about: ['V8'] }),
  },
  {
    what: 'a peer says what the painter meant',
    who: () => cast.peer,
    edit: (doc) => setMeant(doc, 'V4', 'Dusk.'),
  },
  {
    what: 'the board’s owner marks the focus of somebody else’s painting',
    who: () => cast.owner,
    edit: (doc) => setFocus(doc, [0.5, 0.5]),
  },
  {
    what: 'a teacher writes a card without words',
    who: () => cast.teacher,
    edit: (doc) => doc.getMap('cards').set('picture.what', ''),
  },
  {
    what: 'a teacher writes a part that no card has',
    who: () => cast.teacher,
    edit: (doc) => doc.getMap('cards').set('picture.marks', '7'),
  },
  {
    what: 'a painter answers with a state that there is not',
    who: () => cast.painter,
    edit: (doc) => doc.getMap('answers').set('picture', { state: 'loved', words: '', about: [] }),
  },
  {
    what: 'a painter means a reading with a list in place of words',
    who: () => cast.painter,
    edit: (doc) => doc.getMap('meant').set('V4', ['Dusk.']),
  },
];

describe('what a painting’s room refuses of cards and answers', () => {
  test.each(FORBIDDEN)('$what: closed with 4403, unseen by others, not stored', async ({ who, edit }) => {
    const witness = join(server.port, cast.host, cast.boardId, room());
    const offender = join(server.port, who(), cast.boardId, room());
    await Promise.all([witness.synced, offender.synced]);
    const before = JSON.stringify(witness.doc.toJSON());
    const stored = (await readRoom(cast.boardId, room())).throughId;
    edit(offender.doc);
    const { code, reason } = await offender.closed;
    expect(code).toBe(CLOSE.notAllowed);
    expect(reason).toMatch(/^[A-Z].{20,}\.$/);
    // A sign that the witness has heard all that came before it.
    await server.live.writeAsServer(cast.boardId, 'setup', () => {});
    expect(JSON.stringify(witness.doc.toJSON())).toBe(before);
    expect((await readRoom(cast.boardId, room())).throughId).toBe(stored);
    offender.leave();
    witness.leave();
  });
});

describe('what it takes', () => {
  test('a painter answers a card and means a reading, and a teacher rewrites the card', async () => {
    const painter = join(server.port, cast.painter, cast.boardId, room());
    const teacher = join(server.port, cast.teacher, cast.boardId, room());
    await Promise.all([painter.synced, teacher.synced]);
    setAnswer(painter.doc, 'picture', { state: 'adapted', words: 'A glaze.', about: ['V8'] });
    setMeant(painter.doc, 'V4', 'Dusk.');
    await eventually('the teacher sees both', () => {
      return (
        readAnswers(teacher.doc).get('picture')?.words === 'A glaze.' && readMeant(teacher.doc).has('V4')
      );
    });
    changeCard(teacher.doc, 'picture', { what: 'Save the darkest dark.' });
    await eventually('the painter sees the teacher’s words', () => {
      return readCards(painter.doc).get('picture')?.what === 'Save the darkest dark.';
    });
    expect(painter.refusals.concat(teacher.refusals)).toEqual([]);
    painter.leave();
    teacher.leave();
  });
});
