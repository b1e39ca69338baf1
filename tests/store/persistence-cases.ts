/**
 * What has to hold of the store on the embedded database and on a PostgreSQL server alike: the history of live rooms,
 * and whatever is written in raw SQL or rests on the database's own promises.
 */
import { randomUUID } from 'node:crypto';
import { expect } from 'vitest';
import { NO_RULES } from '#server/core/contract/school.ts';
import { addAudit, addDeletion, forgetRecords, listAudit, listDeletions } from '#server/store/audit.ts';
import { addBlock, blockedBy, blockedEitherWay, removeBlock } from '#server/store/blocks.ts';
import { moveBoard } from '#server/store/board-place.ts';
import { addBoard } from '#server/store/boards.ts';
import { unshownPainters } from '#server/store/consents.ts';
import { database } from '#server/store/database.ts';
import { addGroup } from '#server/store/groups.ts';
import { guardianshipsOn, newGuardianship } from '#server/store/guardians.ts';
import { addInvite, findInvite } from '#server/store/invites.ts';
import { leadersOn, ledBy } from '#server/store/leaders.ts';
import { newestUpdates } from '#server/store/live-documents.ts';
import {
  appendUpdates,
  eraseRoom,
  lastUpdateId,
  paintingRoomsOf,
  raiseEpoch,
  readRoom,
  replaceBySnapshot,
} from '#server/store/live-updates.ts';
import { putMember } from '#server/store/members.ts';
import { addPerson } from '#server/store/people.ts';
import { addReport, closeReport, listReports, removeClosedReports } from '#server/store/reports.ts';
import { aliasesOf, closePublicInvites, groupRules, setGroupRules } from '#server/store/school.ts';
import { standingOn } from '#server/store/standing.ts';

export interface PersistenceCase {
  name: string;
  /** With a migrated database open. */
  run(): Promise<void>;
}

const bytes = (...values: number[]) => Uint8Array.from(values);
const listed = (updates: Uint8Array[]) => updates.map((update) => [...update]);

/** A class: its owner, a teacher, two painters; a board of it. */
async function aClass() {
  const [owner, teacher, one, two] = await Promise.all(
    ['Odile', 'Tove', 'Pelle', 'Petra'].map(async (name) => (await addPerson(name, false)).id),
  );
  if (!owner || !teacher || !one || !two) throw new Error('Four people were made.');
  const groupId = await addGroup(owner, 'Thursday class');
  for (const [personId, role] of [
    [teacher, 'teacher'],
    [one, 'painter'],
    [two, 'painter'],
  ] as const) {
    await database().groupMember.create({ data: { groupId, personId, role } });
  }
  return { owner, teacher, one, two, groupId, boardId: await addBoard(owner, 'Reeds', groupId) };
}

