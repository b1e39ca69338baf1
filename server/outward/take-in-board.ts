/**
 * Takes the archive of a board in: the same board again, with the same pictures byte by byte, or nothing of it.
 *
 * Ids stay where they are free here, so that on an empty server it is the very same board. Under this server's own seal
 * its people are known again; otherwise they become names without a way to sign in, whatever the archive says of them.
 * Figures are measured anew from what came in: nothing that somebody else worked out is shown as ours. In the flow:
 * handler -> services -> [take-in-board] -> store. Main process only. IO: the database, the data folder.
 */
import { randomUUID } from 'node:crypto';
import * as Y from 'yjs';
import { roleNow } from '../access/roles.ts';
import type { TakenBoard } from '../core/contract/outward.ts';
import type { RoomName } from '../core/live/layout.ts';
import { nodParts } from '../core/live/nods.ts';
import {
  BOARD_PATH,
  BoardManifest,
  BoardPart,
  MEASURES_PATH,
  roomPath,
} from '../core/outward/board-parts.ts';
import { documentOf, RoomState, withIds } from '../core/outward/room-state.ts';
import { say } from '../core/say/say.ts';
import { addArchivedBoard, idsTaken } from '../store/archive-rows.ts';
import { removeUnshared } from '../store/blob-sweep.ts';
import { releaseBlobs } from '../store/blobs.ts';
import { storeProblem } from '../store/trouble.ts';
import { isSealedHere } from './seal.ts';
import { storePicture } from './stored-pictures.ts';
import { Archive, archiveRefused } from './unpacking.ts';

/** 8 GB and 40,000 files: two thousand pictures of 60 MB do not fit, but no board of ours comes near. */
const LIMITS = { mostBytes: 8_000_000_000, mostFiles: 40_000 };

/**
 * @param path The archive; the caller removes it.
 * @param takerId Who takes it in, and owns it from now on.
 * @throws Problem 'archive-refused', 'disk-full'.
 */
export async function takeInBoard(path: string, takerId: string): Promise<TakenBoard> {
  const archive = await Archive.open(path, 'veilstep board', LIMITS);
  const held: string[] = [];
  try {
    const manifest = parsed(BoardManifest, archive.manifest);
    const board = parsed(BoardPart, await archive.json(BOARD_PATH));
    const rooms = await readRooms(archive, board);
    refuseStrangers(board, rooms);
    const ids = await newIds(board, await isSealedHere(manifest.files, manifest.seal));
    const documents = makeDocuments(rooms, ids);
    for (const picture of board.pictures) await storePicture(archive, picture, held);
    const added = renamed(board, ids);
    await addArchivedBoard({ board: added, ownerId: takerId, known: ids.known, rooms: documents });
    return { id: added.id, title: board.title, pictures: board.pictures.length, leftOut: manifest.leftOut };
  } catch (thrown) {
    throw storeProblem(thrown);
  } finally {
    archive.close();
    releaseBlobs(held);
    // After a success a row names each of them; after a failure none is left behind.
    await removeUnshared(held);
  }
}

function parsed<Shape>(
  shape: { safeParse(input: unknown): { success: true; data: Shape } | { success: false; error: unknown } },
  found: unknown,
): Shape {
  const result = shape.safeParse(found);
  if (result.success) return result.data;
  throw archiveRefused(say`has a part that is not as it should be`, result.error);
}

type Rooms = Map<RoomName, RoomState>;

async function readRooms(archive: Archive, { pictures, people }: BoardPart): Promise<Rooms> {
  const possible: RoomName[] = [
    'setup',
    'marks',
    'class',
    ...pictures.filter(({ kind }) => kind === 'painting').map(({ id }): RoomName => `painting/${id}`),
    ...people.map(({ id }): RoomName => `silent/${id}`),
  ];
  const rooms: Rooms = new Map();
  const known = new Set([BOARD_PATH, MEASURES_PATH]);
  for (const name of possible) {
    known.add(roomPath(name));
    if (archive.has(roomPath(name))) rooms.set(name, parsed(RoomState, await archive.json(roomPath(name))));
  }
  for (const { original, renditions } of pictures)
    for (const { path } of [original, ...renditions]) known.add(path);
  if (archive.manifest.files.some(({ path }) => !known.has(path)))
    throw archiveRefused(say`holds a file that belongs to nothing in it`);
  return rooms;
}

