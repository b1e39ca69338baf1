/** Sessions by the hash of their token; the token itself is only in the browser. IO: the database. */
import { database } from './database.ts';
import type { PersonRow } from './people.ts';

export async function addSession(tokenHash: string, personId: string, expiresAt: Date): Promise<void> {
  await database().session.create({ data: { tokenHash, personId, expiresAt } });
}

/** The session's person and end, or null when unknown or over at `now`. */
export async function findSession(
  tokenHash: string,
  now: Date,
): Promise<{ person: PersonRow; expiresAt: Date } | null> {
  const row = await database().session.findUnique({
    where: { tokenHash },
    select: { expiresAt: true, person: { select: { id: true, name: true, isHost: true } } },
  });
  return row && row.expiresAt > now ? row : null;
}

/** Moves the end of a session; does nothing when it ended meanwhile. */
export async function extendSession(tokenHash: string, expiresAt: Date): Promise<void> {
  await database().session.updateMany({ where: { tokenHash }, data: { expiresAt } });
}

export async function endSession(tokenHash: string): Promise<void> {
  await database().session.deleteMany({ where: { tokenHash } });
}

/** Removes what is over at `now`: sessions, host links and links to come back by. */
export async function removeExpired(now: Date): Promise<void> {
  await database().session.deleteMany({ where: { expiresAt: { lte: now } } });
  await database().hostLink.deleteMany({ where: { expiresAt: { lte: now } } });
  await database().returnLink.deleteMany({ where: { expiresAt: { lte: now } } });
}
