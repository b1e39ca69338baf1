/**
 * Bad lines and looking together, against the real server: what an offline device may and may not bring back, and what
 * presence tells that nobody can make up.
 */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { leaveSession } from '#server/access/session.ts';
import { declareRoots } from '#server/core/live/document.ts';
import type { Look } from '#server/core/live/look.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { lookOf, readPresence, thankedWishes, wishesOf } from '#server/core/live/presence.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { addBoard, removeBoard } from '#server/store/boards.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { putMember } from '#server/store/members.ts';
import { cast, server } from './a-live-board.ts';
import { aPainting, type Client, eventually, join, type Somebody, somebody } from './a-live-server.ts';

let marks = 0;
const aMark = (by: Somebody, text: string): Mark => ({
  ...{ id: `mark-${marks++}`, author: by.id, pictureId: cast.pictureId, kind: 'pin', points: [[0.5, 0.5]] },
  ...{ text, planeId: null, parent: null, at: 1 },
});

const LOOK: Look = {
  ...{ pictureId: 'p', middle: [0.25, 0.75], width: 0.5, height: 0.4, referenceId: null, paintingId: 'p' },
  ...{
    arrange: 'beside',
    side: 'painting',
    edge: 0.5,
    squint: 'blur',
    closed: 2,
    values: 3,
    sameCuts: false,
  },
  ...{ mirrored: true, half: false, squared: true, movedMs: 7 },
};

const seenBy = (witness: Client) =>
  readPresence(witness.provider.awareness.getStates(), witness.doc.clientID);
const raise = (who: Client, id: string | null, sinceMs = 0) =>
  who.provider.awareness.setLocalState({ wish: id === null ? null : { id, sinceMs } });

/** A copy of a room as a browser keeps it: everything of the document, under a new client id. */
function copyOf(doc: Y.Doc): Y.Doc {
  const copy = declareRoots(new Y.Doc(), 'marks');
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(doc));
  return copy;
}

async function aBoardOfItsOwn(title: string) {
  const owner = await somebody('Odile');
  const peer = await somebody('Petra');
  const boardId = await addBoard(owner.id, title);
  await putMember(boardId, peer.id, 'peer', null);
  await aPainting(boardId, owner.id);
  return { owner, peer, boardId };
}

