'use client';
/**
 * Glare and clipping drawn over the squared painting, told apart by pattern, with their key.
 *
 * In the flow: measured document -> [capture-overlay] -> layer over a picture put right.
 */
import { useId, useMemo } from 'react';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { words } from '#words/photo.ts';
import styles from './overlay.module.css';
import { type OverlayKind, overlayShapes } from './overlay-shapes.ts';
import { usePhotoDesk } from './photo-desk.tsx';

const KINDS: readonly OverlayKind[] = ['glare', 'blown', 'crushed'];

/** What marks a kind: dots are glare, slanting lines lights that ran out, crossed ones darks that did. */
function Pattern({ id, kind, cell }: { id: string; kind: OverlayKind; cell: number }) {
  const side = 10 * cell;
  const line = { fill: 'none', strokeWidth: 2 * cell, stroke: 'var(--over-light)' };
  const casing = { ...line, strokeWidth: 4.4 * cell, stroke: 'var(--over-dark)' };
  const path = {
    glare: '',
    blown: `M${-cell} ${cell}l${2 * cell} ${-2 * cell}M0 ${side}L${side} 0M${side - cell} ${side + cell}l${2 * cell} ${-2 * cell}`,
    crushed: `M0 0L${side} ${side}M0 ${side}L${side} 0`,
  }[kind];
  return (
    <pattern id={id} width={side} height={side} patternUnits="userSpaceOnUse">
      {kind === 'glare' ? (
        <>
          <circle cx={side / 2} cy={side / 2} r={3.6 * cell} fill="var(--over-dark)" />
          <circle cx={side / 2} cy={side / 2} r={2.3 * cell} fill="var(--over-light)" />
        </>
      ) : (
        <>
          <path d={path} {...casing} />
          <path d={path} {...line} />
        </>
      )}
    </pattern>
  );
}

/** Over the picture put right; nothing while it is switched off or there is nothing to show. */
export function CaptureOverlay() {
  const { overlayShown, inHand } = usePhotoDesk();
  const { document, pending } = useBoardMeasures();
  const id = useId();
  const overlay = document?.capture.overlay ?? null;
  const shapes = useMemo(() => overlay && overlayShapes(overlay), [overlay]);
  // While corners move, the last overlay lies where they were.
  if (!overlayShown || !overlay || !shapes || inHand || pending) return null;
  // One pattern unit is as large in a low overlay as in a high one: about a 500th of the picture's width.
  const cell = overlay.columns / 500;
  return (
    <svg
      className={styles.overlay}
      viewBox={`0 0 ${overlay.columns} ${overlay.rows}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <defs>
        {KINDS.map((kind) => (
          <Pattern key={kind} id={`${id}-${kind}`} kind={kind} cell={cell} />
        ))}
      </defs>
      {KINDS.map((kind) =>
        shapes[kind].path ? <path key={kind} d={shapes[kind].path} fill={`url(#${id}-${kind})`} /> : null,
      )}
    </svg>
  );
}

/** What each pattern means and how much of the painting it covers. */
export function OverlayKey() {
  const { document } = useBoardMeasures();
  const id = useId();
  const overlay = document?.capture.overlay ?? null;
  const shapes = useMemo(() => overlay && overlayShapes(overlay), [overlay]);
  if (!shapes) return <p>{words.overlay.nothing}</p>;
  const shares = {
    ...shapes,
    glare: { ...shapes.glare, share: document?.capture.glareShare ?? shapes.glare.share },
  };
  return (
    <ul className={styles.key} aria-label={words.overlay.key}>
      {KINDS.filter((kind) => shapes[kind].path !== '').map((kind) => (
        <li key={kind}>
          <svg className={styles.swatch} viewBox="0 0 20 20" aria-hidden="true">
            <defs>
              <Pattern id={`${id}-${kind}`} kind={kind} cell={1} />
            </defs>
            <rect width="20" height="20" fill={`url(#${id}-${kind})`} />
          </svg>
          {words.overlay[kind](shares[kind].share)}
        </li>
      ))}
    </ul>
  );
}
