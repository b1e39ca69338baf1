/** Calls about a board's wall. In the flow: wall's page -> [wall] -> app/api. IO: HTTP to the same origin. */
import type { OneThing, WallView, WallWork } from '#server/core/contract/wall.ts';
import { call, withBody } from './client.ts';

const wall = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}/wall`;

export function fetchWall(boardId: string): Promise<WallView> {
  return call(wall(boardId));
}

/** How a painting lies in its photograph. */
export function fetchWork(boardId: string, pictureId: string, signal: AbortSignal): Promise<WallWork> {
  return call(`${wall(boardId)}/${encodeURIComponent(pictureId)}`, { signal });
}

/** Puts one thing to try on a painting, as a remark of one's own. */
export function sayOneThing(boardId: string, pictureId: string, thing: OneThing): Promise<{ id: string }> {
  return call(`${wall(boardId)}/${encodeURIComponent(pictureId)}`, withBody('POST', thing));
}
