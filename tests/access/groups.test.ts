/** A group's people on its boards: the role they have through it, and what a board says otherwise. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { DELETE as endAccess, PATCH as setRole } from '#app/api/boards/[boardId]/members/[personId]/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as listBoards } from '#app/api/boards/route.ts';
import {
  DELETE as endMembership,
  PATCH as setGroupRole,
} from '#app/api/groups/[groupId]/members/[personId]/route.ts';
import { DELETE as deleteGroup } from '#app/api/groups/[groupId]/route.ts';
import { GET as listGroups } from '#app/api/groups/route.ts';
import type { BoardListItem, BoardView, GroupListItem } from '#server/core/contract/responses.ts';
import { putMember } from '#server/store/members.ts';
import type { Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aGroup, call, closeStage, openStage, type Stage } from './cast.ts';

let stage: Stage;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  stage.groupId = await aGroup(stage.people);
  boardId = await aBoard(stage);
});
afterAll(() => closeStage(stage));

async function roleOf(who: Somebody, board = boardId): Promise<string> {
  const answer = await call(seeBoard, who, { boardId: board });
  return answer.ok ? ((await answer.json()) as BoardView).role : 'none';
}

const byOwner = { method: 'PATCH' } as const;

describe('a board of a group', () => {
  test('is open to everybody of the group in their role, its list of boards says the same', async () => {
    const { people } = stage;
    for (const name of ['host', 'owner', 'teacher', 'painter', 'peer', 'viewer', 'guardian'] as const) {
      expect(await roleOf(people[name])).toBe(name);
      const boards = (await (await call(listBoards, people[name], {})).json()) as BoardListItem[];
      expect(boards.find(({ id }) => id === boardId)).toMatchObject({
        role: name,
        group: { id: stage.groupId, name: 'Thursday class' },
      });
    }
    expect(await roleOf(people.stranger)).toBe('none');
  });

  test('may say that somebody is something else on it, and only on it', async () => {
    const { people } = stage;
    const other = await aBoard(stage);
    await call(
      setRole,
      people.owner,
      { boardId, personId: people.peer.id },
      { ...byOwner, body: { role: 'teacher' } },
    );
    expect(await roleOf(people.peer)).toBe('teacher');
    expect(await roleOf(people.peer, other)).toBe('peer');
  });

  test('may keep somebody off, who then does not see it among their boards', async () => {
    const { people } = stage;
    const other = await aBoard(stage);
    await call(endAccess, people.owner, { boardId, personId: people.viewer.id }, { method: 'DELETE' });
    expect(await roleOf(people.viewer)).toBe('none');
    expect(await roleOf(people.viewer, other)).toBe('viewer');
    const boards = (await (await call(listBoards, people.viewer, {})).json()) as BoardListItem[];
    expect(boards.map(({ id }) => id)).not.toContain(boardId);
    const board = (await (await call(seeBoard, people.owner, { boardId })).json()) as BoardView;
    expect(board.members.map(({ id }) => id)).not.toContain(people.viewer.id);
  });

  test('shows a guardian nothing once the minor is kept off it', async () => {
    const { people } = stage;
    await call(endAccess, people.owner, { boardId, personId: people.ward.id }, { method: 'DELETE' });
    expect(await roleOf(people.guardian)).toBe('none');
  });

  test('lists everybody once, the owner first', async () => {
    const { people } = stage;
    await putMember(boardId, people.stranger.id, 'peer', null);
    const board = (await (await call(seeBoard, people.owner, { boardId })).json()) as BoardView;
    const ids = board.members.map(({ id }) => id);
    expect(ids[0]).toBe(people.owner.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain(people.stranger.id);
    await endStranger();
  });
  const endStranger = () =>
    call(
      endAccess,
      stage.people.owner,
      { boardId, personId: stage.people.stranger.id },
      { method: 'DELETE' },
    );
});

describe('a group', () => {
  test('that makes somebody something else does so on its boards', async () => {
    const { people, groupId } = stage;
    await call(
      setGroupRole,
      people.owner,
      { groupId, personId: people.viewer.id },
      { ...byOwner, body: { role: 'painter' } },
    );
    expect(await roleOf(people.viewer)).toBe('painter');
  });

  test('that somebody leaves takes its boards from them, but not a board they were invited to itself', async () => {
    const { people, groupId } = stage;
    const invited = await aBoard(stage);
    await putMember(invited, people.painter.id, 'painter', 'an-invite');
    await call(endMembership, people.painter, { groupId, personId: people.painter.id }, { method: 'DELETE' });
    expect(await roleOf(people.painter)).toBe('none');
    expect(await roleOf(people.painter, invited)).toBe('painter');
  });

  test('that goes leaves its boards with whoever made them', async () => {
    const { people, groupId } = stage;
    await call(deleteGroup, people.owner, { groupId }, { method: 'DELETE' });
    expect(await roleOf(people.owner)).toBe('owner');
    expect(await roleOf(people.peer)).toBe('none');
  });

  test('stands in the list of those who belong to it, with how many people and boards', async () => {
    const { people, groupId } = stage;
    const listed = async (who: Somebody) =>
      ((await (await call(listGroups, who, {})).json()) as GroupListItem[]).find(({ id }) => id === groupId);
    expect(await listed(people.peer)).toEqual({
      ...{ id: groupId, name: 'Thursday class', role: 'peer' },
      ...{ members: 7, boards: 1 },
    });
    expect(await listed(people.guardian)).toMatchObject({ role: 'guardian' });
    expect(await listed(people.stranger)).toBeUndefined();
  });
});
