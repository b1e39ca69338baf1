/**
 * Makes the demo board at the first start: photograph, five invented paintings, planes, marks.
 *
 * In the flow: main → [seed] → the same intake and the same live writers as everybody's. A fact of the
 * installation remembers that it was made, so a deleted demo stays deleted; a first start that was cut short
 * leaves no half board, because the next one clears it away and begins anew. IO: store, threads, a temporary copy.
 */
import { randomUUID } from 'node:crypto';
import { copyFile, mkdir, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type * as Y from 'yjs';
import type { IncomingPicture } from '../core/contract/incoming.ts';
import type { PictureFields } from '../core/contract/requests.ts';
import type { RoomName } from '../core/live/layout.ts';
import { putMark } from '../core/live/marks.ts';
import { setNod } from '../core/live/nods.ts';
import { putPaintingOutline, putReferenceOutline } from '../core/live/outlines.ts';
import { setCards, setCorners, setFocus, setSize, writeIntention } from '../core/live/painting.ts';
import { addPlane } from '../core/live/planes.ts';
import { setAllowsSketch } from '../core/live/remarks.ts';
import { askOfTheDay } from '../core/live/wall.ts';
import { incomingFolder } from '../store/blobs.ts';
import { addDemoBoard, demoBoards } from '../store/demo-board.ts';
import { readFact, writeFact } from '../store/installation.ts';
import { putMember } from '../store/members.ts';
import { addPerson } from '../store/people.ts';
import { DEMO_PLANES } from './outlines.ts';
import { paintAside } from './paint-aside.ts';
import { correctionOf, type DemoPaintingName, onPosted, paintedOutline } from './paintings.ts';
import { PHOTOGRAPH_CREDIT, PHOTOGRAPH_PATH } from './photograph.ts';
import {
  DEMO_MARKS,
  DEMO_PEOPLE,
  DEMO_QUESTION,
  DEMO_SCENARIO,
  DEMO_STUDIES,
  DEMO_TITLE,
  type DemoPersonName,
} from './scenario.ts';

/** What the seed needs from the running parts; the first two are `Services.takeInPicture` and `Live.writeAsServer`. */
export interface SeedParts {
  takeInPicture(incoming: IncomingPicture): Promise<{ id: string }>;
  writeAsServer(boardId: string, room: RoomName, edit: (doc: Y.Doc) => void): Promise<void>;
  /** Deletes a board whole, as a person's deleting does: rows, live history, blobs. */
  removeBoard(boardId: string): Promise<void>;
  now: Date;
  /** How a painting comes to be, as a JPEG; left out, it is painted in a thread of its own. */
  paint?: (name: DemoPaintingName) => Promise<Buffer>;
}

/** Minutes between two things said on the board. */
const MINUTES_BETWEEN = 4;

/** @returns The new board's id, or null when the demo was made at an earlier start. */
export async function seedDemo(parts: SeedParts): Promise<string | null> {
  if ((await readFact('demo-made')) !== null) return null;
  // The paintings take the longest, so they come before anything that could stay behind half made.
  const painted = await paintAll(parts.paint ?? paintAside);
  for (const leftOver of await demoBoards()) await parts.removeBoard(leftOver);
  const boardId = await addDemoBoard(DEMO_TITLE, DEMO_SCENARIO);
  const people = await addPeople(boardId);
  const photograph = await takeIn(parts, {
    boardId,
    painterId: personIn(people, 'Edda'),
    fields: { kind: 'reference', rights: 'free', credit: PHOTOGRAPH_CREDIT },
    write: (path) => copyFile(PHOTOGRAPH_PATH, path),
  });
  await parts.writeAsServer(boardId, 'setup', (doc) => {
    outlineReference(doc, photograph);
    askOfTheDay(doc, DEMO_QUESTION);
  });
  const pictures = new Map<DemoPaintingName, string>();
  for (const [index, { name, painter, caption }] of DEMO_STUDIES.entries()) {
    const bytes = painted[index];
    if (!bytes) throw new Error(`The painting ${name} was not painted.`);
    const id = await takeIn(parts, {
      boardId,
      painterId: personIn(people, painter),
      fields: { kind: 'painting', caption },
      write: (path) => writeFile(path, bytes),
    });
    pictures.set(name, id);
  }
  await writeRooms(parts, boardId, people, pictures);
  await writeFact('demo-made', boardId);
  return boardId;
}

/** Two at once: each takes a processor and a good deal of memory. */
async function paintAll(paintOne: (name: DemoPaintingName) => Promise<Buffer>): Promise<Buffer[]> {
  const painted: Buffer[] = [];
  const left = [...DEMO_STUDIES.entries()];
  const paintOn = async () => {
    for (let next = left.shift(); next; next = left.shift()) painted[next[0]] = await paintOne(next[1].name);
  };
  await Promise.all([paintOn(), paintOn()]);
  return painted;
}

type People = ReadonlyMap<DemoPersonName, string>;

async function addPeople(boardId: string): Promise<People> {
  const people = new Map<DemoPersonName, string>();
  for (const { name, role } of DEMO_PEOPLE) {
    // No session and no link ever names these people, so nobody can enter as one of them.
    const { id } = await addPerson(name, false);
    await putMember(boardId, id, role, null);
    people.set(name, id);
  }
  return people;
}

function personIn(people: People, name: DemoPersonName): string {
  const id = people.get(name);
  if (!id) throw new Error(`${name} is not on the demo board.`);
  return id;
}

interface DemoFile {
  boardId: string;
  painterId: string;
  fields: PictureFields;
  write(path: string): Promise<void>;
}

/** Hands a file to the intake as an upload would; the copy is gone afterwards, taken in or not. */
async function takeIn(parts: SeedParts, { write, ...incoming }: DemoFile): Promise<string> {
  await mkdir(incomingFolder(), { recursive: true });
  const fileName = `demo-${randomUUID()}.jpg`;
  const temporaryPath = join(incomingFolder(), fileName);
  try {
    await write(temporaryPath);
    const { size } = await stat(temporaryPath);
    return (await parts.takeInPicture({ ...incoming, fileName, temporaryPath, sizeBytes: size })).id;
  } finally {
    await rm(temporaryPath, { force: true });
  }
}

function outlineReference(doc: Y.Doc, pictureId: string): void {
  for (const { outline, ...plane } of DEMO_PLANES) {
    addPlane(doc, plane);
    putReferenceOutline(doc, pictureId, plane.id, outline);
  }
}

async function writeRooms(
  parts: SeedParts,
  boardId: string,
  people: People,
  pictures: ReadonlyMap<DemoPaintingName, string>,
): Promise<void> {
  for (const { name, intention, focus, allowsSketch = false } of DEMO_STUDIES) {
    await parts.writeAsServer(boardId, `painting/${pictureIn(pictures, name)}`, (doc) => {
      DEMO_PLANES.forEach((plane, index) => {
        const outline = paintedOutline(name, index).map((point) => onPosted(name, point));
        putPaintingOutline(doc, plane.id, outline);
      });
      const correction = correctionOf(name);
      setCorners(doc, correction?.corners ?? null);
      setCards(doc, correction?.cards ?? null);
      setSize(doc, correction?.size ?? null);
      writeIntention(doc, intention);
      setFocus(doc, onPosted(name, focus));
      if (allowsSketch) setAllowsSketch(doc, true);
    });
  }
  await parts.writeAsServer(boardId, 'marks', (doc) => writeMarks(doc, people, pictures, parts.now));
}

function writeMarks(
  doc: Y.Doc,
  people: People,
  pictures: ReadonlyMap<DemoPaintingName, string>,
  now: Date,
): void {
  const ids = new Map(DEMO_MARKS.map(({ key }) => [key, randomUUID() as string]));
  DEMO_MARKS.forEach(({ key, author, painting, points, answers, nods = [], ...rest }, index) => {
    const id = ids.get(key) ?? key;
    putMark(doc, {
      ...rest,
      id,
      author: personIn(people, author),
      pictureId: pictureIn(pictures, painting),
      points: points.map((point) => onPosted(painting, point)),
      parent: answers === undefined ? null : (ids.get(answers) ?? null),
      at: now.getTime() - (DEMO_MARKS.length - index) * MINUTES_BETWEEN * 60_000,
    });
    for (const name of nods) setNod(doc, id, personIn(people, name), true);
  });
}

function pictureIn(pictures: ReadonlyMap<DemoPaintingName, string>, name: DemoPaintingName): string {
  const id = pictures.get(name);
  if (!id) throw new Error(`The painting ${name} was not taken in.`);
  return id;
}
