'use client';
/** One plane of the list: chosen by a press; chosen, it opens its name, kind, order. In the flow: plane-list -> row. */
import { type KeyboardEvent, useEffect, useState } from 'react';
import { linePattern } from '#app/_easel/line-pattern.ts';
import { troubleOf } from '#app/_easel/outline-trouble.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { outlineHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { PLANE_KINDS, PLANE_TILTS } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import { PlaneTrust } from './plane-trust.tsx';
import styles from './planes.module.css';
import type { useDragOrder } from './use-drag-order.ts';

interface PlaneRowProps {
  plane: PlaneView;
  last: boolean;
  dragged: boolean;
  dropBefore: boolean;
  dropAfter: boolean;
  grip: ReturnType<ReturnType<typeof useDragOrder>['gripFor']>;
  remove(): void;
}

export function PlaneRow({ plane, last, dragged, dropBefore, dropAfter, grip, remove }: PlaneRowProps) {
  const { may, write } = useBoardLive();
  const { planeId, setPlaneId } = useTools();
  const chosen = planeId === plane.id;
  const place = useWhere(plane.id);
  const holder = useHolder(plane.id);
  const where = holder ? words.outline.movedBy(holder) : place;
  /** Alt with an arrow moves the plane, wherever in its row the focus is. */
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.altKey ? { ArrowUp: -1, ArrowDown: 1 }[event.key] : undefined;
    if (!by || !may.setup) return;
    event.preventDefault();
    write.movePlane(plane.id, Math.max(0, plane.number - 1 + by));
  };
  return (
    <li
      className={styles.row}
      data-chosen={chosen || undefined}
      data-dragged={dragged || undefined}
      data-drop={dropBefore ? 'before' : dropAfter ? 'after' : undefined}
      onKeyDown={onKeyDown}
    >
      <div className={styles.head}>
        <button
          type="button"
          className={styles.choose}
          aria-expanded={chosen}
          aria-label={words.planes.choose(plane.number, plane.name, where)}
          onClick={() => setPlaneId(chosen ? null : plane.id)}
        >
          <LineSample number={plane.number} />
          <span className={styles.number}>{plane.number}</span>
          <span className={styles.name}>{plane.name}</span>
          <span className={styles.where}>
            {plane.unreliable && !holder ? words.planes.unreliable : where}
          </span>
        </button>
        {may.setup ? (
          <span className={styles.grip} title={words.planes.drag(plane.name)} aria-hidden="true" {...grip} />
        ) : null}
      </div>
      {chosen && may.setup ? <PlaneFields plane={plane} last={last} remove={remove} /> : null}
      {chosen ? <PlaneTrust plane={plane} /> : null}
    </li>
  );
}

/** How its line is drawn on the pictures. */
function LineSample({ number }: { number: number }) {
  const { dashes, core, casing } = linePattern(number);
  return (
    <svg className={styles.sample} viewBox="0 0 44 8" aria-hidden="true">
      <path d="M2 4H42" stroke={casing} strokeWidth={5} strokeLinecap="round" />
      <path d="M2 4H42" stroke={core} strokeWidth={2.5} strokeDasharray={dashes} strokeLinecap="round" />
    </svg>
  );
}

/** Where the plane is outlined, of the pictures on the easel. */
function useWhere(planeId: string): string {
  const { outlinesOf } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const there = referenceId !== null && outlinesOf(referenceId).has(planeId);
  const here = paintingId !== null && outlinesOf(paintingId).has(planeId);
  if (!there && !here) return words.planes.nowhere;
  if (there && here) return words.planes.onBoth;
  if (referenceId === null || paintingId === null) return words.planes.outlined;
  return there ? words.planes.onReference : words.planes.onPainting;
}

/** Who else has hold of its outline on one of the pictures of the easel just now, or null. */
function useHolder(planeId: string): string | null {
  const { heldBy } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const on = (pictureId: string | null) => pictureId && heldBy(outlineHold(pictureId, planeId));
  return on(referenceId) || on(paintingId) || null;
}

function PlaneFields({ plane, last, remove }: { plane: PlaneView; last: boolean; remove(): void }) {
  const { write } = useBoardLive();
  return (
    <div className={styles.fields}>
      <NameField key={plane.name} plane={plane} />
      <label className={styles.field}>
        <span>{words.planes.kind}</span>
        <select
          value={plane.kind}
          onChange={({ target }) => {
            const kind = PLANE_KINDS.find((each) => each === target.value);
            if (kind) write.changePlane(plane.id, { kind });
          }}
        >
          {PLANE_KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {words.planes.kinds[kind]}
            </option>
          ))}
        </select>
      </label>
      <label className={styles.field}>
        <span>{words.planes.tilt}</span>
        <select
          value={plane.tilt ?? ''}
          onChange={({ target }) =>
            write.changePlane(plane.id, { tilt: PLANE_TILTS.find((each) => each === target.value) ?? null })
          }
        >
          <option value="">{words.planes.noTilt}</option>
          {PLANE_TILTS.map((tilt) => (
            <option key={tilt} value={tilt}>
              {words.planes.tilts[tilt]}
            </option>
          ))}
        </select>
      </label>
      <div className={styles.moves}>
        <button
          type="button"
          disabled={plane.number === 1}
          aria-label={words.planes.farther(plane.name)}
          title="Alt ↑"
          onClick={() => write.movePlane(plane.id, plane.number - 2)}
        >
          {words.planes.fartherShort}
        </button>
        <button
          type="button"
          disabled={last}
          aria-label={words.planes.nearer(plane.name)}
          title="Alt ↓"
          onClick={() => write.movePlane(plane.id, plane.number)}
        >
          {words.planes.nearerShort}
        </button>
        <button type="button" aria-label={words.planes.remove(plane.name)} onClick={remove}>
          {words.planes.removeShort}
        </button>
      </div>
    </div>
  );
}

/** The name, stored when the hand leaves the field or presses Enter. */
function NameField({ plane }: { plane: PlaneView }) {
  const { write } = useBoardLive();
  const [name, setName] = useState(plane.name);
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => setName(plane.name), [plane.name]);
  const keep = () => {
    if (name.trim() === plane.name) return;
    setTrouble(troubleOf(() => write.changePlane(plane.id, { name })));
  };
  return (
    <>
      <label className={styles.field}>
        <span>{words.planes.nameShort}</span>
        <input
          value={name}
          maxLength={80}
          onChange={(event) => setName(event.target.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
          }}
        />
      </label>
      {trouble ? <p role="alert">{trouble}</p> : null}
    </>
  );
}
