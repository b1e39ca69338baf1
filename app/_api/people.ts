/**
 * Calls about people: accounts, links to come back by, what a member is.
 *
 * In the flow: component -> [people] -> app/api. IO: HTTP to the same origin.
 */
import type { AccountRequest } from '#server/core/contract/requests.ts';
import type { AccountView, PersonView, ReturnLinkView } from '#server/core/contract/responses.ts';
import type { MemberRole } from '#server/core/contract/roles.ts';
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

/** Makes a member something else on one board. */
export function changeRole(boardId: string, personId: string, role: MemberRole): Promise<unknown> {
  const path = `/api/boards/${encodeURIComponent(boardId)}/members/${encodeURIComponent(personId)}`;
  return call(path, withBody('PATCH', { role }));
}