export const PERSISTENCE: PersistenceCase[] = [
  {
    name: 'a room is read as it was written, in order, and a batch is stored whole',
    async run() {
      const boardId = randomUUID();
      const large = Uint8Array.from({ length: 600_000 }, (_, at) => at % 256);
      await appendUpdates([
        { boardId, room: 'marks', bytes: bytes(1, 2, 0, 255) },
        { boardId, room: 'painting/p', bytes: bytes(9) },
        { boardId, room: 'marks', bytes: large },
      ]);
      await appendUpdates([{ boardId, room: 'marks', bytes: bytes(4) }]);
      const { updates, loose, epoch, throughId } = await readRoom(boardId, 'marks');
      expect(listed(updates)).toEqual([[1, 2, 0, 255], [...large], [4]]);
      expect({ loose, epoch, throughId }).toEqual({
        loose: 3,
        epoch: 1,
        throughId: await lastUpdateId(boardId, 'marks'),
      });
      expect(await paintingRoomsOf(boardId)).toEqual(['painting/p']);
    },
  },
  {
    name: 'a snapshot takes the place of what it holds, and of nothing that came later',
    async run() {
      const boardId = randomUUID();
      const add = (value: number) => appendUpdates([{ boardId, room: 'marks', bytes: bytes(value) }]);
      await add(1);
      await add(2);
      const throughId = await lastUpdateId(boardId, 'marks');
      await add(3);
      const snapshot = Uint8Array.from({ length: 700_000 }, (_, at) => (at * 7) % 256);
      await replaceBySnapshot(boardId, 'marks', throughId, snapshot);
      const { updates, loose } = await readRoom(boardId, 'marks');
      expect(listed(updates)).toEqual([[...snapshot], [3]]);
      expect(loose).toBe(1);
      const newest = (await newestUpdates([boardId])).get(boardId)?.get('marks');
      expect(newest).toBe(await lastUpdateId(boardId, 'marks'));
    },
  },
  {
    name: 'what was erased is gone, and the epoch rises with every erasure',
    async run() {
      const boardId = randomUUID();
      await appendUpdates([{ boardId, room: 'marks', bytes: bytes(1) }]);
      expect(await eraseRoom(boardId, 'marks')).toBe(2);
      await raiseEpoch(boardId, 'marks');
      expect(await readRoom(boardId, 'marks')).toEqual({ updates: [], throughId: 0n, loose: 0, epoch: 3 });
    },
  },
  {
    name: 'who runs a board or teaches on it is found, through the group too, and what a board says stands above',
    async run() {
      const { owner, teacher, one, two, boardId, groupId } = await aClass();
      const host = (await addPerson('Hedda', true)).id;
      const leads = async () => [owner, teacher, one, two, host].filter((id) => leaders.has(id));
      let leaders = await leadersOn(boardId);
      expect(await leads()).toEqual([owner, teacher, host]);
      await putMember(boardId, teacher, 'viewer', null);
      await putMember(boardId, one, 'teacher', null);
      leaders = await leadersOn(boardId);
      expect(await leads()).toEqual([owner, one, host]);
      expect(await ledBy(teacher)).toEqual({ boardIds: [], groupIds: [groupId] });
      expect(await ledBy(one)).toEqual({ boardIds: [boardId], groupIds: [] });
      await moveBoard(boardId, null);
      expect(await standingOn(boardId, one)).toMatchObject({ boardRole: null, groupRole: null });
    },
  },
  {
    name: 'a block stands once and is told both ways without saying whose it is',
    async run() {
      const { one, two } = await aClass();
      await addBlock(one, two, 'Grey Heron');
      await addBlock(one, two, 'Petra');
      expect(await blockedBy(one)).toEqual([{ id: two, name: 'Grey Heron' }]);
      expect([await blockedEitherWay(one), await blockedEitherWay(two)]).toEqual([[two], [one]]);
      await removeBlock(two, one);
      expect(await blockedEitherWay(two)).toEqual([one]);
      await removeBlock(one, two);
      expect(await blockedEitherWay(one)).toEqual([]);
    },
  },
  {
    name: 'of two who close a report at once, one does; closed ones go when their time has come',
    async run() {
      const { one, two, owner, boardId } = await aClass();
      const report = { boardId, reporterId: one, about: 'person' as const, subjectId: two, personId: two };
      const id = await addReport({ ...report, pictureId: null, quoted: '', words: 'Look' });
      const now = new Date();
      const close = () => closeReport(id, { closedById: owner, outcome: 'noted', note: '', now });
      expect((await Promise.all([close(), close()])).sort()).toEqual([false, true]);
      expect(await listReports([boardId], owner)).toHaveLength(1);
      await removeClosedReports(new Date(now.getTime() + 1));
      expect(await listReports([boardId], owner)).toEqual([]);
    },
  },
  {
    name: 'made-up names are given once, to each their own, whoever asks at the same moment',
    async run() {
      const { one, two, teacher } = await aClass();
      const asked = await Promise.all(Array.from({ length: 6 }, () => aliasesOf([one, two, teacher])));
      const first = asked[0];
      for (const each of asked) expect(each).toEqual(first);
      expect(new Set(first?.values()).size).toBe(3);
    },
  },
  {
    name: 'the school setting is kept whole, and closes links that are public',
    async run() {
      const { groupId, boardId } = await aClass();
      expect(await groupRules(groupId)).toEqual(NO_RULES);
      const rules = { ...NO_RULES, noPublicLinks: true, deleteOn: '2031-05-01' };
      await setGroupRules(groupId, rules);
      expect(await groupRules(groupId)).toEqual(rules);
      const expiresAt = new Date(Date.now() + 9 * 86_400_000);
      const invite = (uses: number | null) => ({
        tokenHash: randomUUID(),
        role: 'peer' as const,
        wardId: null,
        uses,
        expiresAt,
      });
      const [many, one] = [invite(null), invite(1)];
      await addInvite({ boardId }, many);
      await addInvite({ groupId }, one);
      const latest = new Date(Date.now() + 86_400_000);
      await closePublicInvites(groupId, latest);
      expect(await findInvite(many.tokenHash, new Date())).toBeNull();
      expect((await findInvite(one.tokenHash, new Date()))?.expiresAt).toEqual(latest);
    },
  },
  {
    name: 'what was done and deleted outlives its board, and goes when its time has come',
    async run() {
      const { owner, groupId, boardId } = await aClass();
      await addAudit({
        actorId: owner,
        did: 'board-deleted',
        boardId,
        groupId: null,
        sentence: 'Odile deleted it.',
      });
      const gone = {
        boardId,
        groupId,
        boardTitle: 'Reeds',
        reason: 'day' as const,
        pictures: 2,
        remarks: 3,
        whole: true,
      };
      await addDeletion(gone);
      await database().board.delete({ where: { id: boardId } });
      expect(await listAudit([boardId])).toHaveLength(1);
      expect(await listDeletions({ boardIds: [], groupIds: [groupId] })).toEqual([
        expect.objectContaining({ boardTitle: 'Reeds', pictures: 2, remarks: 3, whole: true, reason: 'day' }),
      ]);
      await forgetRecords(new Date(Date.now() + 1000));
      expect(await listAudit([boardId])).toEqual([]);
      expect(await listDeletions({ boardIds: [boardId], groupIds: [] })).toEqual([]);
    },
  },
  {
    name: 'a minor without a word of consent is not shown, and who guards them is known through the group',
    async run() {
      const { one, two, teacher, groupId, boardId } = await aClass();
      await database().guardianship.create({ data: newGuardianship({ groupId }, teacher, one, null) });
      for (const painterId of [one, two]) {
        await database().picture.create({
          data: {
            ...{ id: randomUUID(), boardId, kind: 'painting', painterId, widthPx: 4, heightPx: 3 },
            ...{ originalHash: 'a'.repeat(64), originalType: 'image/png' },
          },
        });
      }
      expect((await guardianshipsOn(boardId)).map(({ wardName }) => wardName)).toEqual(['Pelle']);
      expect(await unshownPainters(boardId)).toEqual([one]);
    },
  },
];
