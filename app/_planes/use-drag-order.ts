'use client';
/** Dragging a row of a list to another place. In the flow: pointer on a grip -> [use-drag-order] -> `move`. */
import { type PointerEvent, type RefObject, useRef, useState } from 'react';

interface DragOrder {
  list: RefObject<HTMLOListElement | null>;
  /** Index of the row in hand, or null. */
  from: number | null;
  /** The row would stand before this one; the number of rows = at the end; null = nothing would change. */
  mark: number | null;
  gripFor(at: number): {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
  };
}

/** @param move Called with the row's index before and after. */
export function useDragOrder(count: number, move: (from: number, to: number) => void): DragOrder {
  const list = useRef<HTMLOListElement>(null);
  const [drag, setDrag] = useState<{ from: number; before: number } | null>(null);

  /** The row before which the pointer stands. */
  const beforeAt = (clientY: number): number => {
    const rows = [...(list.current?.children ?? [])];
    const at = rows.findIndex((row) => {
      const box = row.getBoundingClientRect();
      return clientY < box.top + box.height / 2;
    });
    return at < 0 ? count : at;
  };
  const drop = () => {
    if (drag) {
      const to = drag.before > drag.from ? drag.before - 1 : drag.before;
      if (to !== drag.from) move(drag.from, to);
    }
    setDrag(null);
  };
  const moves = drag !== null && drag.before !== drag.from && drag.before !== drag.from + 1;
  return {
    list,
    from: drag?.from ?? null,
    mark: moves ? drag.before : null,
    gripFor: (at) => ({
      onPointerDown(event) {
        event.currentTarget.setPointerCapture(event.pointerId);
        setDrag({ from: at, before: at });
      },
      onPointerMove(event) {
        if (drag) setDrag({ ...drag, before: beforeAt(event.clientY) });
      },
      onPointerUp: drop,
      onPointerCancel: () => setDrag(null),
    }),
  };
}
