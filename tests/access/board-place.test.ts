/** Existing boards join a group and leave it, and are handed on; who is on them follows. */
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { PUT as move } from '#app/api/boards/[boardId]/group/route.ts';
import { PATCH as setRole } from '#app/api/boards/[boardId]/members/[personId]/route.ts';
import { PUT as handOn } from '#app/api/boards/[boardId]/owner/route.ts';
import { roleNow } from '#server/access/roles.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { addBoard } from '#server/store/boards.ts';
import { putMember } from '#server/store/members.ts';
import { join, type Somebody } from '#tests/live/a-live-server.ts';
import { aGroup, call, closeStage, openStage, type Stage } from './cast.ts';

let stage: Stage;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await addBoard(stage.people.owner.id, 'Reeds at the weir');
});
afterAll(() => closeStage(stage));

const moves = (who: Somebody, group: string | null) =>
  call(move, who, { boardId }, { method: 'PUT', body: { group } });

test('a board that joins a group has its people, and loses them when it leaves', async () => {
  const { owner, painter, peer } = stage.people;
  const groupId = await aGroup(stage.people);
  expect(await roleNow(painter.id, boardId)).toBeNull();
  expect((await moves(owner, groupId)).status).toBe(204);
  expect(await roleNow(painter.id, boardId)).toBe('painter');
  // What the board says of a member stands in place of the group's word, and goes with the group.
  await call(setRole, owner, { boardId, personId: peer.id }, { method: 'PATCH', body: { role: 'painter' } });
  expect(await roleNow(peer.id, boardId)).toBe('painter');
  const inside = join(stage.server.port, painter, boardId, 'marks');
  await inside.synced;
  expect((await moves(owner, null)).status).toBe(204);
  expect((await inside.closed).code).toBe(CLOSE.notAllowed);
  inside.leave();
  for (const who of [painter, peer]) expect(await roleNow(who.id, boardId)).toBeNull();
});

test('into a group only by who may make boards for it', async () => {
  const { owner, painter, teacher } = stage.people;
  const groupId = await aGroup(stage.people);
  boardId = await addBoard(painter.id, 'Mine');
  expect((await moves(painter, groupId)).status).toBe(403);
  expect((await moves(owner, groupId)).status).toBe(404);
  boardId = await addBoard(teacher.id, 'The teacher’s');
  expect((await moves(teacher, groupId)).status).toBe(204);
  expect((await moves(teacher, 'no-such-group')).status).toBe(404);
});

test('a board is handed on to a member; who had it stays as a teacher', async () => {
  const { owner, painter, stranger } = stage.people;
  await putMember(boardId, painter.id, 'painter', null);
  const hands = (person: Somebody) =>
    call(handOn, owner, { boardId }, { method: 'PUT', body: { person: person.id } });
  expect((await hands(stranger)).status).toBe(404);
  expect((await hands(painter)).status).toBe(204);
  expect(await roleNow(painter.id, boardId)).toBe('owner');
  expect(await roleNow(owner.id, boardId)).toBe('teacher');
  expect((await hands(painter)).status).toBe(403);
});
