/** Who wants to have nothing to do with whom. IO: the database. */
import type { PersonView } from '../core/contract/responses.ts';
import { database } from './database.ts';

/** Does nothing when it stands already. @param shownAs The other one's name as the first one sees it. */
export async function addBlock(blockerId: string, blockedId: string, shownAs: string): Promise<void> {
  await database().block.upsert({
    where: { blockerId_blockedId: { blockerId, blockedId } },
    create: { blockerId, blockedId, shownAs },
    update: {},
  });
}

export async function removeBlock(blockerId: string, blockedId: string): Promise<void> {
  await database().block.deleteMany({ where: { blockerId, blockedId } });
}

/** Whom somebody blocks, by name. */
export async function blockedBy(blockerId: string): Promise<PersonView[]> {
  const rows = await database().block.findMany({
    where: { blockerId },
    orderBy: [{ shownAs: 'asc' }, { blockedId: 'asc' }],
  });
  return rows.map(({ blockedId, shownAs }) => ({ id: blockedId, name: shownAs }));
}

/** Everybody whom the person blocks or who blocks them. */
export async function blockedEitherWay(personId: string): Promise<string[]> {
  const rows = await database().block.findMany({
    where: { OR: [{ blockerId: personId }, { blockedId: personId }] },
    select: { blockerId: true, blockedId: true },
  });
  return [...new Set(rows.map((row) => (row.blockerId === personId ? row.blockedId : row.blockerId)))];
}
