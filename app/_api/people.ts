/**
 * Calls about people: accounts, links to come back by, members, invitations, groups.
 *
 * In the flow: component -> [people] -> app/api. IO: HTTP to the same origin.
 */
import type { AccountRequest, InviteRequest } from '#server/core/contract/requests.ts';
import type {
  AccountView,
  ConsentView,
  InviteView,
  OpenInvite,
  PersonView,
  ReturnLinkView,
} from '#server/core/contract/responses.ts';
import type { ConsentUse, MemberRole } from '#server/core/contract/roles.ts';
import { call, withBody } from './client.ts';

/** Signs in with e-mail and password. */
export function signIn(email: string, password: string): Promise<PersonView> {
  return call('/api/sign-in', withBody('POST', { email, password }));
}

/** Ends this browser's session. */
export function signOut(): Promise<unknown> {
  return call('/api/leave', { method: 'POST' });
}

/** Gives oneself e-mail and password, or new ones. */
export function setAccount(request: AccountRequest): Promise<AccountView> {
  return call('/api/account', withBody('PUT', request));
}

/** Comes back by a link; with a new password where one is given. */
export function comeBack(key: string, password: string | null): Promise<PersonView> {
  return call('/api/return', withBody('POST', { key, ...(password === null ? {} : { password }) }));
}

/** Makes a link by which that person comes back; for hosts. */
export function makeReturnLink(personId: string): Promise<ReturnLinkView> {
  return call(`/api/people/${encodeURIComponent(personId)}/return-link`, { method: 'POST' });
}

/** A board or a group: where people are members and invites lead to. */
export type At = { boardId: string } | { groupId: string };

const path = (at: At) =>
  'boardId' in at
    ? `/api/boards/${encodeURIComponent(at.boardId)}`
    : `/api/groups/${encodeURIComponent(at.groupId)}`;

export function createInvite(at: At, request: InviteRequest): Promise<InviteView> {
  return call(`${path(at)}/invites`, withBody('POST', request));
}

export function fetchInvites(at: At, signal: AbortSignal): Promise<OpenInvite[]> {
  return call(`${path(at)}/invites`, { signal });
}

/** Takes an invitation back. @param id Its id from the list. */
export function revokeInvite(at: At, id: string): Promise<unknown> {
  return call(`${path(at)}/invites/${encodeURIComponent(id)}`, { method: 'DELETE' });
}

/** Ends a person's access; also one's own. */
export function removeMember(at: At, personId: string): Promise<unknown> {
  return call(`${path(at)}/members/${encodeURIComponent(personId)}`, { method: 'DELETE' });
}

/** Makes a member something else there. */
export function changeRole(at: At, personId: string, role: MemberRole): Promise<unknown> {
  return call(`${path(at)}/members/${encodeURIComponent(personId)}`, withBody('PATCH', { role }));
}

/** Makes a group; whoever makes it owns it. */
export function createGroup(name: string): Promise<{ id: string }> {
  return call('/api/groups', withBody('POST', { name }));
}

/** Deletes a group; its boards stay with whoever made them. */
export function deleteGroup(groupId: string): Promise<unknown> {
  return call(path({ groupId }), { method: 'DELETE' });
}

/** What was said about each use of each painter's pictures, as far as one may see it. */
export function fetchConsents(boardId: string, signal: AbortSignal): Promise<ConsentView[]> {
  return call(`${path({ boardId })}/consents`, { signal });
}

/** Gives or withdraws consent for oneself, or for a minor one guards. */
export function sayConsent(
  boardId: string,
  personId: string,
  use: ConsentUse,
  given: boolean,
): Promise<unknown> {
  return call(
    `${path({ boardId })}/consents/${encodeURIComponent(personId)}/${use}`,
    withBody('PUT', { given }),
  );
}
