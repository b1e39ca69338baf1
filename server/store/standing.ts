/**
 * What the store knows of one person on one board or in one group: the rows from which a role follows.
 *
 * In the flow: access/roles -> [standing] -> database. IO: the database, one statement each; these are asked
 * for with every picture and every socket.
 */
import { database } from './database.ts';

/** Ids of owners, and roles as they stand in the lists; null where there is no row. */
export interface Standing {
  ownerId: string | null;
  /** On the board itself: one of `MEMBER_ROLES`, or 'none' where a member of the group is kept off. */
  boardRole: string | null;
  groupId: string | null;
  groupOwnerId: string | null;
  groupRole: string | null;
}

/** Undefined when there is no such board. */
export async function standingOn(boardId: string, personId: string): Promise<Standing | undefined> {
  const [row] = await database().$queryRaw<Standing[]>`
    SELECT b."ownerId", m."role" AS "boardRole", b."groupId", g."ownerId" AS "groupOwnerId",
           gm."role" AS "groupRole"
    FROM "Board" b
    LEFT JOIN "Member" m ON m."boardId" = b."id" AND m."personId" = ${personId}
    LEFT JOIN "Group" g ON g."id" = b."groupId"
    LEFT JOIN "GroupMember" gm ON gm."groupId" = b."groupId" AND gm."personId" = ${personId}
    WHERE b."id" = ${boardId}`;
  return row;
}

/** Undefined when there is no such group. */
export async function standingInGroup(
  groupId: string,
  personId: string,
): Promise<Pick<Standing, 'groupOwnerId' | 'groupRole'> | undefined> {
  const [row] = await database().$queryRaw<Pick<Standing, 'groupOwnerId' | 'groupRole'>[]>`
    SELECT g."ownerId" AS "groupOwnerId", gm."role" AS "groupRole"
    FROM "Group" g
    LEFT JOIN "GroupMember" gm ON gm."groupId" = g."id" AND gm."personId" = ${personId}
    WHERE g."id" = ${groupId}`;
  return row;
}
