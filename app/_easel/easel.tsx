'use client';
/**
 * The easel: reference and painting next to each other, or one over the other with an edge to drag, panned and
 * zoomed as one; under them what the hand needs just now.
 *
 * In the flow: workspace -> [easel] -> pictures, bar.
 */
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { useBoardLive, usePaintingRoom } from '#app/_live/board-live.tsx';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import styles from './easel.module.css';
import { EaselBar } from './easel-bar.tsx';
import { EaselPicture } from './easel-picture.tsx';
import { EaselStateProvider, useEasel } from './easel-state.tsx';
import { squaredFrameOf } from './squared-frame.ts';
import { usePreview } from './use-preview.ts';
import { ViewButtons } from './view-buttons.tsx';
import { WipeEdge } from './wipe-edge.tsx';

export function Easel() {
  return (
    <EaselStateProvider>
      <Pictures />
    </EaselStateProvider>
  );
}

function Pictures() {
  const { board } = useBoardLive();
  const { referenceId, paintingId, arrange, side } = useTools();
  const [edge, setEdge] = useState(0.5);
  usePaintingRoom(paintingId);
  useUndoKeys();
  useDropsWithTool();
  usePreview();
  const reference = board.pictures.find(({ id }) => id === referenceId) ?? null;
  const painting = board.pictures.find(({ id }) => id === paintingId) ?? null;
  const over = arrange === 'over' && reference !== null && painting !== null;
  const share = `${edge * 100}%`;
  return (
    <section className={styles.easel} aria-label={words.easel.label}>
      <div className={styles.pictures} data-arrange={over ? 'over' : 'beside'} data-side={side}>
        {reference ? (
          <OnEasel picture={reference} {...(over ? { clip: `inset(0 calc(100% - ${share}) 0 0)` } : {})} />
        ) : (
          <Nothing>{painting ? words.easel.fromLife : words.easel.noPictures}</Nothing>
        )}
        {painting ? (
          <OnEasel picture={painting} {...(over ? { clip: `inset(0 0 0 ${share})` } : {})} />
        ) : reference ? (
          <Nothing>{words.easel.noPainting}</Nothing>
        ) : null}
        {over ? <WipeEdge edge={edge} setEdge={setEdge} /> : null}
      </div>
      <EaselBar reference={reference} painting={painting} />
      <ViewButtons />
    </section>
  );
}

function Nothing({ children }: { children: ReactNode }) {
  return (
    <div className={styles.place}>
      <p className={styles.nothing}>{children}</p>
    </div>
  );
}

/** One picture in its place with its caption. */
function OnEasel({ picture, clip }: { picture: PictureView; clip?: string }) {
  const { photoOf } = useBoardLive();
  const { setSide } = useTools();
  const { squared } = useEasel();
  const { width, height, kind } = picture;
  const photo = kind === 'painting' ? photoOf(picture.id) : null;
  const frame = useMemo(
    () => (squared && photo ? squaredFrameOf(photo, { width, height }) : null),
    [squared, photo, width, height],
  );
  const label =
    kind === 'reference'
      ? words.easel.reference(picture.painter.name)
      : words.easel.painting(picture.painter.name);
  return (
    <figure className={styles.place} data-kind={kind}>
      <div className={styles.window}>
        <EaselPicture
          key={picture.id}
          picture={picture}
          label={picture.caption ? `${label}: ${picture.caption}` : label}
          squared={frame}
          swipe={(towards) => setSide(towards === 'left' ? 'painting' : 'reference')}
          {...(clip ? { clip } : {})}
        />
      </div>
      <figcaption className={styles.caption}>
        <strong>{kind === 'reference' ? words.easel.referenceShort : words.easel.paintingShort}</strong>
        {picture.caption ? <span>{picture.caption}</span> : null}
        {kind === 'painting' ? <span>{picture.painter.name}</span> : null}
        {picture.credit ? <span>{picture.credit}</span> : null}
      </figcaption>
    </figure>
  );
}

/** Undo and redo by the usual keys, but not while somebody types. */
function useUndoKeys(): void {
  const { undo, redo } = useBoardLive();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLElement && event.target.closest('input, textarea, select');
      if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [undo, redo]);
}

/** Another tool, plane or picture: what was begun with the last one is dropped. */
function useDropsWithTool(): void {
  const { tool, planeId, referenceId, paintingId } = useTools();
  const { setDraft, setPin, setSentence } = useEasel();
  // biome-ignore lint/correctness/useExhaustiveDependencies: these changes are what ends the work of the hand.
  useEffect(() => {
    setDraft(null);
    setPin(null);
    setSentence(null);
  }, [tool, planeId, referenceId, paintingId, setDraft, setPin, setSentence]);
}
