/** A board taken away and taken in: the same board, byte-same pictures, the same figures; what may not leave stays. */
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { startSession } from '#server/access/session.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { readMarks } from '#server/core/live/marks.ts';
import { environment } from '#server/env.ts';
import { takeInBoard } from '#server/outward/take-in-board.ts';
import { readBoardView } from '#server/store/board-view.ts';
import { database } from '#server/store/database.ts';
import { readDocument } from '#server/store/live-documents.ts';
import { SECRET } from '#tests/imaging/pictures.ts';
import { letGo, SECRETS, takeAway, unzipped, zipped } from './an-archived-board.ts';
import { archiveStage, statesOn } from './archive-stage.ts';
import { everyFile } from './backup-cases.ts';

const stage = archiveStage();

/** The same process, with nothing of what was there before. */
async function moveToAnEmptyServer(): Promise<string> {
  await stage.close();
  await stage.openEmpty();
  const id = randomUUID();
  await database().person.create({ data: { id, name: 'Hedda', isHost: true } });
  return id;
}

async function figures(boardId: string, pictureId: string): Promise<MeasureDocument> {
  let found = await stage.runner.measuresOf(boardId, pictureId);
  for (let tries = 0; 'pending' in found && tries < 600; tries++) {
    await new Promise((resolve) => setTimeout(resolve, 50));
    found = await stage.runner.measuresOf(boardId, pictureId);
  }
  if ('pending' in found) throw new Error(found.pending);
  return found;
}

const viewOf = async (boardId: string) => {
  const view = await readBoardView(boardId, { id: 'nobody', name: '' }, 'host');
  return (
    view && { ...view, owner: null, members: view.members.map(({ id, name }) => `${id} ${name}`).sort() }
  );
};

test('on an empty server it is the same board, with the same bytes and the same figures', async () => {
  const { board, otherId, mineId, theirsId } = stage.made;
  await letGo(board.boardId, otherId);
  const [view, measured] = [await viewOf(board.boardId), await figures(board.boardId, mineId)];
  const untouched = await database().picture.findUniqueOrThrow({ where: { id: mineId } });
  const files = await everyFile(environment().dataFolder);
  const path = await takeAway(stage.made, stage.folder);
  const ownerId = await moveToAnEmptyServer();

  const taken = await takeInBoard(path, ownerId);
  expect(taken).toEqual({ id: board.boardId, title: 'The valley in October', pictures: 3, leftOut: [] });
  const now = await viewOf(taken.id);
  expect(now?.members).toEqual([...(view?.members ?? []), `${ownerId} Hedda`].sort());
  expect({ ...now, members: [] }).toEqual({ ...view, members: [] });
  const came = await everyFile(environment().dataFolder);
  expect(untouched.untouchedHash).not.toBeNull();
  // All stored files but the one untouched camera file.
  const expected = [...files].filter(([, sha256]) => sha256 !== untouched.untouchedHash);
  expect([...came].sort()).toEqual(expected.sort());
  const states = await statesOn(taken.id);
  expect(Object.keys(states).sort()).toEqual(
    ['class', 'marks', `painting/${mineId}`, `painting/${theirsId}`, 'setup', `silent/${otherId}`].sort(),
  );
  expect(
    readMarks(await readDocument(taken.id, 'marks')).map(({ id, author, text }) => [id, author, text]),
  ).toEqual([
    ['m-1', otherId, 'The reeds are too dark'],
    ['m-2', otherId, 'They are not'],
    ['m-3', otherId, 'A word on the other one'],
  ]);
  expect(await figures(taken.id, mineId)).toEqual(measured);
  expect(await database().ask.findMany()).toMatchObject([{ words: 'Too loud?', pictureId: mineId }]);
  // Names without a way to sign in.
  expect(await database().person.findUnique({ where: { id: otherId } })).toMatchObject({
    ...{ name: 'Pelle', isHost: false, email: null, passwordHash: null },
  });
});

