/** Calls about the states of one painting. In the flow: component -> [states] -> app/api. IO: HTTP to the same origin. */
import type { StatesView } from '#server/core/contract/states.ts';
import { call, withBody } from './client.ts';

const states = (boardId: string, pictureId: string) =>
  `/api/boards/${encodeURIComponent(boardId)}/states/${encodeURIComponent(pictureId)}`;

export function fetchStates(boardId: string, pictureId: string): Promise<StatesView> {
  return call(states(boardId, pictureId));
}

/** Null opens the card again. */
export function settleCard(
  boardId: string,
  card: { pictureId: string; key: string },
  state: 'done' | 'carried' | null,
): Promise<unknown> {
  const path = `${states(boardId, card.pictureId)}/cards/${encodeURIComponent(card.key)}`;
  return call(path, withBody('PUT', { state }));
}

/** Takes over the planes of the state before. */
export function takeOverPlanes(boardId: string, pictureId: string): Promise<{ planes: number }> {
  return call(`${states(boardId, pictureId)}/planes`, { method: 'POST' });
}

/** Where the bytes lie of a later state laid on an earlier one. */
export function statePictureAddress(
  boardId: string,
  pair: { from: string; to: string },
  which: 'before' | 'after' | 'change',
): string {
  return `${states(boardId, pair.to)}/pictures/${which}?from=${encodeURIComponent(pair.from)}`;
}
