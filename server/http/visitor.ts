/**
 * Who asks, and what they are on the board they ask about.
 *
 * In the flow: handlers and pages -> [visitor] -> access. IO: the database.
 */
import { roleInGroup, roleOn } from '../access/roles.ts';
import { readSession, type Visitor } from '../access/session.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import type { Action } from '../core/permissions/table.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

/** Set by the server itself on every request; whatever a browser sent under these names is overwritten. */
export const ADDRESS_HEADER = 'x-veilstep-address';
export const SECURE_HEADER = 'x-veilstep-secure';

export interface OnBoard {
  visitor: Visitor;
  role: BoardRole;
}

/** @throws Problem 'not-entered' without a session. */
export async function visitorOf(request: Request): Promise<Visitor> {
  const visitor = await readSession(request.headers.get('cookie'));
  if (visitor) return visitor;
  throw new Problem('not-entered', say`You have not entered here. Open the link you were given.`);
}

/**
 * The person and their role on the board.
 *
 * @throws Problem 'not-entered' without a session, 'board-not-found' alike for no such board and no access.
 */
export async function visitorOnBoard(request: Request, boardId: string): Promise<OnBoard> {
  const visitor = await visitorOf(request);
  const role = await roleOn(visitor, boardId);
  if (role) return { visitor, role };
  throw boardNotFound();
}

/** The same sentence for a board that is not there and for one that is not yours. */
export function boardNotFound(): Problem {
  return new Problem(
    'board-not-found',
    say`There is no such board, or you have no access to it. Ask whoever runs it for an invite.`,
  );
}

/**
 * The person and their role in the group.
 *
 * @throws Problem 'not-entered' without a session, 'group-not-found' alike for no such group and no access.
 */
export async function visitorInGroup(request: Request, groupId: string): Promise<OnBoard> {
  const visitor = await visitorOf(request);
  const role = await roleInGroup(visitor, groupId);
  if (role) return { visitor, role };
  throw groupNotFound();
}

/** The same sentence for a group that is not there and for one that is not yours. */
export function groupNotFound(): Problem {
  return new Problem(
    'group-not-found',
    say`There is no such group, or you do not belong to it. Ask whoever runs it for an invite.`,
  );
}

/** @param doing Completes "Only … may …". @throws Problem 'not-allowed' unless `allowed`. */
export function refuseUnless(allowed: boolean, doing: string): void {
  if (!allowed) throw new Problem('not-allowed', say`${doing} Ask them to do it.`);
}

/** @param doing As above. @throws Problem 'not-allowed' unless the permission table lets the role do this. */
export function refuseUnlessMay(
  role: BoardRole | 'stranger',
  action: Action,
  doing: string,
  relation: Relation = 'other',
): void {
  refuseUnless(may(role, action, relation), doing);
}

/** For what is asked of the server itself and not of a board. @throws Problem 'not-allowed' unless the host may do it. */
export function refuseUnlessHost({ isHost }: Visitor, action: Action, doing: string): void {
  refuseUnlessMay(isHost ? 'host' : 'stranger', action, doing);
}

/** Network address the request came from, for counting. */
export function addressOf(request: Request): string {
  return request.headers.get(ADDRESS_HEADER) ?? 'unknown';
}

/** Whether the browser came over https, by itself or through a proxy. */
export function cameSecurely(request: Request): boolean {
  return request.headers.get(SECURE_HEADER) === '1';
}

/** The address people reach this server at, as this request did. */
export function originOf(request: Request): string {
  const host = request.headers.get('host') ?? 'localhost';
  return `${cameSecurely(request) ? 'https' : 'http'}://${host}`;
}
