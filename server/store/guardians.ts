/**
 * Guardians: whose boards they see, and where. A guardianship holds on one board or on those of one group, and
 * only while the minor is on the board themselves. IO: the database.
 */
import { randomUUID } from 'node:crypto';
import { database } from './database.ts';

/** Where a guardianship holds: one of the two. */
export type GuardedPlace = { boardId: string } | { groupId: string };

/** The minors on this board whose guardian the person is. */
export async function wardsOn(boardId: string, guardianId: string): Promise<string[]> {
  return (await guardianshipsOn(boardId))
    .filter((row) => row.guardianId === guardianId)
    .map((row) => row.wardId);
}

/** The minors in this group whose guardian the person is. */
export async function wardsInGroup(groupId: string, guardianId: string): Promise<string[]> {
  const rows = await database().$queryRaw<{ wardId: string }[]>`
    SELECT s."wardId" FROM "Guardianship" s
    JOIN "GroupMember" gm ON gm."groupId" = s."groupId" AND gm."personId" = s."wardId"
    WHERE s."groupId" = ${groupId} AND s."guardianId" = ${guardianId}`;
  return rows.map((row) => row.wardId);
}

export interface GuardianshipRow {
  guardianId: string;
  guardianName: string;
  wardId: string;
  wardName: string;
}

/** Every guardianship that holds on a board now, oldest first. */
export async function guardianshipsOn(boardId: string): Promise<GuardianshipRow[]> {
  return database().$queryRaw<GuardianshipRow[]>`
    SELECT s."guardianId", p."name" AS "guardianName", s."wardId", w."name" AS "wardName"
    FROM "Guardianship" s
    JOIN "Board" b ON b."id" = ${boardId} AND (s."boardId" = b."id" OR s."groupId" = b."groupId")
    JOIN "Person" p ON p."id" = s."guardianId"
    JOIN "Person" w ON w."id" = s."wardId"
    LEFT JOIN "Member" m ON m."boardId" = b."id" AND m."personId" = s."wardId"
    LEFT JOIN "GroupMember" gm ON gm."groupId" = b."groupId" AND gm."personId" = s."wardId"
    WHERE b."ownerId" = s."wardId" OR m."role" <> 'none' OR (m."role" IS NULL AND gm."role" IS NOT NULL)
    ORDER BY s."createdAt", s."id"`;
}

/** The boards that somebody sees as the guardian of a minor who is on them. */
export async function guardedBoards(guardianId: string): Promise<string[]> {
  const rows = await database().$queryRaw<{ id: string }[]>`
    SELECT DISTINCT b."id" FROM "Guardianship" s
    JOIN "Board" b ON s."boardId" = b."id" OR s."groupId" = b."groupId"
    LEFT JOIN "Member" m ON m."boardId" = b."id" AND m."personId" = s."wardId"
    LEFT JOIN "GroupMember" gm ON gm."groupId" = b."groupId" AND gm."personId" = s."wardId"
    WHERE s."guardianId" = ${guardianId}
      AND (b."ownerId" = s."wardId" OR m."role" <> 'none' OR (m."role" IS NULL AND gm."role" IS NOT NULL))`;
  return rows.map((row) => row.id);
}

/** Whether the person is anybody's guardian. */
export async function isGuardian(personId: string): Promise<boolean> {
  return (await database().guardianship.count({ where: { guardianId: personId } })) > 0;
}

/** Ends every guardianship of one person there. @returns Whether there was one. */
export async function endGuardianships(place: GuardedPlace, guardianId: string): Promise<boolean> {
  const { count } = await database().guardianship.deleteMany({ where: { ...place, guardianId } });
  return count > 0;
}

/** The row of a new guardianship. */
export function newGuardianship(
  place: GuardedPlace,
  guardianId: string,
  wardId: string,
  inviteId: string | null,
) {
  return { id: randomUUID(), ...place, guardianId, wardId, inviteId };
}
