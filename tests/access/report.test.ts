/** Reports: what they keep, who reads them, what is done about them, and that the audit tells it without the words. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { GET as readHouse } from '#app/api/audit/route.ts';
import { GET as readAudit } from '#app/api/boards/[boardId]/audit/route.ts';
import { POST as close } from '#app/api/boards/[boardId]/reports/[reportId]/route.ts';
import { POST as report, GET as seeReports } from '#app/api/boards/[boardId]/reports/route.ts';
import type { RecordView, ReportView } from '#server/core/contract/decency.ts';
import { editMarkText, putMark, readMarks } from '#server/core/live/marks.ts';
import { dailyRound } from '#server/daily.ts';
import { addAudit } from '#server/store/audit.ts';
import { database } from '#server/store/database.ts';
import { addPerson } from '#server/store/people.ts';
import { findPicture } from '#server/store/pictures.ts';
import type { Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aPaintingOn, call, closeStage, openStage, type Stage } from './cast.ts';

const SAID = 'Nobody would hang this';
let stage: Stage;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await aBoard(stage);
});
afterAll(() => closeStage(stage));

async function aRemarkBy(author: Somebody): Promise<string> {
  const pictureId = await aPaintingOn(boardId, stage.people.painter);
  await stage.server.live.writeAsServer(boardId, 'marks', (doc) =>
    putMark(doc, {
      ...{ id: 'theirs', author: author.id, pictureId, kind: 'pin', points: [[0.5, 0.5]], text: SAID },
      ...{ planeId: null, parent: null, at: 1 },
    }),
  );
  return 'theirs';
}

async function reports(who: Somebody, about: string, id: string, words = 'This hurts'): Promise<string> {
  const answer = await call(report, who, { boardId }, { method: 'POST', body: { about, id, words } });
  expect(answer.status).toBe(200);
  return ((await answer.json()) as { id: string }).id;
}

async function seenBy(who: Somebody): Promise<ReportView[]> {
  return (await (await call(seeReports, who, { boardId })).json()) as ReportView[];
}

const closes = (who: Somebody, reportId: string, act: string, note = '') =>
  call(close, who, { boardId, reportId }, { method: 'POST', body: { act, note } });

const marksThere = () =>
  stage.server.live.read(boardId, 'marks', (doc) => readMarks(doc).map(({ id }) => id));

describe('a reported remark', () => {
  test('is kept as it was, whatever its author makes of it afterwards', async () => {
    const { painter, peer, teacher } = stage.people;
    const id = await reports(painter, 'remark', await aRemarkBy(peer));
    await stage.server.live.writeAsServer(boardId, 'marks', (doc) => editMarkText(doc, 'theirs', 'Lovely'));
    const [seen] = await seenBy(teacher);
    expect(seen).toMatchObject({ id, about: 'remark', quoted: SAID, words: 'This hurts', closedAt: null });
    expect(seen?.person).toEqual({ id: peer.id, name: peer.name });
    expect(seen?.reporter).toEqual({ id: painter.id, name: painter.name });
  });

  test('is not told to its author, and is read by nobody but who can act and who reported', async () => {
    const { painter, peer, teacher, owner, host, viewer, fellow } = stage.people;
    await reports(painter, 'remark', await aRemarkBy(peer));
    for (const who of [peer, viewer, fellow]) expect(await seenBy(who)).toEqual([]);
    for (const who of [owner, host, teacher]) expect(await seenBy(who)).toHaveLength(1);
    expect(await seenBy(painter)).toEqual([expect.objectContaining({ quoted: '', note: '', acts: [] })]);
  });

  test('is removed for everybody, its words leave the store, and the reporter sees that it was done', async () => {
    const { painter, peer, teacher } = stage.people;
    const id = await reports(painter, 'remark', await aRemarkBy(peer));
    expect((await seenBy(painter))[0]?.seenAt).toBeNull();
    await seenBy(teacher);
    expect((await seenBy(painter))[0]?.seenAt).not.toBeNull();
    expect((await closes(teacher, id, 'remove-remark', 'Talked to Petra')).status).toBe(204);
    expect(await marksThere()).toEqual([]);
    const rows = await database().liveUpdate.findMany({ where: { boardId } });
    const parts = await database().liveSnapshot.findMany({ where: { boardId } });
    for (const { bytes } of [...rows, ...parts]) expect(Buffer.from(bytes).includes(SAID)).toBe(false);
    expect((await seenBy(painter))[0]).toMatchObject({ outcome: 'remark-removed', note: '' });
    expect((await closes(teacher, id, 'note')).status).toBe(404);
  });
});

test('a teacher who is reported neither reads it nor closes it; host and owner do', async () => {
  const { painter, teacher, owner, host } = stage.people;
  const id = await reports(painter, 'person', teacher.id);
  expect(await seenBy(teacher)).toEqual([]);
  expect((await closes(teacher, id, 'note')).status).toBe(404);
  for (const who of [owner, host]) expect(await seenBy(who)).toHaveLength(1);
  expect((await closes(owner, id, 'note', 'Spoke with both')).status).toBe(204);
});

test('the owner ends somebody’s access by a report, a teacher may not', async () => {
  const { painter, peer, teacher, owner } = stage.people;
  const id = await reports(painter, 'person', peer.id);
  expect((await seenBy(teacher))[0]?.acts).toEqual(['note']);
  expect((await closes(teacher, id, 'end-access')).status).toBe(403);
  expect((await closes(owner, id, 'end-access')).status).toBe(204);
  expect((await call(seeReports, peer, { boardId })).status).toBe(404);
});

test('a reported picture is taken back', async () => {
  const { painter, fellow, teacher } = stage.people;
  const pictureId = await aPaintingOn(boardId, fellow);
  const id = await reports(painter, 'picture', pictureId);
  expect((await closes(teacher, id, 'withdraw-picture')).status).toBe(204);
  expect(await findPicture(boardId, pictureId)).toBeNull();
});

test('what is not there cannot be reported, nor without words', async () => {
  const { painter, stranger } = stage.people;
  const tries: [string, string, string, number][] = [
    ['remark', 'nothing', 'x', 404],
    ['picture', 'nothing', 'x', 404],
    ['person', stranger.id, 'x', 404],
    ['person', painter.id, '   ', 400],
    ['place', 'anything', 'x', 400],
  ];
  const statuses: number[] = [];
  for (const [about, id, words] of tries) {
    const body = { about, id, words };
    statuses.push((await call(report, stage.people.viewer, { boardId }, { method: 'POST', body })).status);
  }
  expect(statuses).toEqual(tries.map(([, , , status]) => status));
});

test('nobody floods those who read reports: after a dozen in ten minutes the rest is refused', async () => {
  const flooder = stage.people.guardian;
  const statuses: number[] = [];
  for (let count = 0; count < 13; count++) {
    const body = { about: 'person', id: stage.people.fellow.id, words: 'again' };
    statuses.push((await call(report, flooder, { boardId }, { method: 'POST', body })).status);
  }
  expect(statuses.filter((status) => status === 200)).toHaveLength(12);
  expect(statuses.at(-1)).toBe(429);
});

describe('the audit', () => {
  test('says who did what in one sentence, and never what a remark said', async () => {
    const { owner, peer, teacher, host } = stage.people;
    const id = await reports(owner, 'remark', await aRemarkBy(peer));
    await closes(teacher, id, 'remove-remark', 'A note');
    const { audit } = (await (await call(readAudit, owner, { boardId })).json()) as RecordView;
    expect(audit.map(({ sentence }) => sentence).sort()).toEqual([
      'teacher closed a report about peer in “Reeds at the weir”.',
      'teacher removed a remark of peer from “Reeds at the weir”.',
    ]);
    const house = await (await call(readHouse, host, {})).text();
    expect(house).toContain('removed a remark of peer');
    expect(house).not.toContain(SAID);
  });

  test('goes after a year, closed reports after ninety days with what they quote', async () => {
    const { painter, peer, teacher } = stage.people;
    const { id: actorId } = await addPerson('Old', false);
    await addAudit({ actorId, did: 'role-changed', boardId, groupId: null, sentence: 'Long ago.' });
    await database().auditEntry.updateMany({
      where: { sentence: 'Long ago.' },
      data: { at: new Date('2020-01-01') },
    });
    const closed = await reports(painter, 'remark', await aRemarkBy(peer));
    await closes(teacher, closed, 'note');
    const openStill = await reports(painter, 'person', peer.id);
    await dailyRound(new Date(Date.now() + 91 * 24 * 3_600_000));
    const left = await database().report.findMany({ where: { boardId }, select: { id: true } });
    expect(left).toEqual([{ id: openStill }]);
    expect(await database().auditEntry.count({ where: { sentence: 'Long ago.' } })).toBe(0);
    expect(await database().auditEntry.count({ where: { boardId } })).toBeGreaterThan(0);
  });
});
