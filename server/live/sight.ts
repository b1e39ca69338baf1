/**
 * Whom somebody in a room sees, and under which names: blocks and the school setting.
 *
 * In the flow: upgrade, recheck -> [sight] -> presence desk. IO: the store.
 */
import { unseenOn } from '../access/block.ts';
import { type KnownNames, knownNames, rulesAt } from '../access/school.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { aliasesOf } from '../store/school.ts';

export interface Sight {
  /** Person ids whom this person does not see, and who do not see them. */
  unseen: ReadonlySet<string>;
  /** Whom they see under the name that was given. */
  known: KnownNames;
  /** What the others call this person where names are kept back; null elsewhere. */
  alias: string | null;
}

export async function sightOn(boardId: string, personId: string, role: BoardRole): Promise<Sight> {
  const place = { boardId };
  const { aliases } = await rulesAt(place);
  return {
    unseen: await unseenOn(boardId, personId, role),
    known: aliases ? await knownNames(place, personId, role) : 'all',
    alias: aliases ? ((await aliasesOf([personId])).get(personId) ?? null) : null,
  };
}

/** Whether both show the same. */
export function sameSight(one: Sight, two: Sight): boolean {
  return one.alias === two.alias && sameIds(one.unseen, two.unseen) && sameIds(one.known, two.known);
}

function sameIds(one: KnownNames, two: KnownNames): boolean {
  if (one === 'all' || two === 'all') return one === two;
  return one.size === two.size && [...one].every((id) => two.has(id));
}
