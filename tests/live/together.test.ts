import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { leaveSession, sessionIdOf, startSession } from '#server/access/session.ts';
import { LOCAL_EDIT } from '#server/core/live/document.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import {
  putPaintingOutline,
  putReferenceOutline,
  readReferenceOutlines,
} from '#server/core/live/outlines.ts';
import { readPhoto, readResult, setCorners, setSize } from '#server/core/live/painting.ts';
import { addPlane, movePlane, readPlanes, renamePlane } from '#server/core/live/planes.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { putMember, removeMember } from '#server/store/members.ts';
import { cast, server, startAgain } from './a-live-board.ts';
import { eventually, join } from './a-live-server.ts';

function pin(id: string, author: string, at = 1): Mark {
  return {
    id,
    author,
    at,
    pictureId: cast.pictureId,
    kind: 'pin',
    points: [[0.5, 0.25]],
    text: 'Lighter here',
    planeId: null,
    parent: null,
  };
}

describe('people on one board', () => {
  test('two people who mark at the same time see the same marks', async () => {
    const one = join(server.port, cast.painter, cast.boardId, 'marks');
    const two = join(server.port, cast.peer, cast.boardId, 'marks');
    await Promise.all([one.synced, two.synced]);
    putMark(one.doc, pin('together-1', cast.painter.id, 1));
    putMark(two.doc, pin('together-2', cast.peer.id, 2));
    await eventually('both see both', () => {
      return [one, two].every(
        ({ doc }) => readMarks(doc).filter(({ id }) => id.startsWith('together')).length === 2,
      );
    });
    expect(readMarks(one.doc)).toEqual(readMarks(two.doc));
    one.leave();
    two.leave();
  });

  test('somebody who comes late sees everything, and so does everybody after a restart', async () => {
    const early = join(server.port, cast.painter, cast.boardId, 'marks');
    await early.synced;
    for (let index = 0; index < 40; index++) putMark(early.doc, pin(`late-${index}`, cast.painter.id, index));
    const late = join(server.port, cast.viewer, cast.boardId, 'marks');
    await eventually('the late joiner has all 40', () => {
      return readMarks(late.doc).filter(({ id }) => id.startsWith('late-')).length === 40;
    });
    const before = readMarks(late.doc);
    early.leave();
    late.leave();
    await server.stop();
    // Forty updates were enough for the stop to compact the log into one snapshot.
    expect((await readRoom(cast.boardId, 'marks')).loose).toBe(0);
    await startAgain();
    const after = join(server.port, cast.peer, cast.boardId, 'marks');
    await after.synced;
    await eventually('all are back', () => readMarks(after.doc).length === before.length);
    expect(readMarks(after.doc)).toEqual(before);
    // Who was given the stored snapshot as it lay there writes on, and is seen.
    putMark(after.doc, pin('after-restart', cast.peer.id, 99));
    const witness = join(server.port, cast.viewer, cast.boardId, 'marks');
    await eventually('the new mark is seen', () => readMarks(witness.doc).length === before.length + 1);
    witness.leave();
    after.leave();
  });

  test('two people who reorder planes, nudge an outline, set corners and size while offline lose nothing', async () => {
    const painting = `painting/${cast.pictureId}` as const;
    await server.live.writeAsServer(cast.boardId, 'setup', (doc) => {
      for (const id of ['sky', 'ridge', 'wood', 'meadow'])
        addPlane(doc, { id, name: id, kind: 'land', tilt: null });
    });
    const people = [cast.teacher, cast.owner].map((who) => join(server.port, who, cast.boardId, 'setup'));
    const painters = [cast.teacher, cast.painter].map((who) =>
      join(server.port, who, cast.boardId, painting),
    );
    await Promise.all([...people, ...painters].map(({ synced }) => synced));
    for (const { provider } of [...people, ...painters]) provider.disconnect();
    const [one, two] = people.map(({ doc }) => doc) as [Y.Doc, Y.Doc];
    const [first, second] = painters.map(({ doc }) => doc) as [Y.Doc, Y.Doc];

    movePlane(one, 'meadow', 0);
    renamePlane(one, 'wood', 'birches');
    movePlane(two, 'sky', 3);
    movePlane(two, 'wood', 1);
    putReferenceOutline(one, 'ref', 'sky', [
      [0, 0],
      [1, 0],
      [1, 0.31],
    ]);
    putReferenceOutline(two, 'ref', 'ridge', [
      [0, 0.3],
      [1, 0.3],
      [1, 0.5],
    ]);
    setCorners(first, [
      [0.1, 0.1],
      [0.9, 0.1],
      [0.9, 0.9],
      [0.1, 0.9],
    ]);
    setSize(second, [16, 12]);
    putPaintingOutline(second, 'sky', [
      [0, 0],
      [1, 0],
      [1, 0.3],
    ]);

    for (const { provider } of [...people, ...painters]) provider.connect();
    await eventually('both have both outlines and the same planes', () => {
      const same = JSON.stringify(readPlanes(one)) === JSON.stringify(readPlanes(two));
      return same && readReferenceOutlines(one).size === 2 && readReferenceOutlines(two).size === 2;
    });
    await eventually('both have corners and size', () => {
      return [first, second].every((doc) => readPhoto(doc).corners && readPhoto(doc).size);
    });
    const planes = readPlanes(one);
    expect(planes.map(({ id }) => id).sort()).toEqual(['meadow', 'ridge', 'sky', 'wood']);
    expect(planes[0]?.id).toBe('meadow');
    expect(planes[3]?.id).toBe('sky');
    expect(planes.find(({ id }) => id === 'wood')?.name).toBe('birches');
    for (const client of [...people, ...painters]) client.leave();
  });

  test('a result of the server reaches the painting’s room and measuring is not asked for again', async () => {
    const room = `painting/${cast.pictureId}` as const;
    const client = join(server.port, cast.viewer, cast.boardId, room);
    await client.synced;
    const asked = server.changed.length;
    await server.live.setResult(cast.boardId, cast.pictureId, { number: 7, pending: null });
    await eventually('the result is there', () => readResult(client.doc)?.number === 7);
    expect(server.changed.length).toBe(asked);
    client.leave();
  });

  test('a teacher takes a removal back and the mark keeps its author', async () => {
    const author = join(server.port, cast.peer, cast.boardId, 'marks');
    const teacher = join(server.port, cast.teacher, cast.boardId, 'marks');
    await Promise.all([author.synced, teacher.synced]);
    putMark(author.doc, pin('put-back', cast.peer.id));
    await eventually('the teacher has it', () => teacher.doc.getMap('marks').has('put-back'));
    const undo = new Y.UndoManager(teacher.doc.getMap('marks'), { trackedOrigins: new Set([LOCAL_EDIT]) });
    teacher.doc.transact(() => teacher.doc.getMap('marks').delete('put-back'), LOCAL_EDIT);
    await eventually('it is gone', () => !author.doc.getMap('marks').has('put-back'));
    undo.undo();
    await eventually('it is back', () => readMarks(author.doc).some(({ id }) => id === 'put-back'));
    const back = readMarks(author.doc).find(({ id }) => id === 'put-back');
    expect(back).toEqual(pin('put-back', cast.peer.id));
    author.leave();
    teacher.leave();
  });
});