describe('looking together', () => {
  test('what somebody looks at reaches the others in their own name, and only what a look is', async () => {
    const leads = join(server.port, cast.teacher, cast.boardId, 'marks');
    const follows = join(server.port, cast.peer, cast.boardId, 'marks');
    await Promise.all([leads.synced, follows.synced]);
    follows.provider.awareness.setLocalState({ with: cast.teacher.id });
    await eventually('the teacher hears that somebody looks with them', () =>
      seenBy(leads).some((each) => each.with === cast.teacher.id && each.person.id === cast.peer.id),
    );
    leads.provider.awareness.setLocalState({
      person: { id: cast.host.id, name: 'Hedda', role: 'host' },
      look: LOOK,
      smuggled: 'something else',
    });
    await eventually('the look came', () => lookOf(seenBy(follows), cast.teacher.id) !== null);
    expect(lookOf(seenBy(follows), cast.teacher.id)).toEqual(LOOK);
    expect(lookOf(seenBy(follows), cast.host.id)).toBeNull();
    const states = [...follows.provider.awareness.getStates().values()];
    expect(JSON.stringify(states)).not.toContain('smuggled');
    leads.leave();
    await eventually('who left is told of no more', () => lookOf(seenBy(follows), cast.teacher.id) === null);
    follows.leave();
  });

  test('a look that is none is not passed on, and nobody is disturbed', async () => {
    const liar = join(server.port, cast.peer, cast.boardId, 'marks');
    const witness = join(server.port, cast.teacher, cast.boardId, 'marks');
    await Promise.all([liar.synced, witness.synced]);
    liar.provider.awareness.setLocalState({ look: { ...LOOK, width: 9 } });
    liar.provider.awareness.setLocalState({ look: { ...LOOK, closed: 4 } });
    await eventually('the honest one came', () => lookOf(seenBy(witness), cast.peer.id)?.closed === 4);
    expect(liar.provider.wsconnected).toBe(true);
    liar.leave();
    witness.leave();
  });

  test('who asked to speak first stands first, whatever their browsers say; a dropped line costs nobody their place', async () => {
    const first = join(server.port, cast.peer, cast.boardId, 'marks');
    const second = join(server.port, cast.painter, cast.boardId, 'marks');
    const teacher = join(server.port, cast.teacher, cast.boardId, 'marks');
    await Promise.all([first.synced, second.synced, teacher.synced]);
    raise(first, 'wish-1', Date.now() + 60_000);
    await eventually('the first wish', () => wishesOf(seenBy(teacher)).length === 1);
    // A moment of the server's clock lies between the two.
    const raisedMs = Date.now();
    await eventually('the clock moved on', () => Date.now() > raisedMs + 2);
    raise(second, 'wish-2', 0);
    const order = () => wishesOf(seenBy(teacher)).map(({ person }) => person.id);
    await eventually('both wishes', () => order().length === 2);
    expect(order()).toEqual([cast.peer.id, cast.painter.id]);

    first.provider.disconnect();
    await eventually('the first is gone', () => order().length === 1);
    raise(first, 'wish-1', 0);
    first.provider.connect();
    await eventually('the first is back', () => order().length === 2);
    expect(order()).toEqual([cast.peer.id, cast.painter.id]);

    raise(first, null);
    await eventually('taken back', () => order().length === 1);
    raise(first, 'wish-1', 0);
    await eventually('asked again', () => order().length === 2);
    expect(order()).toEqual([cast.painter.id, cast.peer.id]);
    for (const each of [first, second, teacher]) each.leave();
  });

  test('thanks count only from who runs the class', async () => {
    const teacher = join(server.port, cast.teacher, cast.boardId, 'marks');
    const painter = join(server.port, cast.painter, cast.boardId, 'marks');
    const witness = join(server.port, cast.peer, cast.boardId, 'marks');
    await Promise.all([teacher.synced, painter.synced, witness.synced]);
    painter.provider.awareness.setLocalState({
      person: { id: cast.teacher.id, name: 'Tove', role: 'teacher' },
      thanks: ['wish-9'],
    });
    await eventually('the painter’s word came', () => seenBy(witness).some(({ thanks }) => thanks?.length));
    expect(thankedWishes(seenBy(witness)).size).toBe(0);
    teacher.provider.awareness.setLocalState({ thanks: ['wish-9'] });
    await eventually('the teacher’s came', () => thankedWishes(seenBy(witness)).has('wish-9'));
    for (const each of [teacher, painter, witness]) each.leave();
  });
});

