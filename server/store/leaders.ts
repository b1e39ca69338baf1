/** Those who run a board or group or teach there: hosts, owners, teachers. IO: the database, one statement each. */
import { database } from './database.ts';

const ids = (rows: { id: string | null }[]) => new Set(rows.flatMap(({ id }) => id ?? []));

/** As access/roles has it: what a board says of somebody stands above what its group says. */
export async function leadersOn(boardId: string): Promise<ReadonlySet<string>> {
  return ids(
    await database().$queryRaw<{ id: string | null }[]>`
      SELECT "id" FROM "Person" WHERE "isHost"
      UNION SELECT "ownerId" FROM "Board" WHERE "id" = ${boardId}
      UNION SELECT g."ownerId" FROM "Board" b JOIN "Group" g ON g."id" = b."groupId" WHERE b."id" = ${boardId}
      UNION SELECT "personId" FROM "Member" WHERE "boardId" = ${boardId} AND "role" = 'teacher'
      UNION SELECT gm."personId" FROM "Board" b
        JOIN "GroupMember" gm ON gm."groupId" = b."groupId" AND gm."role" = 'teacher'
        LEFT JOIN "Member" m ON m."boardId" = b."id" AND m."personId" = gm."personId"
        WHERE b."id" = ${boardId} AND m."role" IS NULL`,
  );
}

/** As above, of a group. */
export async function leadersIn(groupId: string): Promise<ReadonlySet<string>> {
  return ids(
    await database().$queryRaw<{ id: string | null }[]>`
      SELECT "id" FROM "Person" WHERE "isHost"
      UNION SELECT "ownerId" FROM "Group" WHERE "id" = ${groupId}
      UNION SELECT "personId" FROM "GroupMember" WHERE "groupId" = ${groupId} AND "role" = 'teacher'`,
  );
}

/** The boards somebody runs or teaches on, and the groups, without what they may as a host. */
export async function ledBy(personId: string): Promise<{ boardIds: string[]; groupIds: string[] }> {
  const [boards, groups] = await Promise.all([
    database().$queryRaw<{ id: string }[]>`
      SELECT b."id" FROM "Board" b
      LEFT JOIN "Group" g ON g."id" = b."groupId"
      LEFT JOIN "Member" m ON m."boardId" = b."id" AND m."personId" = ${personId}
      LEFT JOIN "GroupMember" gm ON gm."groupId" = b."groupId" AND gm."personId" = ${personId}
      WHERE b."ownerId" = ${personId} OR g."ownerId" = ${personId} OR m."role" = 'teacher'
        OR (m."role" IS NULL AND gm."role" = 'teacher')`,
    database().$queryRaw<{ id: string }[]>`
      SELECT g."id" FROM "Group" g
      LEFT JOIN "GroupMember" gm ON gm."groupId" = g."id" AND gm."personId" = ${personId}
      WHERE g."ownerId" = ${personId} OR gm."role" = 'teacher'`,
  ]);
  return { boardIds: boards.map(({ id }) => id), groupIds: groups.map(({ id }) => id) };
}
