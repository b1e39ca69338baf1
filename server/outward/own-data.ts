/**
 * Everything that is somebody's own, as one archive: rows, pictures, marks, phrases, consents, in JSON that people can
 * read. Untouched camera files that they asked to keep are theirs and come with it; nobody else gets them.
 *
 * In the flow: account handler -> [own-data] -> packing. IO: the database, the data folder.
 */
import type { Readable } from 'node:stream';
import { finished } from 'node:stream/promises';
import type { RoomName } from '../core/live/layout.ts';
import { readMarks } from '../core/live/marks.ts';
import { nodParts } from '../core/live/nods.ts';
import { ARCHIVE_VERSION } from '../core/outward/manifest.ts';
import { stateOf } from '../core/outward/room-state.ts';
import { removeUnshared } from '../store/blob-sweep.ts';
import { blobPath, holdBlobs, releaseBlobs } from '../store/blobs.ts';
import { allBoardIds, boardName } from '../store/boards.ts';
import { readDocument } from '../store/live-documents.ts';
import { ownPictures, ownRows } from '../store/own-rows.ts';
import { Packing } from './packing.ts';
import { PRODUCT_VERSION } from './product-version.ts';

type OwnPicture = Awaited<ReturnType<typeof ownPictures>>[number];

/** What a painter writes in their painting's room; the rest of it is others'. */
const PAINTERS_ROOTS = ['outlines', 'photo', 'focus', 'meant', 'answers', 'allows', 'said', 'frame'];

/** The archive as a stream; null when there is nobody with that id. Its files stay until it is read to its end. */
export async function ownData(personId: string, now = new Date()): Promise<Readable | null> {
  const rows = await ownRows(personId);
  if (!rows) return null;
  const pictures = await ownPictures(personId);
  const hashes = pictures.flatMap(({ originalHash, untouchedHash }) => [
    originalHash,
    ...(untouchedHash ? [untouchedHash] : []),
  ]);
  await holdBlobs(hashes);
  const letGo = async () => {
    releaseBlobs(hashes);
    await removeUnshared(hashes);
  };
  try {
    const packing = new Packing();
    const { person, phrases, consents, asks, ...others } = rows;
    packing.addJson('me.json', person);
    packing.addJson('phrases.json', phrases);
    packing.addJson('consents.json', consents);
    packing.addJson('asked-for.json', asks);
    packing.addJson('boards-and-people.json', others);
    await addWords(packing, personId);
    await addPictures(packing, pictures);
    const out = packing.finish({
      format: 'veilstep person',
      formatVersion: ARCHIVE_VERSION,
      madeBy: PRODUCT_VERSION,
      at: now.toISOString(),
      name: person.name,
    });
    finished(out)
      .catch(() => undefined)
      .then(letGo)
      .catch(() => undefined);
    return out;
  } catch (thrown) {
    await letGo();
    throw thrown;
  }
}

async function addPictures(packing: Packing, pictures: readonly OwnPicture[]): Promise<void> {
  const listed: unknown[] = [];
  for (const { originalHash, untouchedHash, originalType, ...row } of pictures) {
    const file = `pictures/${row.id}.${originalType.replace('image/', '').replace('jpeg', 'jpg')}`;
    const cameraFile = untouchedHash === null ? null : `camera-files/${row.id}`;
    await packing.addFile(file, blobPath(originalHash), { sha256: originalHash });
    if (cameraFile !== null && untouchedHash !== null)
      await packing.addFile(cameraFile, blobPath(untouchedHash), { sha256: untouchedHash });
    listed.push({
      ...row,
      file,
      cameraFile,
      room: row.kind === 'painting' ? await ownRoom(row.boardId, row.id) : null,
    });
  }
  packing.addJson('pictures.json', listed);
}

async function ownRoom(boardId: string, pictureId: string): Promise<unknown> {
  const room: RoomName = `painting/${pictureId}`;
  const { text, roots } = stateOf(await readDocument(boardId, room), room);
  const own = Object.fromEntries(Object.entries(roots).filter(([root]) => PAINTERS_ROOTS.includes(root)));
  return { intention: text ?? '', ...own };
}

/** Marks, nods and first impressions, board by board; also on boards that they have left. */
async function addWords(packing: Packing, personId: string): Promise<void> {
  const marks: unknown[] = [];
  const nods: unknown[] = [];
  const impressions: unknown[] = [];
  for (const boardId of await allBoardIds()) {
    const doc = await readDocument(boardId, 'marks');
    const own = readMarks(doc).filter(({ author }) => author === personId);
    const nodded = [...doc.getMap('nods').keys()].map(nodParts).filter((nod) => nod.personId === personId);
    const notes = stateOf(await readDocument(boardId, `silent/${personId}`), `silent/${personId}`).roots
      .notes;
    const board = own.length + nodded.length > 0 || notes ? ((await boardName(boardId)) ?? '') : '';
    marks.push(...own.map(({ author: _, ...mark }) => ({ board, boardId, ...mark, at: moment(mark.at) })));
    nods.push(...nodded.map(({ markId }) => ({ board, boardId, markId })));
    for (const [pictureId, entry] of Object.entries(notes ?? {})) {
      impressions.push({ board, boardId, pictureId, words: 'value' in entry ? entry.value : '' });
    }
  }
  packing.addJson('marks.json', marks);
  packing.addJson('nods.json', nods);
  packing.addJson('first-impressions.json', impressions);
}

function moment(at: number): string | number {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? at : date.toISOString();
}
