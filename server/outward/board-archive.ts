/**
 * A board as one archive: what may leave it, packed.
 *
 * A painting goes along when it is the taker's own, or its painter (of a minor the guardian) said both that it may be
 * kept and that it may be shown to others: an archive is a copy that stays, somewhere where others look at it. What
 * stays behind takes everything with it that was said on it. Never in it: untouched camera files, sessions, addresses,
 * passwords, invitations, first impressions that are not revealed. In the flow: handler -> [board-archive] -> packing.
 * IO: the database, the data folder.
 */
import type { Readable } from 'node:stream';
import { finished } from 'node:stream/promises';
import type * as Y from 'yjs';
import { mayUse } from '../access/consent.ts';
import { readClass } from '../core/class/state.ts';
import type { ArchiveContents, LeftOut } from '../core/contract/outward.ts';
import { MEMBER_ROLES } from '../core/contract/roles.ts';
import { documentFrom } from '../core/live/document.ts';
import type { RoomName } from '../core/live/layout.ts';
import { readMarks } from '../core/live/marks.ts';
import {
  type ArchivedPerson,
  type ArchivedPicture,
  BOARD_PATH,
  MEASURES_PATH,
  roomPath,
} from '../core/outward/board-parts.ts';
import { ARCHIVE_VERSION } from '../core/outward/manifest.ts';
import { type RoomState, stateOf, withoutIds } from '../core/outward/room-state.ts';
import { say } from '../core/say/say.ts';
import { type ArchiveRows, readArchiveRows } from '../store/archive-rows.ts';
import { removeUnshared } from '../store/blob-sweep.ts';
import { blobPath, holdBlobs, releaseBlobs } from '../store/blobs.ts';
import { readBoardView } from '../store/board-view.ts';
import { readRoom, roomsOf } from '../store/live-updates.ts';
import { namesOf } from '../store/people.ts';
import { boardPart } from './board-rows.ts';
import { Packing } from './packing.ts';
import { PRODUCT_VERSION } from './product-version.ts';
import { sealFor } from './seal.ts';

/** What would be in it and what would stay behind, without making it; null when the board is gone. */
export async function archiveContents(boardId: string, takerId: string): Promise<ArchiveContents | null> {
  const rows = await readArchiveRows(boardId);
  if (!rows) return null;
  const leftOut = await stayBehind(rows, takerId);
  return { title: rows.title, pictures: rows.pictures.length - leftOut.length, leftOut };
}