/** Everybody and everything that is named is in the archive too; nothing stands twice. */
function refuseStrangers({ id, people, pictures, consents, asks, homework }: BoardPart, rooms: Rooms): void {
  const persons = new Set(people.map((person) => person.id));
  const posted = new Set(pictures.map((picture) => picture.id));
  if (new Set([id, ...persons, ...posted]).size !== 1 + people.length + pictures.length) {
    throw archiveRefused(say`names two things alike`);
  }
  const marks = Object.entries(rooms.get('marks')?.roots.marks ?? {}).map(([, entry]) => {
    return 'map' in entry && entry.map.author && 'value' in entry.map.author ? entry.map.author.value : null;
  });
  const nods = Object.keys(rooms.get('marks')?.roots.nods ?? {}).map((key) => nodParts(key).personId);
  const asked = asks.flatMap((ask) => [
    ask.askedById,
    ask.askedOfId ?? ask.askedById,
    ask.promisedById ?? ask.askedById,
    ask.answeredById ?? ask.askedById,
  ]);
  const set = homework.flatMap(({ painterId, setById }) => [painterId, setById]);
  const named = [
    ...pictures.map(({ painterId }) => painterId),
    ...consents.map(({ personId }) => personId),
    ...marks,
    ...nods,
    ...asked,
    ...set,
  ];
  const followed = pictures.flatMap(({ followsId }) => followsId ?? []);
  const about = [
    ...asks.map(({ pictureId }) => pictureId),
    ...homework.flatMap(({ pictureId, answerId }) => [pictureId, answerId ?? pictureId]),
    ...followed,
  ];
  if (
    named.some((person) => typeof person !== 'string' || !persons.has(person)) ||
    about.some((picture) => !posted.has(picture))
  ) {
    throw archiveRefused(say`names somebody or something that is not in it`);
  }
}

interface NewIds {
  /** Old id -> new one, of those that change. */
  changed: Map<string, string>;
  /** People who are here already and are them. */
  known: Set<string>;
}

/** Somebody who no longer belongs to the board here is not put onto its copy either: they come as a name. */
async function newIds({ id, people, pictures }: BoardPart, sealedHere: boolean): Promise<NewIds> {
  const persons = people.map((person) => person.id);
  const taken = await idsTaken([id, ...persons, ...pictures.map((picture) => picture.id)]);
  const known = new Set<string>();
  if (sealedHere) {
    for (const person of persons) {
      const belongs = !taken.has(id) || (await roleNow(person, id)) !== null;
      if (taken.has(person) && belongs) known.add(person);
    }
  }
  const changed = [...taken]
    .filter((each) => !known.has(each))
    .map((each): [string, string] => [each, randomUUID()]);
  return { changed: new Map(changed), known };
}

function makeDocuments(rooms: Rooms, { changed }: NewIds): Map<string, Uint8Array> {
  const documents = new Map<string, Uint8Array>();
  for (const [name, state] of rooms) {
    const cut = name.indexOf('/');
    const about = name.slice(cut + 1);
    const renamedName = (
      cut < 0 ? name : `${name.slice(0, cut + 1)}${changed.get(about) ?? about}`
    ) as RoomName; // same kind of room
    const doc = documentOf(renamedName, withIds(state, changed));
    documents.set(renamedName, Y.encodeStateAsUpdate(doc));
    doc.destroy();
  }
  return documents;
}

function renamed(board: BoardPart, { changed }: NewIds): BoardPart {
  const now = <Id extends string | null>(id: Id) => (id === null ? id : (changed.get(id) ?? id)) as Id;
  return {
    ...board,
    id: now(board.id),
    people: board.people.map((person) => ({ ...person, id: now(person.id) })),
    pictures: board.pictures.map((picture) => ({
      ...picture,
      ...{ id: now(picture.id), painterId: now(picture.painterId), followsId: now(picture.followsId) },
    })),
    consents: board.consents.map((said) => ({ ...said, personId: now(said.personId) })),
    asks: board.asks.map((ask) => ({
      ...ask,
      ...{ pictureId: now(ask.pictureId), askedById: now(ask.askedById), askedOfId: now(ask.askedOfId) },
      ...{ promisedById: now(ask.promisedById), answeredById: now(ask.answeredById) },
    })),
    homework: board.homework.map((each) => ({
      ...each,
      ...{ pictureId: now(each.pictureId), answerId: now(each.answerId) },
      ...{ painterId: now(each.painterId), setById: now(each.setById) },
    })),
  };
}
