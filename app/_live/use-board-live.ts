'use client';
/**
 * The hooks by which the parts of the board screen read and write the live board.
 *
 * In the flow: BoardLiveProvider -> [useBoardLive] -> easel, planes, ladder, talk.
 */
import { createContext, useContext } from 'react';
import type { BoardLive } from './board-live-types.ts';

export const BoardLiveContext = createContext<BoardLive | null>(null);

/** @throws Error outside a `BoardLiveProvider`: a bug. */
export function useBoardLive(): BoardLive {
  const live = useContext(BoardLiveContext);
  if (!live) throw new Error('useBoardLive needs a BoardLiveProvider above it.');
  return live;
}
