/** Links that bring people in: how many they let in, how long they work, what ends with them. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DELETE as endInvite } from '#app/api/boards/[boardId]/invites/[token]/route.ts';
import { GET as listInvites, POST as makeInvite } from '#app/api/boards/[boardId]/invites/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { POST as enter } from '#app/api/enter/route.ts';
import { DELETE as endGroupInvite } from '#app/api/groups/[groupId]/invites/[token]/route.ts';
import { POST as makeGroupInvite } from '#app/api/groups/[groupId]/invites/route.ts';
import type { BoardView, InviteView, OpenInvite } from '#server/core/contract/responses.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { database } from '#server/store/database.ts';
import { join, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, closeStage, openStage, type Stage } from './cast.ts';

let stage: Stage;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
  boardId = await aBoard(stage);
});
afterAll(() => closeStage(stage));

type Made = InviteView & { id: string };

async function made(body: Record<string, unknown>): Promise<Made> {
  const answer = await call(makeInvite, stage.people.owner, { boardId }, { method: 'POST', body });
  expect(answer.status).toBe(200);
  return (await answer.json()) as Made;
}

const opens = (token: string, name: string, who: Somebody | null = null) =>
  call(enter, who, {}, { method: 'POST', body: { key: token, name } });

async function entered(response: Response): Promise<Somebody> {
  expect(response.status).toBe(200);
  const { id, name } = (await response.json()) as { id: string; name: string };
  return { id, name, cookie: response.headers.get('set-cookie')?.split(';')[0] ?? '' };
}

const codeOf = async (response: Response) =>
  response.ok ? null : ((await response.json()) as { error: { code: string } }).error.code;

const peopleCount = () => database().person.count();

describe('how many an invite lets in', () => {
  test('the third of a link for two is refused, and nothing of them stays', async () => {
    const { token, uses } = await made({ role: 'peer', hours: 1, uses: 2 });
    expect(uses).toBe(2);
    await entered(await opens(token, 'Agnes'));
    await entered(await opens(token, 'Bertil'));
    const before = await peopleCount();
    expect(await codeOf(await opens(token, 'Cecilia'))).toBe('link-not-valid');
    expect(await peopleCount()).toBe(before);
  });

  test('of several who use the last one in the same moment one gets in', async () => {
    for (let round = 0; round < 5; round++) {
      const { token } = await made({ role: 'peer', hours: 1, uses: 1 });
      const before = await peopleCount();
      const answers = await Promise.all(
        ['Dagny', 'Einar', 'Frida', 'Gustav'].map((name) => opens(token, `${name} ${round}`)),
      );
      const codes = await Promise.all(answers.map(codeOf));
      expect(codes.filter((code) => code === null)).toHaveLength(1);
      expect(codes.filter((code) => code === 'link-not-valid')).toHaveLength(3);
      expect(await peopleCount()).toBe(before + 1);
    }
  });

  test('who came by it may open it again, and uses none up', async () => {
    const { token, id } = await made({ role: 'peer', hours: 1, uses: 1 });
    const guest = await entered(await opens(token, 'Hjalmar'));
    expect((await opens(token, 'Hjalmar', guest)).status).toBe(200);
    const list = (await (await call(listInvites, stage.people.owner, { boardId })).json()) as OpenInvite[];
    expect(list.find((invite) => invite.id === id)).toMatchObject({ uses: 1, used: 1 });
  });

  test.each([0, -1, 1.5, 1001])('a number of %s is refused by the name of the field', async (uses) => {
    const body = { role: 'peer', hours: 1, uses };
    const answer = await call(makeInvite, stage.people.owner, { boardId }, { method: 'POST', body });
    expect(answer.status).toBe(400);
    expect(((await answer.json()) as { error: { message: string } }).error.message).toContain('uses');
  });
});

describe('the end of an invite', () => {
  test('one that has run out lets nobody in', async () => {
    const { token, id } = await made({ role: 'peer', hours: 1 });
    await database().invite.update({ where: { id }, data: { expiresAt: new Date(Date.now() - 1) } });
    expect(await codeOf(await opens(token, 'Ingrid'))).toBe('link-not-valid');
  });

  test('a used-up one can still be taken back, and closes the sockets of who came within 5 s', async () => {
    const { token, id } = await made({ role: 'peer', hours: 1, uses: 1 });
    const guest = await entered(await opens(token, 'Joakim'));
    const client = join(stage.server.port, guest, boardId, 'marks');
    await client.synced;
    const fromMs = performance.now();
    await call(endInvite, stage.people.teacher, { boardId, token: id }, { method: 'DELETE' });
    expect((await client.closed).code).toBe(CLOSE.notAllowed);
    expect(performance.now() - fromMs).toBeLessThan(5_000);
    expect(await codeOf(await call(seeBoard, guest, { boardId }))).toBe('board-not-found');
    client.leave();
  });

  test('of a group’s, it ends the boards of the group too', async () => {
    const { groupId } = stage;
    const body = { role: 'painter', hours: 1 };
    const answer = await call(makeGroupInvite, stage.people.owner, { groupId }, { method: 'POST', body });
    const { token, id } = (await answer.json()) as Made;
    const guest = await entered(await opens(token, 'Karin'));
    const board = (await (await call(seeBoard, guest, { boardId })).json()) as BoardView;
    expect(board.role).toBe('painter');
    const client = join(stage.server.port, guest, boardId, 'marks');
    await client.synced;
    await call(endGroupInvite, stage.people.owner, { groupId, token: id }, { method: 'DELETE' });
    expect((await client.closed).code).toBe(CLOSE.notAllowed);
    expect(await codeOf(await call(seeBoard, guest, { boardId }))).toBe('board-not-found');
    client.leave();
  });
});

describe('a guardian’s invite', () => {
  test('names a member, and nobody who is not there', async () => {
    const nobody = { role: 'guardian', hours: 1, ward: stage.people.stranger.id };
    const post = (body: unknown) =>
      call(makeInvite, stage.people.owner, { boardId }, { method: 'POST', body }).then(codeOf);
    expect(await post(nobody)).toBe('person-not-found');
    expect(await post({ role: 'guardian', hours: 1 })).toBe('bad-request');
    expect(await post({ role: 'peer', hours: 1, ward: stage.people.fellow.id })).toBe('bad-request');
  });

  test('shows the board on which it was made, and no other board of the minor', async () => {
    const { token } = await made({ role: 'guardian', hours: 1, uses: 1, ward: stage.people.fellow.id });
    const guardian = await entered(await opens(token, 'Laila'));
    const other = await aBoard(stage);
    expect((await call(seeBoard, stage.people.fellow, { boardId: other })).status).toBe(200);
    expect(await codeOf(await call(seeBoard, guardian, { boardId: other }))).toBe('board-not-found');
    const board = (await (await call(seeBoard, guardian, { boardId })).json()) as BoardView;
    expect(board.role).toBe('guardian');
    expect(board.members).toContainEqual({
      ...{ id: guardian.id, name: 'Laila', role: 'guardian' },
      ward: { id: stage.people.fellow.id, name: 'fellow' },
    });
  });

  test('who guards whom is not shown to the others on the board', async () => {
    const board = (await (await call(seeBoard, stage.people.peer, { boardId })).json()) as BoardView;
    expect(board.members.filter(({ role }) => role === 'guardian')).toEqual([]);
  });
});