describe('an offline device', () => {
  test('brings what was made without a line, from the copy of a page that was closed meanwhile', async () => {
    const { owner, peer, boardId } = await aBoardOfItsOwn('Kept in a copy');
    const witness = join(server.port, owner, boardId, 'marks');
    const before = join(server.port, peer, boardId, 'marks', { params: { epoch: '1' } });
    await Promise.all([witness.synced, before.synced]);
    putMark(before.doc, aMark(peer, 'With a line.'));
    await eventually('the first mark', () => readMarks(witness.doc).length === 1);
    before.provider.disconnect();
    putMark(before.doc, aMark(peer, 'Without a line.'));
    const kept = copyOf(before.doc);
    before.leave();
    putMark(kept, aMark(peer, 'After the page was opened again.'));
    putMark(witness.doc, aMark(owner, 'Said meanwhile.'));

    const back = join(server.port, peer, boardId, 'marks', { doc: kept, params: { epoch: '1' } });
    await eventually('all four, on both sides', () =>
      [witness.doc, back.doc].every((doc) => readMarks(doc).length === 4),
    );
    const texts = (doc: Y.Doc) => readMarks(doc).map(({ text }) => text);
    expect(texts(witness.doc)).toEqual(texts(back.doc));
    witness.leave();
    back.leave();
  });

  test('two people who rewrite one remark apart from one another both keep their words', async () => {
    const { owner, boardId } = await aBoardOfItsOwn('One remark, two hands');
    const [here, there] = [0, 1].map(() => join(server.port, owner, boardId, 'marks'));
    if (!here || !there) throw new Error('Two windows were opened.');
    await Promise.all([here.synced, there.synced]);
    const mark = aMark(owner, 'The hill.');
    putMark(here.doc, mark);
    await eventually('the mark', () => readMarks(there.doc).length === 1);
    there.provider.disconnect();
    const textIn = (doc: Y.Doc) => (doc.getMap('marks').get(mark.id) as Y.Map<Y.Text>).get('text') as Y.Text; // just put
    textIn(here.doc).insert(9, ' Lift its darks.');
    textIn(there.doc).insert(0, 'Look first: ');
    there.provider.connect();
    await eventually('one text on both sides', () => {
      const texts = [here.doc, there.doc].map((doc) => textIn(doc).toString());
      return texts.every((text) => text === 'Look first: The hill. Lift its darks.');
    });
    here.leave();
    there.leave();
  });

  test('what was forbidden meanwhile is refused with a sentence, and nobody else ever sees it', async () => {
    const { owner, peer, boardId } = await aBoardOfItsOwn('A viewer by now');
    const witness = join(server.port, owner, boardId, 'marks');
    const device = join(server.port, peer, boardId, 'marks');
    await Promise.all([witness.synced, device.synced]);
    device.provider.disconnect();
    putMark(device.doc, aMark(peer, 'A ghost.'));
    await putMember(boardId, peer.id, 'viewer', null);
    await server.live.recheck(boardId);
    let seen = 0;
    witness.doc.on('update', () => seen++);
    const back = join(server.port, peer, boardId, 'marks', { doc: device.doc, params: { epoch: '1' } });
    expect((await back.closed).code).toBe(CLOSE.notAllowed);
    expect(back.refusals[0]).toMatch(/taken back/);
    expect(readMarks(witness.doc)).toEqual([]);
    expect(seen).toBe(0);
    expect((await readRoom(boardId, 'marks')).updates).toEqual([]);
    for (const each of [witness, device, back]) each.leave();
  });

  test('does not bring back a board that was erased, nor the room of a picture that was', async () => {
    const { peer, boardId } = await aBoardOfItsOwn('Erased meanwhile');
    const device = join(server.port, peer, boardId, 'marks');
    await device.synced;
    putMark(device.doc, aMark(peer, 'Before.'));
    await eventually('stored', async () => (await readRoom(boardId, 'marks')).updates.length > 0);
    device.provider.disconnect();
    putMark(device.doc, aMark(peer, 'Made while the board went.'));
    await removeBoard(boardId);
    await server.live.closeBoard(boardId);
    const back = join(server.port, peer, boardId, 'marks', { doc: device.doc, params: { epoch: '1' } });
    expect((await back.closed).code).toBe(CLOSE.noSuchRoom);
    expect((await readRoom(boardId, 'marks')).updates).toEqual([]);
    back.leave();
    device.leave();

    const room = `painting/${await aPainting(cast.boardId, cast.painter.id)}` as const;
    const painter = join(server.port, cast.painter, cast.boardId, room);
    await painter.synced;
    painter.doc.getText('intention').insert(0, 'The last light.');
    await eventually('stored', async () => (await readRoom(cast.boardId, room)).updates.length > 0);
    painter.provider.disconnect();
    painter.doc.getText('intention').insert(0, 'Once more: ');
    await server.live.closePicture(cast.boardId, room.slice('painting/'.length));
    const late = join(server.port, cast.painter, cast.boardId, room, {
      doc: painter.doc,
      params: { epoch: '1' },
    });
    expect((await late.closed).code).toBe(CLOSE.epochOver);
    expect((await readRoom(cast.boardId, room)).updates).toEqual([]);
    late.leave();
    painter.leave();
  });

  test('with a cookie whose session has ended is let in nowhere', async () => {
    const { peer, boardId } = await aBoardOfItsOwn('A replayed cookie');
    const device = join(server.port, peer, boardId, 'marks');
    await device.synced;
    device.provider.disconnect();
    putMark(device.doc, aMark(peer, 'In nobody’s name.'));
    await leaveSession(peer.cookie, false);
    const replay = join(server.port, peer, boardId, 'marks', { doc: device.doc, params: { epoch: '1' } });
    expect((await replay.closed).code).toBe(CLOSE.notEntered);
    expect((await readRoom(boardId, 'marks')).updates).toEqual([]);
    replay.leave();
    device.leave();
  });
});
