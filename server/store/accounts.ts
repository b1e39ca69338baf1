/** E-mail and password of people who gave them, and links to come back by. IO: the database. */
import { database } from './database.ts';
import type { PersonRow } from './people.ts';

export interface AccountRow extends PersonRow {
  email: string | null;
  passwordHash: string | null;
}

const ACCOUNT = { id: true, name: true, isHost: true, email: true, passwordHash: true } as const;

/** Null when nobody has that id. */
export function readAccount(personId: string): Promise<AccountRow | null> {
  return database().person.findUnique({ where: { id: personId }, select: ACCOUNT });
}

/** @param email In lower case. */
export function accountByEmail(email: string): Promise<AccountRow | null> {
  return database().person.findUnique({ where: { email }, select: ACCOUNT });
}

/** @returns False when the address is somebody else's; then nothing changed. */
export async function putAccount(personId: string, email: string, passwordHash: string): Promise<boolean> {
  try {
    await database().person.update({ where: { id: personId }, data: { email, passwordHash } });
    return true;
  } catch (thrown) {
    if (isTaken(thrown)) return false;
    throw thrown;
  }
}

/** Prisma's code for a value that must be unique and is there already. */
function isTaken(thrown: unknown): boolean {
  return thrown instanceof Error && 'code' in thrown && thrown.code === 'P2002';
}

export async function putPassword(personId: string, passwordHash: string): Promise<void> {
  await database().person.update({ where: { id: personId }, data: { passwordHash } });
}

/** Ends the sessions of a person but for one. @returns What the ended ones were known by. */
export async function endOtherSessions(personId: string, keptSessionId: string | null): Promise<string[]> {
  return database().$transaction(async (transaction) => {
    const where = { personId, ...(keptSessionId === null ? {} : { tokenHash: { not: keptSessionId } }) };
    const ended = await transaction.session.findMany({ where, select: { tokenHash: true } });
    await transaction.session.deleteMany({ where: { tokenHash: { in: ended.map((row) => row.tokenHash) } } });
    return ended.map((row) => row.tokenHash);
  });
}

export async function addReturnLink(tokenHash: string, personId: string, expiresAt: Date): Promise<void> {
  await database().returnLink.create({ data: { tokenHash, personId, expiresAt } });
}

/** Whom a link that still works at `now` lets back in, or null. */
export async function findReturnLink(tokenHash: string, now: Date): Promise<AccountRow | null> {
  const row = await database().returnLink.findFirst({
    where: { tokenHash, usedAt: null, expiresAt: { gt: now } },
    select: { person: { select: ACCOUNT } },
  });
  return row?.person ?? null;
}

/** Uses a link up. @returns Whether it was there, unused and not expired; of two at once one gets true. */
export async function spendReturnLink(tokenHash: string, now: Date): Promise<boolean> {
  const { count } = await database().returnLink.updateMany({
    where: { tokenHash, usedAt: null, expiresAt: { gt: now } },
    data: { usedAt: now },
  });
  return count === 1;
}
