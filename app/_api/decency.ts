/**
 * Calls about decency: reports, blocks, the school setting, whose a board is.
 *
 * In the flow: component -> [decency] -> app/api. IO: HTTP to the same origin.
 */
import type { OverView, ReportAct, Reported, ReportView } from '#server/core/contract/decency.ts';
import type { PersonView } from '#server/core/contract/responses.ts';
import type { SchoolRules } from '#server/core/contract/school.ts';
import { call, withBody } from './client.ts';

const board = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}`;
const group = (groupId: string) => `/api/groups/${encodeURIComponent(groupId)}`;

export function report(boardId: string, about: Reported, id: string, words: string): Promise<{ id: string }> {
  return call(`${board(boardId)}/reports`, withBody('POST', { about, id, words }));
}

export function closeReport(
  { board: { id: boardId }, id }: ReportView,
  act: ReportAct,
  note: string,
): Promise<unknown> {
  return call(`${board(boardId)}/reports/${encodeURIComponent(id)}`, withBody('POST', { act, note }));
}

export function blockPerson(boardId: string, personId: string): Promise<unknown> {
  return call(`${board(boardId)}/blocks/${encodeURIComponent(personId)}`, { method: 'PUT' });
}

export function fetchBlocks(signal: AbortSignal): Promise<PersonView[]> {
  return call('/api/blocks', { signal });
}

export function unblockPerson(personId: string): Promise<unknown> {
  return call(`/api/blocks/${encodeURIComponent(personId)}`, { method: 'DELETE' });
}

/** @param groupId Null = of the whole server. */
export function setSchool(groupId: string | null, rules: SchoolRules): Promise<unknown> {
  return call(groupId === null ? '/api/school' : `${group(groupId)}/school`, withBody('PUT', rules));
}

export function moveBoard(boardId: string, groupId: string | null): Promise<unknown> {
  return call(`${board(boardId)}/group`, withBody('PUT', { group: groupId }));
}

export function handBoardOn(boardId: string, personId: string): Promise<unknown> {
  return call(`${board(boardId)}/owner`, withBody('PUT', { person: personId }));
}

export function countOver(boardId: string): Promise<OverView> {
  return call(`${board(boardId)}/over`);
}

export function sayOver(boardId: string): Promise<unknown> {
  return call(`${board(boardId)}/over`, { method: 'POST' });
}

export function renameGroup(groupId: string, name: string): Promise<unknown> {
  return call(group(groupId), withBody('PATCH', { name }));
}