describe('what the server tells', () => {
  test('browsers hear that the board changed, and the pipeline hears which room did', async () => {
    const client = join(server.port, cast.viewer, cast.boardId, 'setup');
    await client.synced;
    await server.live.announce(cast.boardId);
    await eventually('the news came', () => client.news() === 1);
    const marks = join(server.port, cast.peer, cast.boardId, 'marks');
    await marks.synced;
    const before = server.changed.length;
    putMark(marks.doc, pin('heard-of', cast.peer.id));
    await eventually('the change was reported', () => server.changed.length > before);
    expect(server.changed.at(-1)).toBe(`${cast.boardId}/marks`);
    client.leave();
    marks.leave();
  });

  test('an edit of the server’s own that does not fit the layout is a bug and changes nothing', async () => {
    const bad = server.live.writeAsServer(cast.boardId, 'setup', (doc) => doc.getMap('planes').set('x', 1));
    await expect(bad).rejects.toThrow('does not fit');
    expect(await server.live.read(cast.boardId, 'setup', (doc) => doc.getMap('planes').has('x'))).toBe(false);
  });
});

describe('the end of access', () => {
  test('people whose access ended are closed with 4403, others stay', async () => {
    const gone = join(server.port, cast.peer, cast.boardId, 'marks');
    const stays = join(server.port, cast.painter, cast.boardId, 'marks');
    await Promise.all([gone.synced, stays.synced]);
    await removeMember(cast.boardId, cast.peer.id);
    await server.live.recheck(cast.boardId);
    expect((await gone.closed).code).toBe(CLOSE.notAllowed);
    expect(stays.provider.wsconnected).toBe(true);
    gone.leave();
    stays.leave();
  });

  test('who became something else comes back by itself and is seated as that', async () => {
    const viewer = join(server.port, cast.viewer, cast.boardId, 'marks');
    await viewer.synced;
    await putMember(cast.boardId, cast.viewer.id, 'peer', null);
    await server.live.recheck(cast.boardId);
    expect((await viewer.closed).code).toBe(CLOSE.roleChanged);
    await eventually('they are back', () => viewer.provider.synced);
    putMark(viewer.doc, pin('as-a-peer', cast.viewer.id));
    await eventually('their mark is taken', () =>
      server.live.read(cast.boardId, 'marks', (doc) => doc.getMap('marks').has('as-a-peer')),
    );
    viewer.leave();
  });

  test('a session that ended closes what was opened with it, and not what another one opened', async () => {
    const here = join(server.port, cast.painter, cast.boardId, 'marks');
    const elsewhere = { cookie: (await startSession(cast.painter.id, false)).split(';')[0] ?? '' };
    const there = join(server.port, elsewhere, cast.boardId, 'marks');
    await Promise.all([here.synced, there.synced]);
    const ended = sessionIdOf(elsewhere.cookie);
    await leaveSession(elsewhere.cookie, false);
    await server.live.closeSessions(ended === null ? [] : [ended]);
    expect((await there.closed).code).toBe(CLOSE.notEntered);
    expect(here.provider.wsconnected).toBe(true);
    // The cookie of a session that ended opens nothing any more.
    const replayed = join(server.port, elsewhere, cast.boardId, 'marks');
    expect((await replayed.closed).code).toBe(CLOSE.notEntered);
    for (const client of [here, there, replayed]) client.leave();
  });

  test('an older copy of an erased room is refused by its epoch', async () => {
    const room = `painting/${cast.pictureId}` as const;
    const present = join(server.port, cast.painter, cast.boardId, room);
    await present.synced;
    await server.live.closePicture(cast.boardId, cast.pictureId);
    expect((await present.closed).code).toBe(CLOSE.noSuchRoom);
    const history = await readRoom(cast.boardId, room);
    expect(history.updates).toEqual([]);
    expect(history.epoch).toBe(2);
    const old = join(server.port, cast.painter, cast.boardId, room, { params: { epoch: '1' } });
    expect((await old.closed).code).toBe(CLOSE.epochOver);
    present.leave();
    old.leave();
  });
});
