/** The school setting: private links, made-up names, no mixing hints, and what is deleted by itself. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { GET as readAudit } from '#app/api/boards/[boardId]/audit/route.ts';
import { PUT as putConsent } from '#app/api/boards/[boardId]/consents/[personId]/[use]/route.ts';
import { POST as makeInvite } from '#app/api/boards/[boardId]/invites/route.ts';
import { GET as countOver, POST as sayOver } from '#app/api/boards/[boardId]/over/route.ts';
import { GET as seePicture } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as seeGroup } from '#app/api/groups/[groupId]/route.ts';
import { PUT as setSchool } from '#app/api/groups/[groupId]/school/route.ts';
import { PUT as setHouse } from '#app/api/school/route.ts';
import { recordFor } from '#server/access/audit.ts';
import { mayUse } from '#server/access/consent.ts';
import { dueBefore } from '#server/access/keeping.ts';
import { rulesAt } from '#server/access/school.ts';
import type { AdjustmentCard } from '#server/core/contract/critique.ts';
import type { RecordView } from '#server/core/contract/decency.ts';
import type { BoardView, GroupView, PictureView } from '#server/core/contract/responses.ts';
import { NO_RULES, type SchoolRules, stricter } from '#server/core/contract/school.ts';
import { putMark } from '#server/core/live/marks.ts';
import { OWN_WAY, withoutMixing } from '#server/core/readings/without-mixing.ts';
import { dailyRound } from '#server/daily.ts';
import { database } from '#server/store/database.ts';
import { addInvite, findInvite } from '#server/store/invites.ts';
import { findPicture } from '#server/store/pictures.ts';
import { setHouseRules } from '#server/store/school.ts';
import { eventually, join, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aGroup, aPaintingOn, call, closeStage, openStage, type Stage } from './cast.ts';

const DAY_MS = 24 * 3_600_000;
let stage: Stage;
let groupId: string;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  groupId = await aGroup(stage.people);
  boardId = await aBoard({ people: stage.people, groupId });
});
afterAll(() => closeStage(stage));

const sets = (rules: Partial<SchoolRules>) =>
  call(setSchool, stage.people.owner, { groupId }, { method: 'PUT', body: { ...NO_RULES, ...rules } });
const read = async <Shape>(answer: Promise<Response>) => (await (await answer).json()) as Shape;
const invites = (uses: number | undefined, hours: number) =>
  call(makeInvite, stage.people.owner, { boardId }, { method: 'POST', body: { role: 'peer', hours, uses } });

describe('no public links', () => {
  test('an invitation lets in one person and ends within two days, or is refused', async () => {
    expect((await invites(undefined, 24)).status).toBe(200);
    await sets({ noPublicLinks: true });
    expect((await invites(undefined, 24)).status).toBe(403);
    expect((await invites(2, 24)).status).toBe(403);
    expect((await invites(1, 49)).status).toBe(403);
    expect((await invites(1, 48)).status).toBe(200);
  });

  test('links for many that were made before let in nobody else, and no link outlasts two days', async () => {
    const invite = (tokenHash: string, uses: number | null) => ({
      ...{ tokenHash, role: 'peer' as const, wardId: null, uses },
      expiresAt: new Date(Date.now() + 30 * DAY_MS),
    });
    const [many, one] = [crypto.randomUUID(), crypto.randomUUID()];
    await addInvite({ boardId }, invite(many, null));
    await addInvite({ groupId }, invite(one, 1));
    await sets({ noPublicLinks: true });
    expect(await findInvite(many, new Date())).toBeNull();
    expect(await findInvite(one, new Date())).not.toBeNull();
    expect(await findInvite(one, new Date(Date.now() + 2.1 * DAY_MS))).toBeNull();
  });
});

describe('made-up names', () => {
  const nameIn = (board: { members: { id: string; name: string }[] }, who: Somebody) =>
    board.members.find(({ id }) => id === who.id)?.name;

  test('members see each other’s, teachers and host the names given; everybody sees who runs and teaches', async () => {
    const { peer, fellow, teacher, host, owner } = stage.people;
    await sets({ aliases: true });
    const seen = await read<BoardView>(call(seeBoard, peer, { boardId }));
    const alias = nameIn(seen, fellow);
    expect(alias).toMatch(/^[A-Z][a-z]+ [A-Z][a-z]+/);
    expect(alias).not.toContain(fellow.name);
    expect(nameIn(seen, teacher)).toBe(teacher.name);
    expect(seen.owner.name).toBe(owner.name);
    expect(seen.me.name).toBe(peer.name);
    expect((await read<BoardView>(call(seeBoard, fellow, { boardId }))).alias).toBe(alias);
    for (const who of [teacher, host]) {
      expect(nameIn(await read<BoardView>(call(seeBoard, who, { boardId })), fellow)).toBe(fellow.name);
    }
    expect(nameIn(await read<GroupView>(call(seeGroup, peer, { groupId })), fellow)).toBe(alias);
    const pictureId = await aPaintingOn(boardId, fellow);
    const picture = await read<PictureView>(call(seePicture, peer, { boardId, pictureId }));
    expect(picture.painter).toEqual({ id: fellow.id, name: alias });
  });

  test('are what the wire says of who is here, the given name for teachers alone', async () => {
    const { peer, fellow, teacher } = stage.people;
    const clients = [peer, fellow, teacher].map((who) => join(stage.server.port, who, boardId, 'marks'));
    const [asPeer, asFellow, asTeacher] = clients;
    await Promise.all(clients.map(({ synced }) => synced));
    asFellow?.provider.awareness.setLocalState({ pointer: null });
    const named = (client: typeof asPeer) =>
      [...(client?.provider.awareness.getStates().values() ?? [])].find(
        ({ person }) => person?.id === fellow.id,
      )?.person.name;
    await eventually(
      'all see the name',
      () => named(asPeer) === fellow.name && named(asTeacher) === fellow.name,
    );
    await sets({ aliases: true });
    await eventually('members see another name', () => named(asPeer) !== fellow.name);
    expect(named(asPeer)).toBe((await read<BoardView>(call(seeBoard, fellow, { boardId }))).alias);
    expect(named(asTeacher)).toBe(fellow.name);
    for (const client of clients) client.leave();
  });
});

test('cards without mixing hints say what to do and how to check, not how to mix', () => {
  const mixes = {
    part: 'colour',
    direction: 'grey',
    amount: null,
    words: 'colour: grey',
    how: 'Try a little of the complement',
    mixes: true,
  } as const;
  const draws = {
    part: 'edge',
    direction: 'soften',
    amount: null,
    words: 'edge: soften',
    how: 'Try losing it',
    mixes: false,
  } as const;
  const card: AdjustmentCard = {
    ...{
      id: 'c',
      readings: ['C1'],
      plane: 'ridge',
      where: 'ridge',
      actions: [mixes, draws],
      why: 'w',
      check: 'k',
    },
    ...{ healthLine: true, open: true },
  };
  const [plain] = withoutMixing({ cards: [card] }).cards;
  expect(plain?.actions.map(({ how }) => how)).toEqual([OWN_WAY, 'Try losing it']);
  expect(JSON.stringify(plain)).not.toContain('complement');
  expect(plain).toMatchObject({ healthLine: false, check: 'k', why: 'w' });
});

test('the stricter of server and group holds', async () => {
  await sets({ aliases: true, deleteAfterDays: 30, deleteOn: '2030-07-01' });
  const { host } = stage.people;
  const house = { ...NO_RULES, noMixingHints: true, deleteAfterDays: 90, deleteOn: '2030-06-01' };
  expect((await call(setHouse, host, {}, { method: 'PUT', body: house })).status).toBe(204);
  expect(await rulesAt({ boardId })).toEqual({
    ...{ noPublicLinks: false, noMixingHints: true, aliases: true },
    ...{ deleteAfterDays: 30, deleteOn: '2030-06-01' },
  });
  await setHouseRules(NO_RULES);
  expect(stricter(NO_RULES, NO_RULES)).toEqual(NO_RULES);
});

test('a setting of the wrong shape is refused', async () => {
  for (const wrong of [
    { deleteAfterDays: 0 },
    { deleteAfterDays: 1.5 },
    { deleteOn: '2030-02-31' },
    { other: true },
  ]) {
    expect((await sets(wrong as Partial<SchoolRules>)).status).toBe(400);
  }
});

describe('what may be kept', () => {
  const keeps = (who: Somebody) =>
    call(
      putConsent,
      who,
      { boardId, personId: who.id, use: 'keep' },
      { method: 'PUT', body: { given: true } },
    );

  test('when the class is over, paintings without that word are deleted, and it is written down', async () => {
    const { painter, fellow, owner } = stage.people;
    const kept = await aPaintingOn(boardId, painter);
    const gone = await aPaintingOn(boardId, fellow);
    await keeps(painter);
    await stage.server.live.writeAsServer(boardId, 'marks', (doc) =>
      putMark(doc, {
        ...{ id: 'm', author: painter.id, pictureId: gone, kind: 'pin', points: [[0, 0]], text: 'Warm' },
        ...{ planeId: null, parent: null, at: 1 },
      }),
    );
    expect(await read(call(countOver, owner, { boardId }))).toEqual({ goes: 1, stays: 1, overAt: null });
    expect((await call(sayOver, owner, { boardId }, { method: 'POST' })).status).toBe(204);
    expect(await findPicture(boardId, gone)).toBeNull();
    expect(await findPicture(boardId, kept)).not.toBeNull();
    const { audit, deletions } = await read<RecordView>(call(readAudit, owner, { boardId }));
    expect(deletions).toEqual([
      expect.objectContaining({ reason: 'over', pictures: 1, remarks: 1, whole: false }),
    ]);
    expect(audit[0]?.sentence).toBe(
      'owner said that the class is over on “Reeds at the weir”; one picture was deleted.',
    );
  });

  test('by age: what is older goes, what is younger or may be kept stays', async () => {
    const { painter, fellow } = stage.people;
    const old = await aPaintingOn(boardId, fellow);
    const young = await aPaintingOn(boardId, fellow);
    const kept = await aPaintingOn(boardId, painter);
    await keeps(painter);
    const posted = new Date(Date.now() - 31 * DAY_MS);
    await database().picture.updateMany({ where: { id: { in: [old, kept] } }, data: { createdAt: posted } });
    await sets({ deleteAfterDays: 30 });
    await dailyRound(new Date());
    expect(await findPicture(boardId, old)).toBeNull();
    for (const id of [young, kept]) expect(await findPicture(boardId, id)).not.toBeNull();
  });

  test('on the day: a board on which nothing stays goes whole, and the teacher reads that it did', async () => {
    const { fellow, teacher, owner } = stage.people;
    await aPaintingOn(boardId, fellow);
    const day = new Date(Date.now() + DAY_MS).toISOString().slice(0, 10);
    const dawn = new Date(`${day}T00:00:00Z`);
    await sets({ deleteOn: day });
    await dailyRound(new Date(dawn.getTime() - 1000));
    expect(await database().board.count({ where: { id: boardId } })).toBe(1);
    await dailyRound(dawn);
    expect(await database().board.count({ where: { id: boardId } })).toBe(0);
    expect(await database().liveUpdate.count({ where: { boardId } })).toBe(0);
    for (const { id, name } of [teacher, owner]) {
      const record = await recordFor({ personId: id, name, isHost: false }, null);
      expect(record?.deletions).toContainEqual(
        expect.objectContaining({ reason: 'day', pictures: 1, whole: true }),
      );
    }
  });

  test('the moment is that of the later of both rules', () => {
    const now = new Date('2030-06-10T12:00:00Z');
    const due = (deleteAfterDays: number | null, deleteOn: string | null) =>
      dueBefore({ deleteAfterDays, deleteOn }, now);
    expect(due(null, null)).toBeNull();
    expect(due(null, '2030-06-11')).toBeNull();
    expect(due(5, null)).toEqual({ before: new Date('2030-06-05T12:00:00Z'), reason: 'age' });
    expect(due(5, '2030-06-10')).toEqual({ before: new Date('2030-06-10T00:00:00Z'), reason: 'day' });
    expect(due(5, '2030-06-01')).toEqual({ before: new Date('2030-06-05T12:00:00Z'), reason: 'age' });
  });

  test('every use is asked for in one place: by painting, minor and line on rights', async () => {
    const { painter, ward, fellow } = stage.people;
    const painting = (who: Somebody) => ({ boardId, painterId: who.id, kind: 'painting', rights: null });
    const reference = (rights: string) => ({ boardId, painterId: fellow.id, kind: 'reference', rights });
    await keeps(painter);
    expect(await mayUse('keep', painting(painter))).toBe(true);
    expect(await mayUse('keep', painting(fellow))).toBe(false);
    expect(await mayUse('class', painting(fellow))).toBe(true);
    expect(await mayUse('class', painting(ward))).toBe(false);
    expect(await mayUse('others', painting(painter))).toBe(false);
    expect(await mayUse('example', painting(painter))).toBe(false);
    expect(await mayUse('others', reference('free'))).toBe(true);
    expect(await mayUse('others', reference('permission'))).toBe(false);
    expect(await mayUse('class', reference('permission'))).toBe(true);
    expect(await mayUse('others', reference('mine'))).toBe(false);
  });
});
