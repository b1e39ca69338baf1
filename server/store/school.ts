/** The school setting of groups and of the installation, and the made-up names it asks for. IO: the database. */
import type { Prisma } from '../../prisma/generated/client.ts';
import { SchoolShape } from '../core/contract/decency.ts';
import { NO_RULES, type SchoolRules } from '../core/contract/school.ts';
import { database } from './database.ts';
import { readFact, writeFact } from './installation.ts';
import { madeUpName } from './made-up-names.ts';

/** What was set here for every board. */
export async function houseRules(): Promise<SchoolRules> {
  const text = await readFact('school');
  return text === null ? NO_RULES : SchoolShape.parse(JSON.parse(text));
}

export async function setHouseRules(rules: SchoolRules): Promise<void> {
  await writeFact('school', JSON.stringify(rules));
}

/** What was set for the group itself. */
export async function groupRules(groupId: string): Promise<SchoolRules> {
  const row = await database().group.findUnique({ where: { id: groupId }, select: { school: true } });
  return parsed(row?.school ?? null);
}

/** What was set for the group of a board; nothing where it has none. */
export async function rulesOfItsGroup(boardId: string): Promise<SchoolRules> {
  const row = await database().board.findUnique({
    where: { id: boardId },
    select: { group: { select: { school: true } } },
  });
  return parsed(row?.group?.school ?? null);
}

function parsed(stored: unknown): SchoolRules {
  return stored === null ? NO_RULES : SchoolShape.parse(stored);
}

export async function setGroupRules(groupId: string, rules: SchoolRules): Promise<void> {
  // The shape is plain JSON by its own definition.
  const school = rules as unknown as Prisma.InputJsonValue;
  await database().group.updateMany({ where: { id: groupId }, data: { school } });
}

/**
 * Invitations that more people could still come by let in nobody else, and the others end by that time. Who came stays.
 *
 * @param groupId Of a group and its boards; null = everywhere.
 */
export async function closePublicInvites(groupId: string | null, latest: Date): Promise<void> {
  const place = groupId === null ? {} : { OR: [{ groupId }, { board: { groupId } }] };
  const open = { revokedAt: null, ...place };
  await database().invite.updateMany({
    where: { AND: [open, { OR: [{ uses: null }, { uses: { gt: 1 } }] }] },
    data: { expiresAt: new Date(0) },
  });
  await database().invite.updateMany({
    where: { AND: [open, { expiresAt: { gt: latest } }] },
    data: { expiresAt: latest },
  });
}

/** Made-up names by person id; who had none gets one that nobody else has. */
export async function aliasesOf(personIds: readonly string[]): Promise<Map<string, string>> {
  const rows = await database().person.findMany({
    where: { id: { in: [...new Set(personIds)] } },
    select: { id: true, alias: true },
  });
  const aliases = new Map<string, string>();
  for (const { id, alias } of rows) aliases.set(id, alias ?? (await giveAlias(id)));
  return aliases;
}

/** A made-up name; with a number once such pairs are taken. */
async function giveAlias(personId: string): Promise<string> {
  for (let go = 0; ; go++) {
    const alias = `${madeUpName()}${go < 20 ? '' : ` ${go}`}`;
    const taken = (await database().person.count({ where: { alias } })) > 0;
    if (taken) continue;
    // Whoever was faster gave this person another one, which then stands.
    const { count } = await database()
      .person.updateMany({ where: { id: personId, alias: null }, data: { alias } })
      .catch(lostRace);
    if (count === 1) return alias;
    const row = await database().person.findUnique({ where: { id: personId }, select: { alias: true } });
    if (row === null) return alias;
    if (row.alias !== null) return row.alias;
  }
}

/** Somebody else took the very same name in the same moment (SQLSTATE 23505, Prisma P2002). */
function lostRace(thrown: unknown): { count: number } {
  if (thrown instanceof Error && 'code' in thrown && thrown.code === 'P2002') return { count: 0 };
  throw thrown;
}
