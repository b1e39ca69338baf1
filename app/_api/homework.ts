/** Calls about homework and sheets. In the flow: component -> [homework] -> app/api. IO: HTTP to the same origin. */

import type { HomeworkView } from '#server/core/contract/homework.ts';
import type { HomeworkChange, HomeworkRequest } from '#server/core/contract/homework-requests.ts';
import type { Paper, SheetKind } from '#server/core/sheet/content.ts';
import { words } from '#words/shell.ts';
import { call, Refused, refusedFrom, withBody } from './client.ts';

const board = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}`;
const homework = (boardId: string, id: string) => `${board(boardId)}/homework/${encodeURIComponent(id)}`;

export function fetchHomework(boardId: string): Promise<HomeworkView[]> {
  return call(`${board(boardId)}/homework`);
}

export function setHomework(boardId: string, request: HomeworkRequest): Promise<{ id: string }> {
  return call(`${board(boardId)}/homework`, withBody('POST', request));
}

export function changeHomework(boardId: string, id: string, change: HomeworkChange): Promise<unknown> {
  return call(homework(boardId, id), withBody('PATCH', change));
}

export function takeHomeworkBack(boardId: string, id: string): Promise<unknown> {
  return call(homework(boardId, id), { method: 'DELETE' });
}

/** Which sheet: of a painting's critique, or of the plan of a photograph. */
export type SheetOf = { about: 'critique' | 'plan'; pictureId: string };

/** A sheet as a file with the name that the server gives it. @throws Refused with the sentence to show. */
export async function fetchSheet(
  boardId: string,
  { about, pictureId }: SheetOf,
  { as, paper }: { as: SheetKind; paper: Paper },
): Promise<File> {
  const picture = encodeURIComponent(pictureId);
  const path = about === 'plan' ? `plan/${picture}/sheet` : `pictures/${picture}/sheet`;
  let response: Response;
  try {
    response = await fetch(`${board(boardId)}/${path}?as=${as}&paper=${paper}`, { cache: 'no-store' });
  } catch (cause) {
    throw new Refused('no-answer', words.noAnswer, { cause });
  }
  if (!response.ok) throw refusedFrom(await response.text(), response.status);
  const named = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '');
  const bytes = await response.blob();
  return new File([bytes], named?.[1] ?? `sheet.${as}`, { type: bytes.type });
}
