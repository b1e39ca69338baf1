/** A board with everything on it, its archive, and archives made to lie. */
import { createHash, randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { openPromise } from 'yauzl';
import { writeNote } from '#server/core/class/notes.ts';
import { HAD } from '#server/core/class/shapes.ts';
import { putMark } from '#server/core/live/marks.ts';
import { setNod } from '#server/core/live/nods.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { writeIntention } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { environment } from '#server/env.ts';
import { boardArchive } from '#server/outward/board-archive.ts';
import type { Runner } from '#server/pipeline/runner.ts';
import { sayConsent } from '#server/store/consents.ts';
import { database } from '#server/store/database.ts';
import { burdenedJpeg, card } from '#tests/imaging/pictures.ts';
import { type ABoard, aBoard } from '#tests/pipeline/a-board.ts';
import { rawZip } from './raw-zip.ts';

export interface Archived {
  board: ABoard;
  /** Another painter on the board, who may be taken away only when they said so. */
  otherId: string;
  referenceId: string;
  mineId: string;
  theirsId: string;
}

/** Words that somebody wrote and nobody may find in an archive. */
export const SECRETS = {
  note: 'saw-the-gable-first-41',
  deleted: 'deleted-words-77310',
  email: 'pelle-1187@example.org',
  phrase: 'phrase-of-ones-own-5512',
  hash: 'scrypt$1$1$1$secret$secret',
} as const;

export async function fullBoard(runner: Runner): Promise<Archived> {
  const board = await aBoard();
  const otherId = randomUUID();
  const data = { id: otherId, name: 'Pelle', email: SECRETS.email, passwordHash: SECRETS.hash };
  await database().person.create({ data });
  await database().phrase.create({
    data: { id: randomUUID(), personId: otherId, words: SECRETS.phrase, place: 1 },
  });
  await database().member.create({ data: { boardId: board.boardId, personId: otherId, role: 'painter' } });
  const jpeg = async (quality: number) => new Uint8Array(await card().jpeg({ quality }).toBuffer());
  const reference = await board.upload(await jpeg(91), {
    kind: 'reference',
    rights: 'mine',
    keepUntouched: 'no',
  });
  const { id: referenceId } = await runner.takeInPicture(reference);
  const mine = await board.upload(new Uint8Array(await burdenedJpeg()), {
    kind: 'painting',
    keepUntouched: 'yes',
    caption: 'First, “wet”',
  });
  const { id: mineId } = await runner.takeInPicture(mine);
  const theirs = await board.upload(await jpeg(93), {
    kind: 'painting',
    keepUntouched: 'no',
    caption: 'Second',
  });
  const { id: theirsId } = await runner.takeInPicture({ ...theirs, painterId: otherId });
  await database().ask.create({
    data: {
      id: randomUUID(),
      boardId: board.boardId,
      pictureId: mineId,
      askedById: board.painterId,
      words: 'Too loud?',
    },
  });
  await writeRooms(board, { otherId, referenceId, mineId, theirsId });
  return { board, otherId, referenceId, mineId, theirsId };
}

async function writeRooms(board: ABoard, ids: Omit<Archived, 'board'>): Promise<void> {
  const { otherId, referenceId, mineId, theirsId } = ids;
  await board.write('setup', (doc) => {
    const half = (top: number): [number, number][] => [
      [0, top],
      [1, top],
      [1, top + 0.5],
      [0, top + 0.5],
    ];
    for (const [at, name] of ['Far ridge', 'Meadow'].entries()) {
      addPlane(doc, { id: `plane-${at}`, name, kind: 'land', tilt: null });
      putReferenceOutline(doc, referenceId, `plane-${at}`, half(at / 2));
    }
  });
  const mark = (id: string, pictureId: string, text: string, parent: string | null = null) => ({
    ...{ id, pictureId, text, parent, planeId: null, at: 1_760_000_000_000 },
    ...{ author: otherId, kind: parent ? ('reply' as const) : ('pin' as const) },
    points: parent ? [] : [[0.25, 0.75] as [number, number]],
  });
  await board.write('marks', (doc) => {
    putMark(doc, mark('m-1', mineId, 'The reeds are too dark'));
    putMark(doc, mark('m-2', mineId, 'They are not', 'm-1'));
    putMark(doc, mark('m-3', theirsId, 'A word on the other one'));
    setNod(doc, 'm-1', board.painterId, true);
    putMark(doc, mark('m-4', mineId, SECRETS.deleted));
  });
  await board.write('marks', (doc) => doc.getMap('marks').delete('m-4'));
  await board.write(`painting/${mineId}`, (doc) => writeIntention(doc, 'Quiet water'));
  await board.write(`painting/${theirsId}`, (doc) => writeIntention(doc, 'Wind'));
  await board.write('class', (doc) => {
    doc.getMap('class').set('order', [mineId, theirsId]);
    doc.getMap('class').set(`${HAD}${mineId}`, true);
    doc.getMap('kept').set(`shown-${mineId}`, 1);
  });
  await board.write(`silent/${otherId}`, (doc) => {
    writeNote(doc, mineId, 'The light on the left');
    writeNote(doc, theirsId, SECRETS.note);
  });
}

/** Both uses that let a painting leave its board. */
export async function letGo(boardId: string, personId: string): Promise<void> {
  for (const use of ['keep', 'others'] as const) {
    await sayConsent({ boardId, personId, use, given: true, saidById: personId });
  }
}

/** Takes the board away as its owner does. */
export async function takeAway({ board }: Archived, folder: string): Promise<string> {
  const path = join(folder, `${randomUUID()}.veilstep.zip`);
  const archive = await boardArchive(board.boardId, board.painterId);
  if (!archive) throw new Error('The board is gone.');
  await pipeline(archive, createWriteStream(path));
  return path;
}

/** What lies in an archive, read by the library alone. */
export async function unzipped(path: string): Promise<Map<string, Buffer>> {
  const files = new Map<string, Buffer>();
  const zip = await openPromise(path, { autoClose: false, lazyEntries: true });
  for await (const entry of zip.eachEntry()) {
    const chunks: Buffer[] = [];
    for await (const chunk of await zip.openReadStreamPromise(entry)) chunks.push(chunk as Buffer);
    files.set(entry.fileName, Buffer.concat(chunks));
  }
  zip.close();
  return files;
}

/** Writes the files as an archive again; the manifest names them as they are now unless it is among what is `lied` about. */
export async function zipped(
  path: string,
  files: ReadonlyMap<string, Buffer>,
  lied = false,
): Promise<string> {
  const manifest = JSON.parse(files.get('manifest.json')?.toString() ?? '{}') as { files?: unknown };
  if (!lied) {
    manifest.files = [...files].flatMap(([name, bytes]) => {
      const sha256 = createHash('sha256').update(bytes).digest('hex');
      return name === 'manifest.json' ? [] : [{ path: name, sha256, sizeBytes: bytes.length }];
    });
  }
  const all = lied ? files : new Map(files).set('manifest.json', Buffer.from(JSON.stringify(manifest)));
  await writeFile(path, rawZip([...all].map(([name, bytes]) => ({ name, bytes }))));
  return path;
}

/** What one can count of a server: rows of each kind, stored files, files on their way in. */
export async function everythingCounted(): Promise<Record<string, number>> {
  const store = database();
  const files = async (name: string) =>
    (await readdir(join(environment().dataFolder, name), { recursive: true }).catch(() => [])).length;
  return {
    people: await store.person.count(),
    boards: await store.board.count(),
    pictures: await store.picture.count(),
    renditions: await store.rendition.count(),
    members: await store.member.count(),
    rooms: await store.liveSnapshot.count(),
    blobs: await files('blobs'),
    incoming: await files('incoming'),
  };
}