/** The archive as a stream; null when the board is gone. Its pictures stay until it is read to its end. */
export async function boardArchive(
  boardId: string,
  takerId: string,
  now = new Date(),
): Promise<Readable | null> {
  const rows = await readArchiveRows(boardId);
  if (!rows) return null;
  const leftOut = await stayBehind(rows, takerId);
  const behind = new Set(leftOut.map(({ pictureId }) => pictureId));
  const taken = rows.pictures.filter(({ id }) => !behind.has(id));
  const hashes = taken.flatMap(({ originalHash, renditions }) => [
    originalHash,
    ...renditions.map(({ hash }) => hash),
  ]);
  await holdBlobs(hashes);
  const letGo = async () => {
    releaseBlobs(hashes);
    await removeUnshared(hashes);
  };
  try {
    const packing = new Packing();
    const rooms = await roomStates(boardId, behind);
    const people = await peopleIn(rows, taken, rooms);
    const board = boardPart(rows, taken, people);
    packing.addJson(BOARD_PATH, board);
    // Figures were taken against all references: where one stays behind they are not those of what goes along.
    const allReferences = leftOut.every(({ pictureId }) => kindOf(rows, pictureId) === 'painting');
    packing.addJson(MEASURES_PATH, allReferences ? measuresOf(taken) : []);
    for (const [room, state] of rooms) packing.addJson(roomPath(room), state);
    for (const picture of board.pictures) await packPicture(packing, picture);
    const out = packing.finish({
      format: 'veilstep board',
      formatVersion: ARCHIVE_VERSION,
      madeBy: PRODUCT_VERSION,
      at: now.toISOString(),
      title: rows.title,
      leftOut: leftOut.map(sentenceFor),
      seal: await sealFor(packing.files),
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

async function packPicture(packing: Packing, { original, renditions }: ArchivedPicture): Promise<void> {
  for (const { path, sha256 } of [original, ...renditions]) {
    await packing.addFile(path, blobPath(sha256), { sha256 });
  }
}

function kindOf({ pictures }: ArchiveRows, pictureId: string): string | undefined {
  return pictures.find(({ id }) => id === pictureId)?.kind;
}

function measuresOf(pictures: ArchiveRows['pictures']) {
  return pictures.flatMap(({ id, measures }) =>
    measures.map(({ inputsHash, formulaVersion, document, createdAt }) => {
      return { pictureId: id, inputsHash, formulaVersion, createdAt, document };
    }),
  );
}

function sentenceFor({ caption, painter, why }: LeftOut): string {
  return caption ? say`“${caption}” by ${painter}: ${why}` : say`A picture by ${painter}: ${why}`;
}

async function stayBehind(rows: ArchiveRows, takerId: string): Promise<LeftOut[]> {
  const names = await namesOf(rows.pictures.map(({ painterId }) => painterId));
  const leftOut: LeftOut[] = [];
  for (const { id, kind, painterId, rights, caption } of rows.pictures) {
    const used = { boardId: rows.id, painterId, kind, rights };
    const own = painterId === takerId && rights !== 'permission';
    if (own || ((await mayUse('keep', used)) && (await mayUse('others', used)))) continue;
    leftOut.push({ pictureId: id, caption, painter: names.get(painterId) ?? '', why: whyNot(kind, rights) });
  }
  return leftOut;
}

function whyNot(kind: string, rights: string | null): string {
  if (kind === 'reference' && rights === 'permission') return say`it was lent for this board alone.`;
  return say`its painter has not said that it may both be kept and be shown to others.`;
}

/** What stands in every room that goes along, without whatever is about pictures that stay behind. */
async function roomStates(boardId: string, behind: ReadonlySet<string>): Promise<Map<RoomName, RoomState>> {
  const states = new Map<RoomName, RoomState>();
  const names = await roomsOf(boardId);
  const revealed = new Set(
    names.includes('class') ? readClass(await documentIn(boardId, 'class')).shown.keys() : [],
  );
  for (const name of names) {
    if (name.startsWith('painting/') && behind.has(name.slice('painting/'.length))) continue;
    const doc = await documentIn(boardId, name);
    if (name === 'class') endClass(doc);
    if (name.startsWith('silent/')) keepRevealed(doc, revealed);
    const state = withoutIds(stateOf(doc, name), behind);
    doc.destroy();
    if (state.text !== undefined || Object.keys(state.roots).length > 0) states.set(name, state);
  }
  return states;
}

async function documentIn(boardId: string, name: RoomName): Promise<Y.Doc> {
  return documentFrom(name, (await readRoom(boardId, name)).updates);
}

/** Where it is taken in nobody sits in that class. */
function endClass(doc: Y.Doc): void {
  for (const key of ['now', 'look', 'closed', 'quiet']) doc.getMap('class').delete(key);
  doc.getMap('kept').delete('clock');
}

function keepRevealed(doc: Y.Doc, revealed: ReadonlySet<string>): void {
  const notes = doc.getMap('notes');
  for (const pictureId of [...notes.keys()]) if (!revealed.has(pictureId)) notes.delete(pictureId);
}

/** Everybody whom something in the archive names, with what they are on the board. */
async function peopleIn(
  rows: ArchiveRows,
  taken: ArchiveRows['pictures'],
  rooms: ReadonlyMap<RoomName, RoomState>,
): Promise<ArchivedPerson[]> {
  const roles = await rolesOn(rows.id);
  const ids = new Set([...roles.keys(), ...taken.map(({ painterId }) => painterId)]);
  for (const { personId } of rows.consents) ids.add(personId);
  for (const { askedById, askedOfId, promisedById, answeredById } of rows.asks) {
    for (const id of [askedById, askedOfId, promisedById, answeredById]) if (id) ids.add(id);
  }
  for (const { painterId, setById } of rows.homework) ids.add(painterId).add(setById);
  const marks = rooms.has('marks') ? readMarks(await documentIn(rows.id, 'marks')) : [];
  for (const { author } of marks) ids.add(author);
  for (const name of rooms.keys()) if (name.startsWith('silent/')) ids.add(name.slice('silent/'.length));
  const names = await namesOf([...ids]);
  return [...names].map(([id, name]) => ({ id, name, role: roles.get(id) ?? null }));
}

/** Guardians are nobody's business elsewhere: they stay behind with the minors they answer for. */
async function rolesOn(boardId: string): Promise<Map<string, NonNullable<ArchivedPerson['role']>>> {
  const view = await readBoardView(boardId, { id: '', name: '' }, 'host');
  const roles = new Map<string, NonNullable<ArchivedPerson['role']>>();
  for (const { id, role } of view?.members ?? []) {
    const known = (['owner', ...MEMBER_ROLES] as const).find((each) => each === role);
    if (known && !roles.has(id)) roles.set(id, known);
  }
  return roles;
}