test('a painting stays behind until its painter said both that it may be kept and be shown, with all that was said on it', async () => {
  const { otherId, theirsId, mineId, board } = stage.made;
  const path = await takeAway(stage.made, stage.folder);
  const files = await unzipped(path);
  const manifest = JSON.parse(String(files.get('manifest.json')));
  expect(manifest.leftOut).toEqual([expect.stringMatching(/“Second” by Pelle: its painter has not said/)]);
  const parts = [...files].filter(([name]) => name !== 'manifest.json');
  for (const [name, bytes] of parts) expect(`${name} ${bytes.toString('latin1')}`).not.toContain(theirsId);
  expect(String(files.get('rooms/marks.json'))).not.toContain('A word on the other one');
  const taken = await takeInBoard(path, board.painterId);
  expect(taken).toMatchObject({ pictures: 2, leftOut: manifest.leftOut });
  await letGo(board.boardId, otherId);
  const whole = await unzipped(await takeAway(stage.made, stage.folder));
  expect(JSON.parse(String(whole.get('manifest.json'))).leftOut).toEqual([]);
  expect([...whole.keys()].some((name) => name.includes(theirsId) && name.includes(mineId))).toBe(false);
});

test('camera data, sessions, addresses, passwords, phrases, deleted words and impressions kept back are in no archive', async () => {
  const { otherId, board } = stage.made;
  await letGo(board.boardId, otherId);
  const session = (await startSession(otherId, false)).match(/veilstep=([^;]+)/)?.[1] ?? '';
  const path = await takeAway(stage.made, stage.folder);
  const all = Buffer.concat([...(await unzipped(path)).values()]).toString('latin1');
  for (const secret of [...Object.values(SECRETS), SECRET, session]) expect(all).not.toContain(secret);
  expect(all).toContain('The light on the left');
});

test('taken into the server it came from, it is a second board of the same people, and the first stays as it was', async () => {
  const { board, otherId, mineId } = stage.made;
  await letGo(board.boardId, otherId);
  const [view, states] = [await viewOf(board.boardId), await statesOn(board.boardId)];
  const taken = await takeInBoard(await takeAway(stage.made, stage.folder), board.painterId);
  expect(taken.id).not.toBe(board.boardId);
  expect([await viewOf(board.boardId), await statesOn(board.boardId)]).toEqual([view, states]);
  const copy = await readBoardView(taken.id, { id: board.painterId, name: '' }, 'owner');
  expect(copy?.owner.id).toBe(board.painterId);
  expect(copy?.pictures.map(({ painter }) => painter.name)).toEqual(['Ottoline', 'Ottoline', 'Pelle']);
  expect(copy?.pictures.map(({ painter }) => painter.id).at(2)).toBe(otherId);
  const marks = readMarks(await readDocument(taken.id, 'marks'));
  expect(marks.map(({ author }) => author)).toEqual([otherId, otherId, otherId]);
  expect(marks.map(({ pictureId }) => pictureId)).not.toContain(mineId);
  expect(new Set(marks.map(({ pictureId }) => pictureId))).toEqual(
    new Set(copy?.pictures.filter(({ kind }) => kind === 'painting').map(({ id }) => id)),
  );
  const second = copy?.pictures.find(({ caption }) => caption?.startsWith('First'))?.id ?? '';
  expect(await figures(taken.id, second)).toEqual(await figures(board.boardId, mineId));
});

test('an archive that says to be from here, and is not, puts no words into anybody’s mouth', async () => {
  const { board, otherId } = stage.made;
  await letGo(board.boardId, otherId);
  const files = await unzipped(await takeAway(stage.made, stage.folder));
  const marks = String(files.get('rooms/marks.json')).replace('The reeds are too dark', 'I give up painting');
  const forged = await zipped(
    join(stage.folder, 'forged.zip'),
    files.set('rooms/marks.json', Buffer.from(marks)),
  );
  const taken = await takeInBoard(forged, board.painterId);
  const [mark] = readMarks(await readDocument(taken.id, 'marks'));
  expect(mark?.text).toBe('I give up painting');
  expect(mark?.author).not.toBe(otherId);
  expect(await database().person.findUnique({ where: { id: mark?.author ?? '' } })).toMatchObject({
    name: 'Pelle',
  });
});
