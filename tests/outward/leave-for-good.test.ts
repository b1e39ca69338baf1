/**
 * Somebody takes their data away and deletes themselves, with the real rooms and workers: afterwards no byte of the data
 * folder, no row and no live history holds a word or picture of theirs, and what others said stands.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { GET as takeData } from '#app/api/account/data/route.ts';
import { GET as askLeaving } from '#app/api/account/leaving/route.ts';
import { DELETE as deleteMe } from '#app/api/account/route.ts';
import { readSession } from '#server/access/session.ts';
import { writeNote } from '#server/core/class/notes.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { writeIntention } from '#server/core/live/painting.ts';
import { environment } from '#server/env.ts';
import { offerServices, type Services } from '#server/http/services.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { database } from '#server/store/database.ts';
import { readDocument } from '#server/store/live-documents.ts';
import { readRoom, roomsOf } from '#server/store/live-updates.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { burdenedJpeg, SECRET } from '#tests/imaging/pictures.ts';
import { type LiveServer, type Somebody, somebody, startLive } from '#tests/live/a-live-server.ts';
import { type ABoard, aBoard } from '#tests/pipeline/a-board.ts';
import { unzipped } from './an-archived-board.ts';
import { everyFile, everyRow } from './backup-cases.ts';

/** In everything that Pelle writes. */
const TOKEN = 'zebrafinch-4711';
let store: AStore;
let server: LiveServer;
let runner: Runner;
let board: ABoard;
let pelle: Somebody;
let odile: Somebody;
let theirs: string;
let odiles: string;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-leave-'));
  store = await openAStore();
  server = await startLive();
  runner = await createRunner({ onResult: () => undefined });
  const some: Partial<Services> = {
    personForgotten: (boardId, personId) => server.live.forgetPerson(boardId, personId),
    sessionsEnded: (ids) => server.live.closeSessions(ids),
    boardChanged: () => undefined,
    async pictureRemoved(boardId, pictureId) {
      const marks = await server.live.closePicture(boardId, pictureId);
      await runner.pictureRemoved(boardId, pictureId);
      return marks;
    },
  };
  // What is left out has nothing to do with leaving.
  offerServices(some as Services);
  board = await aBoard();
  [pelle, odile] = [await somebody('Pelle'), await somebody('Odile')];
  for (const { id: personId } of [pelle, odile]) {
    await database().member.create({ data: { boardId: board.boardId, personId, role: 'painter' } });
  }
  theirs = await post(pelle, `${TOKEN} caption`);
  odiles = await post(odile, 'Evening');
}, 300_000);
afterAll(async () => {
  await server.stop();
  await runner.stop();
  await store.close();
  for (const each of [folder, environment().dataFolder]) await rm(each, { recursive: true, force: true });
});

async function post({ id: painterId }: Somebody, caption: string): Promise<string> {
  const bytes = new Uint8Array([...(await burdenedJpeg()), ...Buffer.from(painterId)]);
  const incoming = await board.upload(bytes, { kind: 'painting', caption, keepUntouched: 'yes' });
  return (await runner.takeInPicture({ ...incoming, painterId })).id;
}

const write = (room: RoomName, change: Parameters<ABoard['write']>[1]) =>
  server.live.writeAsServer(board.boardId, room, change);

const mark = (id: string, author: string, text: string, parent: string | null = null): Mark => ({
  ...{ id, author, text, parent, pictureId: odiles, planeId: null, at: 5 },
  ...{
    kind: parent ? ('reply' as const) : ('pin' as const),
    points: parent ? [] : [[0.5, 0.5] as [number, number]],
  },
});

const call = (handler: typeof deleteMe, who: { cookie: string }, body?: unknown) =>
  handler(
    new Request('http://localhost:4300/api/account', {
      method: body === undefined ? 'GET' : 'DELETE',
      headers: { cookie: who.cookie },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    }),
    { params: Promise.resolve({}) },
  );

function filesWith(token: string): string[] {
  try {
    return execFileSync('grep', ['-rlaF', token, store.dataFolder], { encoding: 'utf8' }).trim().split('\n');
  } catch {
    return [];
  }
}

/** Everything that Pelle can leave behind, some of it deleted again. */
async function writeEverywhere(): Promise<void> {
  await write('marks', (doc) => {
    putMark(doc, mark('p-1', pelle.id, `${TOKEN} in a remark`));
    putMark(doc, mark('p-2', pelle.id, `${TOKEN} soon deleted`));
    putMark(doc, mark('o-1', odile.id, 'Odile answers', 'p-1'));
    putMark(doc, { ...mark('o-2', odile.id, 'Odile on Pelle’s'), pictureId: theirs });
    doc.getMap('nods').set(`o-1/${pelle.id}`, true);
  });
  await write('marks', (doc) => doc.getMap('marks').delete('p-2'));
  await write(`painting/${theirs}`, (doc) => writeIntention(doc, `${TOKEN} intention`));
  await write(`silent/${pelle.id}`, (doc) => writeNote(doc, odiles, `${TOKEN} impression`));
  // A name that was typed and written over stays in a log until it is compacted.
  for (const name of [`${TOKEN} ridge`, 'Far ridge']) {
    await write('setup', (doc) => doc.getMap('unreliable').set('plane-1', name));
  }
  const store_ = database();
  await store_.person.update({
    where: { id: pelle.id },
    data: { email: `${TOKEN}@example.org`, alias: `${TOKEN} heron` },
  });
  await store_.phrase.create({
    data: { id: 'phrase', personId: pelle.id, words: `${TOKEN} phrase`, place: 1 },
  });
  const ask = {
    id: 'ask',
    boardId: board.boardId,
    pictureId: theirs,
    askedById: pelle.id,
    words: `${TOKEN} asking`,
  };
  await store_.ask.create({ data: ask });
  const report = { boardId: board.boardId, about: 'remark', subjectId: 'p-1', pictureId: null };
  await store_.report.create({
    data: {
      ...report,
      id: 'of',
      reporterId: odile.id,
      personId: pelle.id,
      quoted: `${TOKEN} quoted`,
      words: 'Look',
    },
  });
  await store_.report.create({
    data: { ...report, id: 'by', reporterId: pelle.id, personId: odile.id, words: `${TOKEN} reporting` },
  });
  const homework = { boardId: board.boardId, pictureId: odiles, painterId: odile.id, setById: pelle.id };
  await store_.homework.create({
    data: { ...homework, id: 'h', words: `${TOKEN} homework`, dueOn: '2027-01-01', answerAs: 'state' },
  });
}

