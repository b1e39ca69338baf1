/**
 * What a person is on a board or in a group. One that is not there and one without access look the same.
 *
 * A host is host everywhere. What a board says of somebody stands above what its group says; a guardian is one
 * only where they are nothing else. In the flow: session -> [role] -> handlers and rooms. IO: the database.
 */
import { type BoardRole, MemberRole } from '../core/contract/roles.ts';
import { wardsInGroup, wardsOn } from '../store/guardians.ts';
import { findPerson } from '../store/people.ts';
import { type Standing, standingInGroup, standingOn } from '../store/standing.ts';
import type { Visitor } from './session.ts';

/** The person's role, or null when there is no such board or they have no access to it. */
export async function roleOn(visitor: Visitor, boardId: string): Promise<BoardRole | null> {
  const standing = await standingOn(boardId, visitor.personId);
  if (standing === undefined) return null;
  if (visitor.isHost) return 'host';
  const role = roleFrom(standing, visitor.personId);
  if (role) return role;
  return (await wardsOn(boardId, visitor.personId)).length > 0 ? 'guardian' : null;
}

/** As `roleOn`, for somebody of whom only the id is at hand; null also when the person is gone. */
export async function roleNow(personId: string, boardId: string): Promise<BoardRole | null> {
  const person = await findPerson(personId);
  return person && roleOn({ personId, name: person.name, isHost: person.isHost }, boardId);
}

/** The person's role in a group, or null when there is no such group or they do not belong to it. */
export async function roleInGroup(visitor: Visitor, groupId: string): Promise<BoardRole | null> {
  const standing = await standingInGroup(groupId, visitor.personId);
  if (standing === undefined) return null;
  if (visitor.isHost) return 'host';
  const role = roleFrom({ ownerId: null, boardRole: null, groupId, ...standing }, visitor.personId);
  if (role) return role;
  return (await wardsInGroup(groupId, visitor.personId)).length > 0 ? 'guardian' : null;
}

/** What the lists say, leaving out hosts and guardians; null where they say nothing or 'none'. */
function roleFrom(standing: Standing, personId: string): BoardRole | null {
  if (standing.ownerId === personId || standing.groupOwnerId === personId) return 'owner';
  const said = standing.boardRole ?? standing.groupRole;
  return said === null || said === 'none' ? null : MemberRole.parse(said);
}

/** What the lists of a board and its group say of somebody; null for owners and for who is on none. */
export async function memberRoleOn(boardId: string, personId: string): Promise<MemberRole | null> {
  const standing = await standingOn(boardId, personId);
  const role = standing === undefined ? null : roleFrom(standing, personId);
  return MemberRole.safeParse(role).data ?? null;
}
