'use client';
/**
 * The tools as a class leaves them: in a silent look everybody has the painting of the turn before them, and while the
 * reference is kept back there is none on the easel and no tool that reads colours.
 *
 * In the flow: live class -> [class-tools] -> every part that asks for tools. Whoever looked at something else before finds
 * it again afterwards. Each new turn brings its painting to everybody once.
 */
import { type ReactNode, useEffect, useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { Tool } from '#app/_workspace/tools.ts';
import { ToolsHere, useAllTools } from '#app/_workspace/tools-here.tsx';

/** Tools that show no figure. */
const PLAIN: readonly Tool[] = ['look', 'mark', 'focus'];

export function ClassTools({ children }: { children: ReactNode }) {
  const live = useBoardLive();
  const { veiled, silentId, state, known } = live.class;
  const tools = useAllTools();
  const turnOf = state.now?.pictureId ?? null;
  const { setPaintingId, setSide, setTool, hand } = tools;
  useEffect(() => {
    if (turnOf === null) return;
    // Not of one's own hand: whoever looks with somebody still does.
    hand.quietly(() => {
      setPaintingId(turnOf);
      setSide('painting');
    });
  }, [turnOf, setPaintingId, setSide, hand]);
  const step = state.now?.step ?? null;
  useEffect(() => {
    if (step === null) return;
    setTool('look');
    hand.quietly(() => setSide(step === 'reference' ? 'reference' : 'painting'));
  }, [step, setTool, setSide, hand]);
  const paintingId = silentId ?? (veiled && !known ? null : tools.paintingId);
  const shown = useMemo(() => {
    if (!veiled) return tools;
    const mayHold = (tool: Tool) => PLAIN.includes(tool) && (silentId === null || tool === 'look');
    return {
      ...tools,
      tool: mayHold(tools.tool) ? tools.tool : ('look' as const),
      setTool: (tool: Tool) => tools.setTool(mayHold(tool) ? tool : 'look'),
      referenceId: null,
      paintingId,
      arrange: 'beside' as const,
      side: 'painting' as const,
    };
  }, [tools, veiled, silentId, paintingId]);
  return <ToolsHere tools={shown}>{children}</ToolsHere>;
}
