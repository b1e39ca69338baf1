import { describe, expect, test } from 'vitest';
import { peoplePresent, readPresence } from '#server/core/live/presence.ts';
import { cast, server } from './a-live-board.ts';
import { awarenessFrame, eventually, join } from './a-live-server.ts';

describe('presence', () => {
  test('a person is who the session says, whatever their browser claims', async () => {
    const liar = join(server.port, cast.peer, cast.boardId, 'marks');
    const witness = join(server.port, cast.teacher, cast.boardId, 'marks');
    liar.provider.awareness.setLocalState({
      person: { id: cast.host.id, name: 'Hedda', role: 'host' },
      pointer: null,
    });
    const seen = () => readPresence(witness.provider.awareness.getStates(), witness.doc.clientID);
    await eventually('the peer is seen', () => seen().length === 1);
    expect(peoplePresent(seen())).toEqual([{ id: cast.peer.id, name: 'Petra', role: 'peer' }]);

    const ghost = { clientId: 4242, state: { person: { id: cast.host.id, name: 'Hedda', role: 'host' } } };
    liar.provider.ws?.send(awarenessFrame(ghost.clientId, 9, ghost.state));
    // And an attempt to send the witness away.
    liar.provider.ws?.send(awarenessFrame(witness.doc.clientID, 99, null));
    liar.provider.awareness.setLocalStateField('pointer', { pictureId: 'p', x: 0.25, y: 0.5 });
    await eventually('the pointer came', () => seen()[0]?.pointer?.x === 0.25);
    expect(seen().map(({ person }) => person.id)).toEqual([cast.peer.id]);
    expect(liar.provider.wsconnected).toBe(true);
    const third = join(server.port, cast.painter, cast.boardId, 'marks');
    const seenByThird = () => readPresence(third.provider.awareness.getStates(), third.doc.clientID);
    await eventually('the newcomer sees both', () => seenByThird().length === 2);
    expect(
      peoplePresent(seenByThird())
        .map(({ id }) => id)
        .sort(),
    ).toEqual([cast.peer.id, cast.teacher.id].sort());
    liar.provider.ws?.close();
    liar.leave();
    await eventually('who left is no longer there', () =>
      seen().every(({ person }) => person.id !== cast.peer.id),
    );
    witness.leave();
    third.leave();
  });

  test('somebody who comes back under the same id is seen again', async () => {
    const comes = join(server.port, cast.peer, cast.boardId, 'marks');
    const witness = join(server.port, cast.teacher, cast.boardId, 'marks');
    const seen = () => readPresence(witness.provider.awareness.getStates(), witness.doc.clientID).length;
    await eventually('seen', () => seen() === 1);
    comes.provider.disconnect();
    await eventually('gone', () => seen() === 0);
    comes.provider.awareness.setLocalState({ pointer: null });
    comes.provider.connect();
    await eventually('seen again', () => seen() === 1);
    comes.leave();
    witness.leave();
  });

  test('who is there is told in the room of the marks alone', async () => {
    const rooms = ['setup', 'class', 'marks'] as const;
    const comes = rooms.map((room) => join(server.port, cast.peer, cast.boardId, room));
    const witnesses = rooms.map((room) => join(server.port, cast.teacher, cast.boardId, room));
    await Promise.all([...comes, ...witnesses].map(({ synced }) => synced));
    // In this order: what the first two rooms would tell is on its way before what the marks tell.
    for (const { provider } of comes) provider.awareness.setLocalState({ pointer: null });
    const seen = () =>
      witnesses.map(({ provider, doc }) => readPresence(provider.awareness.getStates(), doc.clientID).length);
    await eventually('the marks tell', () => seen()[2] === 1);
    expect(seen()).toEqual([0, 0, 1]);
    for (const each of [...comes, ...witnesses]) each.leave();
  });
});
