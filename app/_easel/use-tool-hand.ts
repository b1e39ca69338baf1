'use client';
/**
 * The hand of the tool that is held. Parts of a tool, whose scripts come when it is first taken up, give their hand here;
 * what was tapped, pressed or dragged until then is done once the tool's own hand is there (`meanwhile.ts`).
 *
 * In the flow: part of a tool -> `give` -> [use-tool-hand] -> stage.
 */
import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Tool } from '#app/_workspace/tools.ts';
import type { Hand } from './hand.ts';
import { Meanwhile } from './meanwhile.ts';
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

export function useToolHand(tool: Tool): ToolHand {
  const look = useLookHand();
  const given = useRef<{ tool: Tool; hand: Hand } | null>(null);
  const [meanwhile] = useState(() => new Meanwhile());
  const [, setSeen] = useState('');
  const ownNow = useCallback(() => (given.current?.tool === tool ? given.current.hand : null), [tool]);
  const catchUp = useCallback(() => {
    // One at a time: the next is done by the hand as this one leaves it.
    for (let own = ownNow(), more = true; own && more; own = ownNow()) {
      const hand = own;
      flushSync(() => {
        more = meanwhile.next(hand);
      });
    }
  }, [meanwhile, ownNow]);
  const give = useCallback(
    (hand: Hand) => {
      given.current = { tool, hand };
      setSeen(seenOf(tool, hand));
      // Not in the midst of a drawing.
      if (meanwhile.holds) queueMicrotask(catchUp);
    },
    [tool, meanwhile, catchUp],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was meant for one tool is not done by the next.
  useLayoutEffect(() => () => meanwhile.forget(), [meanwhile, tool]);
  const idle = useRef(look);
  idle.current = tool === 'look' ? look : meanwhile.hand(look.keysHint);
  const handNow = useCallback(() => (meanwhile.holds ? null : ownNow()) ?? idle.current, [meanwhile, ownNow]);
  const own = ownNow();
  return { hand: own ?? idle.current, handNow, there: own !== null, give };
}

/** For a tool's part: gives its hand as it is now drawn. */
export function useGiveHand(give: ToolHand['give'], hand: Hand): void {
  useLayoutEffect(() => give(hand));
}
