/**
 * Rows of one board, read for its archive and written from one, all or none.
 *
 * In the flow: board archive -> [archive-rows] <- taking a board in. What may leave is decided by the callers. IO: the
 * database.
 */
import type { Prisma, PrismaClient } from '../../prisma/generated/client.ts';
import type { BoardPart } from '../core/outward/board-parts.ts';
import { database } from './database.ts';
import { snapshotParts } from './live-updates.ts';

/** Everything of a board that an archive may hold, untouched camera files left out; null when it is gone. */
export function readArchiveRows(boardId: string) {
  return database().board.findUnique({
    where: { id: boardId },
    include: {
      pictures: {
        omit: { untouchedHash: true },
        include: { renditions: true, measures: true },
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
      },
      consents: true,
      asks: { orderBy: { askedAt: 'asc' } },
      homework: { orderBy: { setAt: 'asc' } },
    },
  });
}
export type ArchiveRows = NonNullable<Awaited<ReturnType<typeof readArchiveRows>>>;

/** Which of these ids are taken, of boards, people and pictures together. */
export async function idsTaken(ids: readonly string[]): Promise<Set<string>> {
  const where = { where: { id: { in: [...ids] } }, select: { id: true } };
  const store = database();
  const found = await Promise.all([
    store.board.findMany(where),
    store.person.findMany(where),
    store.picture.findMany(where),
  ]);
  return new Set(found.flat().map(({ id }) => id));
}

/** What taking a board in writes. All ids are those it gets here. */
export interface BoardToAdd {
  board: BoardPart;
  ownerId: string;
  /** Ids of people of the archive who are here already: they get no row. */
  known: ReadonlySet<string>;
  /** Room -> its document as one update. */
  rooms: ReadonlyMap<string, Uint8Array>;
}

const LASTS_MS = 10 * 60_000;

/** Writes all of it in one transaction. @throws what the database throws; then nothing of it is there. */
export async function addArchivedBoard(added: BoardToAdd): Promise<void> {
  await database().$transaction(
    async (store) => {
      await addPeopleAndBoard(store, added);
      await addPictures(store, added.board);
      await addSaid(store, added.board);
      for (const [room, bytes] of added.rooms) {
        for (const write of snapshotParts(store, { boardId: added.board.id, room, throughId: 0n, bytes }))
          await write;
      }
    },
    { maxWait: LASTS_MS, timeout: LASTS_MS },
  );
}

type Session = Omit<PrismaClient, '$connect' | '$disconnect' | '$on' | '$use' | '$extends' | '$transaction'>;

async function addPeopleAndBoard(store: Session, { board, ownerId, known }: BoardToAdd): Promise<void> {
  await store.person.createMany({
    data: board.people.filter(({ id }) => !known.has(id)).map(({ id, name }) => ({ id, name })),
  });
  const { id, title, scenario, createdAt, overAt } = board;
  await store.board.create({ data: { id, title, scenario, createdAt, overAt, ownerId } });
  const members = board.people.flatMap(({ id: personId, role }) => {
    if (role === null || personId === ownerId) return [];
    return [{ boardId: id, personId, role: role === 'owner' ? 'teacher' : role }];
  });
  await store.member.createMany({ data: members });
}

async function addPictures(store: Session, { id: boardId, pictures }: BoardPart): Promise<void> {
  for (const { original, renditions, ...columns } of pictures) {
    const copies: Prisma.RenditionCreateManyPictureInput[] = renditions.map(
      ({ path: _, sha256: hash, ...copy }) => {
        return { ...copy, hash };
      },
    );
    await store.picture.create({
      data: {
        ...columns,
        boardId,
        originalHash: original.sha256,
        renditions: { createMany: { data: copies } },
      },
    });
  }
}

async function addSaid(store: Session, { id: boardId, consents, asks, homework }: BoardPart): Promise<void> {
  await store.consent.createMany({
    data: consents.map((each) => ({ ...each, boardId, saidById: each.personId })),
  });
  const fresh = <Row>(row: Row) => ({ ...row, boardId, id: crypto.randomUUID() });
  await store.ask.createMany({ data: asks.map(fresh) });
  await store.homework.createMany({ data: homework.map(fresh) });
}
