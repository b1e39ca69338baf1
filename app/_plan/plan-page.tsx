'use client';
/**
 * The plan of one board: its live `setup` room and class, the photograph that is planned from, the screen.
 *
 * In the flow: page -> [plan-page] -> plan-screen. It keeps the board as last fetched and fetches it again whenever the
 * server says that pictures or people changed. IO: HTTP, live rooms.
 */
import { useCallback, useEffect, useState } from 'react';
import { fetchBoard, Refused } from '#app/_api/client.ts';
import { BoardLiveProvider, useBoardLive } from '#app/_live/board-live.tsx';
import { useRestWhenIdle } from '#app/_ui/late.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { PlannedLadderProvider } from './ladder/planned-ladder.tsx';
import { PlanChoiceProvider } from './plan-choice.tsx';
import { PlanDocumentProvider } from './plan-document.tsx';
import { PlanScreen } from './plan-screen.tsx';
import { RearrangingProvider } from './rearrange/rearranging.tsx';
import { StageProvider } from './stage/stage-context.tsx';
import { RearrangedProvider } from './weight/rearranged.tsx';

/** Marks are not shown here, and may be many. */
const ROOMS = ['class', 'setup'] as const;

interface PlanPageProps {
  board: BoardView;
  /** Whether a class keeps references and figures back as the page is made. */
  veiled: boolean;
  /** The photograph that the address names, or null. */
  askedId: string | null;
}

export function PlanPage({ board: first, veiled, askedId }: PlanPageProps) {
  const [board, setBoard] = useState(first);
  const [gone, setGone] = useState<string | null>(null);
  useRestWhenIdle();
  const refresh = useCallback(async () => {
    try {
      setBoard(await fetchBoard(first.id));
    } catch (thrown) {
      // Without an answer the board stays as it is; the line's own state says so.
      if (thrown instanceof Refused && thrown.code !== 'no-answer') setGone(thrown.message);
    }
  }, [first.id]);
  return (
    <BoardLiveProvider board={board} veiled={veiled} rooms={ROOMS}>
      <Followed refresh={refresh} />
      <PlanChoiceProvider askedId={askedId}>
        <PlanDocumentProvider>
          <RearrangedProvider>
            <PlannedLadderProvider>
              <RearrangingProvider>
                <StageProvider>
                  <PlanScreen gone={gone} />
                </StageProvider>
              </RearrangingProvider>
            </PlannedLadderProvider>
          </RearrangedProvider>
        </PlanDocumentProvider>
      </PlanChoiceProvider>
    </BoardLiveProvider>
  );
}

function Followed({ refresh }: { refresh(): Promise<void> }) {
  const { boardChanged } = useBoardLive();
  useEffect(() => {
    if (boardChanged > 0) void refresh();
  }, [boardChanged, refresh]);
  return null;
}
