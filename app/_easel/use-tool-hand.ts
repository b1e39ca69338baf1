'use client';
/**
 * The hand of the tool that is held. Parts of a tool, whose scripts come when it is first taken up, give their hand here;
 * until then the hand moves the picture about, and what was tapped meanwhile is done once the tool's own hand is there.
 *
 * In the flow: part of a tool -> `give` -> [use-tool-hand] -> stage.
 */
import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import type { Tool } from '#app/_workspace/tools.ts';
import type { Hand } from './hand.ts';
import { useLookHand } from './use-look-hand.ts';

export interface ToolHand {
  /** As of the last drawing: for what is seen of it. */
  hand: Hand;
  /** As of now: for what it does. */
  handNow(): Hand;
  /** Whether the tool's own hand is there. */
  there: boolean;
  /** Told by the tool's part with each of its drawings. */
  give(hand: Hand): void;
}

/** What of a hand shows before it does anything; only when this changes is the picture drawn again. */
const seenOf = (tool: Tool, { cursor, crosshair, keysHint, drag }: Hand) =>
  [tool, cursor, crosshair, keysHint, drag !== undefined].join('\n');

type Act = (hand: Hand) => void;

/** Moves the picture about, and remembers what was meant for the tool's own hand. */
function waitingHand(look: Hand, remember: (act: Act) => void): Hand {
  return {
    ...look,
    tap: (at, twice) => remember((hand) => hand.tap?.(at, twice)),
    key(key, crosshair, shift) {
      if (key !== ' ' && key !== 'Enter') return false;
      remember((hand) => hand.key?.(key, crosshair, shift));
      return true;
    },
  };
}

export function useToolHand(tool: Tool): ToolHand {
  const look = useLookHand();
  const given = useRef<{ tool: Tool; hand: Hand } | null>(null);
  const waiting = useRef<Act[]>([]);
  const [, setSeen] = useState('');
  const give = useCallback(
    (hand: Hand) => {
      given.current = { tool, hand };
      setSeen(seenOf(tool, hand));
      // One at a time: the next is done by the hand as this one leaves it.
      waiting.current.shift()?.(hand);
    },
    [tool],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was meant for one tool is not done by the next.
  useLayoutEffect(() => () => void waiting.current.splice(0), [tool]);
  const there = given.current?.tool === tool;
  const idle = useRef(look);
  idle.current = tool === 'look' ? look : waitingHand(look, (act) => waiting.current.push(act));
  const handNow = useCallback(() => {
    return given.current?.tool === tool ? given.current.hand : idle.current;
  }, [tool]);
  return { hand: handNow(), handNow, there, give };
}

/** For a tool's part: gives its hand as it is now drawn. */
export function useGiveHand(give: ToolHand['give'], hand: Hand): void {
  useLayoutEffect(() => give(hand));
}
