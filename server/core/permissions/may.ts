/**
 * The one permission function of the product, over the table in `table.ts`.
 *
 * In the flow: access (role, relation) -> [may] -> HTTP handlers, rooms, and screens that offer only what will
 * be accepted. Pure.
 */
import type { BoardRole } from '../contract/roles.ts';
import { type Action, PERMISSIONS } from './table.ts';

/**
 * Whose the thing is that is acted on (a mark, a picture, a membership), as seen by who acts: their own, that
 * of a minor they are the guardian of, or somebody else's. Where a thing is nobody's (a board's title, its
 * planes), it is 'other'.
 */
export type Relation = 'own' | 'ward' | 'other';

/**
 * Whether somebody with this role may do this to a thing of that relation. A stranger may nothing.
 *
 * Whoever is a painter or teacher and a guardian besides may, for the minor they guard, what a guardian may.
 */
export function may(role: BoardRole | 'stranger', action: Action, relation: Relation = 'other'): boolean {
  if (role === 'stranger') return false;
  const { reach: row } = PERMISSIONS[action];
  if (relation === 'ward' && row.guardian === 'ward') return true;
  const reach = row[role];
  return reach === 'any' || (reach !== 'none' && reach === relation);
}