test('what is theirs is taken away whole, and after they deleted themselves nothing of it is left anywhere', async () => {
  await writeEverywhere();
  await database().$executeRaw`CHECKPOINT`;
  expect(filesWith(TOKEN).length).toBeGreaterThan(1);
  expect(filesWith(pelle.id).some((file) => file.includes('/blobs/'))).toBe(true);

  const data = await call(takeData, pelle);
  expect(data.headers.get('content-disposition')).toContain('Pelle.zip');
  const path = join(folder, 'pelle.zip');
  await writeFile(path, new Uint8Array(await data.arrayBuffer()));
  const taken = await unzipped(path);
  const names = ['me', 'phrases', 'asked-for', 'marks', 'pictures', 'first-impressions', 'boards-and-people'];
  for (const name of names)
    expect([name, String(taken.get(`${name}.json`))]).toEqual([name, expect.stringContaining(TOKEN)]);
  const everything = Buffer.concat([...taken].map(([, bytes]) => bytes)).toString('latin1');
  for (const other of ['Odile answers', 'scrypt', 'tokenHash', 'soon deleted', 'quoted'])
    expect(everything).not.toContain(other);
  // The camera file that they asked to keep is theirs, byte by byte; the stored picture carries nothing of it.
  expect(taken.get(`camera-files/${theirs}`)?.toString('latin1')).toContain(SECRET);
  expect(taken.get(`pictures/${theirs}.jpg`)?.toString('latin1')).not.toContain(SECRET);

  expect(await (await call(askLeaving, pelle)).json()).toEqual({
    name: 'Pelle',
    boards: [],
    groups: [],
    pictures: 1,
    remarks: 1,
  });
  const wrong = await call(deleteMe, pelle, { name: 'Pella' });
  expect(wrong.status).toBe(400);
  expect(await readSession(pelle.cookie)).not.toBeNull();
  const epoch = (await readRoom(board.boardId, 'marks')).epoch;
  const gone = await call(deleteMe, pelle, { name: 'Pelle' });
  expect(gone.status).toBe(204);
  expect(gone.headers.get('set-cookie')).toMatch(/veilstep=;/);
  expect(await readSession(pelle.cookie)).toBeNull();

  expect(filesWith(TOKEN)).toEqual([]);
  for (const [table, rows] of await everyRow())
    expect([table, rows.filter((row) => row.includes(TOKEN))]).toEqual([table, []]);
  for (const room of await roomsOf(board.boardId)) {
    const { updates } = await readRoom(board.boardId, room);
    expect([room, Buffer.concat(updates).includes(TOKEN)]).toEqual([room, false]);
  }
  expect((await readRoom(board.boardId, 'marks')).epoch).toBeGreaterThan(epoch);
  expect(await roomsOf(board.boardId)).not.toContain(`silent/${pelle.id}`);
  // Of their picture no file is left: all that are there are named by Odile's.
  const odilesFiles = await database().picture.findMany({ include: { renditions: true } });
  const named = new Set(
    odilesFiles.flatMap((each) => [
      each.originalHash,
      each.untouchedHash,
      ...each.renditions.map(({ hash }) => hash),
    ]),
  );
  const files = [...(await everyFile(environment().dataFolder)).values()];
  expect(files.filter((sha256) => !named.has(sha256))).toEqual([]);
  const camera = createHash('sha256')
    .update(Buffer.concat([await burdenedJpeg(), Buffer.from(pelle.id)]))
    .digest('hex');
  expect(files).not.toContain(camera);
}, 300_000);

test('what others said stands alone, and a report of them keeps what its maker wrote', async () => {
  const marks = readMarks(await readDocument(board.boardId, 'marks'));
  expect(marks.map(({ id, text }) => [id, text])).toEqual([['o-1', 'Odile answers']]);
  expect(await database().report.findMany()).toMatchObject([{ id: 'of', words: 'Look', quoted: '' }]);
  expect(await database().person.findMany({ where: { name: 'Pelle' } })).toEqual([]);
});

test('who owns a board is told to hand it on or delete it first, and nothing is deleted', async () => {
  const owner = await somebody('Ottoline');
  await database().board.update({ where: { id: board.boardId }, data: { ownerId: owner.id } });
  const answer = await call(deleteMe, owner, { name: 'Ottoline' });
  expect(answer.status).toBe(409);
  expect(await answer.json()).toMatchObject({
    error: { code: 'account-held', message: expect.stringContaining('the board “The valley in October”') },
  });
  expect(await database().person.count({ where: { id: owner.id } })).toBe(1);
});
