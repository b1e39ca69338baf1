import { beforeAll, describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import type { RoomName } from '#server/core/live/layout.ts';
import { editMarkText, type Mark, moveMark, putMark, readMarks } from '#server/core/live/marks.ts';
import { setCorners, writeIntention, writeResult } from '#server/core/live/painting.ts';
import { addPlane, readPlanes } from '#server/core/live/planes.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { addBoard } from '#server/store/boards.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { cast, server } from './a-live-board.ts';
import { eventually, join, type Somebody } from './a-live-server.ts';

beforeAll(async () => {
  await server.live.writeAsServer(cast.boardId, 'marks', (doc) => {
    putMark(doc, mark('of-peer', cast.peer.id));
    putMark(doc, mark('of-painter', cast.painter.id));
  });
});
function mark(id: string, author: string): Mark {
  const place = { pictureId: 'p', kind: 'pin' as const, points: [[0.5, 0.5] as [number, number]] };
  return { id, author, at: 1, text: 'Softer edge', planeId: null, parent: null, ...place };
}

const painting = () => `painting/${cast.pictureId}` as const;

interface Forbidden {
  what: string;
  who: () => Somebody;
  room: () => RoomName;
  edit: (doc: Y.Doc) => void;
}

const corners = (doc: Y.Doc) =>
  setCorners(doc, [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ]);
const plane = (doc: Y.Doc) => addPlane(doc, { id: 'forbidden', name: 'ridge', kind: 'land', tilt: null });

const FORBIDDEN: Forbidden[] = [
  {
    what: 'a viewer marks',
    who: () => cast.viewer,
    room: () => 'marks',
    edit: (doc) => putMark(doc, mark('v', cast.viewer.id)),
  },
  { what: 'a painter adds a plane', who: () => cast.painter, room: () => 'setup', edit: plane },
  { what: 'a peer adds a plane', who: () => cast.peer, room: () => 'setup', edit: plane },
  { what: 'a peer corrects another’s painting', who: () => cast.peer, room: painting, edit: corners },
  {
    what: 'the board’s owner corrects a painting of somebody else',
    who: () => cast.owner,
    room: painting,
    edit: corners,
  },
  {
    what: 'a viewer writes an intention',
    who: () => cast.viewer,
    room: painting,
    edit: (doc) => writeIntention(doc, 'x'),
  },
  {
    what: 'a host writes a result',
    who: () => cast.host,
    room: painting,
    edit: (doc) => writeResult(doc, { number: 99, pending: null }),
  },
  {
    what: 'a painter writes an adjustment card',
    who: () => cast.painter,
    room: painting,
    edit: (doc) => doc.getMap('cards').set('picture.what', 'lift the darks'),
  },
  {
    what: 'a peer forges an author',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => putMark(doc, mark('forged', cast.teacher.id)),
  },
  {
    what: 'a teacher forges an author',
    who: () => cast.teacher,
    room: () => 'marks',
    edit: (doc) => putMark(doc, mark('forged', cast.peer.id)),
  },
  {
    what: 'a peer rewrites another’s mark',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => editMarkText(doc, 'of-painter', 'No'),
  },
  {
    what: 'the owner moves another’s mark',
    who: () => cast.owner,
    room: () => 'marks',
    edit: (doc) => moveMark(doc, 'of-painter', [[0, 0]]),
  },
  {
    what: 'a peer removes another’s mark',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => doc.getMap('marks').delete('of-painter'),
  },
  {
    what: 'a peer puts a mark of theirs in the place of another’s',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => putMark(doc, mark('of-painter', cast.peer.id)),
  },
  {
    what: 'a peer gives their own mark away',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => (doc.getMap('marks').get('of-peer') as Y.Map<unknown>).set('author', cast.painter.id),
  },
  {
    what: 'a teacher changes the author of a mark',
    who: () => cast.teacher,
    room: () => 'marks',
    edit: (doc) => (doc.getMap('marks').get('of-peer') as Y.Map<unknown>).set('author', cast.teacher.id),
  },
  {
    what: 'a peer writes to a root that is not there',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => doc.getMap('elsewhere').set('a', 1),
  },
  {
    what: 'a peer hides a list among the marks',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => hideList(doc),
  },
  {
    what: 'a peer marks without a place',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => doc.getMap('marks').set('bad', new Y.Map([['author', cast.peer.id]])),
  },
  {
    what: 'a teacher outlines with two points',
    who: () => cast.teacher,
    room: () => 'setup',
    edit: (doc) =>
      doc.getMap('outlines').set('ref/sky', [
        [0, 0],
        [1, 1],
      ]),
  },
  {
    what: 'a peer writes bold text',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => boldText(doc),
  },
  {
    what: 'a peer puts a document into a mark',
    who: () => cast.peer,
    room: () => 'marks',
    edit: (doc) => (doc.getMap('marks').get('of-peer') as Y.Map<unknown>).set('planeId', new Y.Doc()),
  },
];

/** A list item in a root map: what no reader shows and everybody would carry. */
function hideList(doc: Y.Doc): void {
  const other = new Y.Doc();
  other.getArray('marks').insert(0, ['hidden']);
  Y.applyUpdate(doc, Y.encodeStateAsUpdate(other));
}

function boldText(doc: Y.Doc): void {
  const text = (doc.getMap('marks').get('of-peer') as Y.Map<unknown>).get('text') as Y.Text;
  text.format(0, 3, { bold: true });
}

describe('what a room refuses', () => {
  test.each(FORBIDDEN)(
    '$what: closed with 4403 and a sentence, nobody else sees it, nothing is stored',
    async ({ who, room, edit }) => {
      const witness = join(server.port, cast.host, cast.boardId, room());
      const offender = join(server.port, who(), cast.boardId, room());
      await Promise.all([witness.synced, offender.synced]);
      const before = JSON.stringify(witness.doc.toJSON());
      const stored = (await readRoom(cast.boardId, room())).throughId;
      edit(offender.doc);
      const { code, reason } = await offender.closed;
      expect(code).toBe(CLOSE.notAllowed);
      expect(reason.length).toBeGreaterThan(20);
      expect(offender.refusals[0]).toContain(reason);
      // A sign that the witness has heard all that came before it.
      await server.live.writeAsServer(cast.boardId, 'setup', () => {});
      expect(JSON.stringify(witness.doc.toJSON())).toBe(before);
      expect((await readRoom(cast.boardId, room())).throughId).toBe(stored);
      expect(witness.refusals).toEqual([]);
      expect(witness.provider.wsconnected).toBe(true);
      offender.leave();
      witness.leave();
    },
  );

  test('after a refusal the same person joins afresh and their honest mark is taken', async () => {
    const again = join(server.port, cast.peer, cast.boardId, 'marks');
    await again.synced;
    putMark(again.doc, mark('honest', cast.peer.id));
    const witness = join(server.port, cast.viewer, cast.boardId, 'marks');
    await eventually('the honest mark is seen', () =>
      readMarks(witness.doc).some(({ id }) => id === 'honest'),
    );
    again.leave();
    witness.leave();
  });
});

describe('what a room takes', () => {
  test('a teacher rewrites and removes another’s mark', async () => {
    const teacher = join(server.port, cast.teacher, cast.boardId, 'marks');
    const witness = join(server.port, cast.viewer, cast.boardId, 'marks');
    await Promise.all([teacher.synced, witness.synced]);
    editMarkText(teacher.doc, 'of-peer', 'Softer edge on the left');
    await eventually('the new words are seen', () => {
      return readMarks(witness.doc).some(({ id, text }) => id === 'of-peer' && text.endsWith('on the left'));
    });
    teacher.doc.getMap('marks').delete('of-peer');
    await eventually('it is gone', () => !witness.doc.getMap('marks').has('of-peer'));
    expect(teacher.provider.wsconnected).toBe(true);
    teacher.leave();
    witness.leave();
  });

  test('a host who owns a board keeps what a host may do', async () => {
    const hostBoard = await addBoard(cast.host.id, 'Own');
    const host = join(server.port, cast.host, hostBoard, 'setup');
    await host.synced;
    plane(host.doc);
    const planes = () => server.live.read(hostBoard, 'setup', (doc) => readPlanes(doc).length);
    await eventually('the plane is kept', async () => (await planes()) === 1);
    host.leave();
  });
});

describe('who may come in', () => {
  interface Knock {
    what: string;
    who: () => { cookie: string };
    board: () => string;
    room: RoomName;
    code: number;
  }
  const nobody = { cookie: 'veilstep=nothing-that-was-ever-given' };
  const peer = () => cast.peer;
  const here = () => cast.boardId;
  const KNOCKS: Knock[] = [
    { what: 'without a session', who: () => nobody, board: here, room: 'marks', code: CLOSE.notEntered },
    { what: 'without access', who: () => cast.stranger, board: here, room: 'marks', code: CLOSE.noSuchRoom },
    { what: 'to no board', who: peer, board: () => 'no-such-board', room: 'marks', code: CLOSE.noSuchRoom },
    { what: 'to no painting', who: peer, board: here, room: 'painting/none', code: CLOSE.noSuchRoom },
    { what: 'to no room', who: peer, board: here, room: 'painting/Kitchen!', code: CLOSE.noSuchRoom },
  ];
  test.each(KNOCKS)('somebody $what is closed with a code and a sentence', async (knock) => {
    const { code } = knock;
    const client = join(server.port, knock.who(), knock.board(), knock.room);
    const closing = await client.closed;
    expect(closing.code).toBe(code);
    expect(closing.reason).toMatch(/^[A-Z].*\.$/);
    client.leave();
  });
});
