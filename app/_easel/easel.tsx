'use client';
/**
 * The easel: reference and painting next to each other, or one over the other with an edge to drag, panned and
 * zoomed as one; under them the tray, then what the hand needs just now. The pictures keep their height whatever that is.
 *
 * In the flow: workspace -> [easel] -> pictures, bar.
 */
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { useBoardLive, usePaintingRoom } from '#app/_live/board-live.tsx';
import { NineScale } from '#app/_look/nine-scale.tsx';
import { useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { CaptureCaption } from '#app/_photo/capture-caption.tsx';
import { isCorrected, usePhotoDesk } from '#app/_photo/photo-desk.tsx';
import { useLookTogether } from '#app/_together/use-look-together.ts';
import { useOwn } from '#app/_together/use-own.ts';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { words } from '#words/easel.ts';
import { lightWords, notedWords } from '#words/noted.ts';
import styles from './easel.module.css';
import { EaselBar } from './easel-bar.tsx';
import { EaselPicture } from './easel-picture.tsx';
import { EaselStateProvider, useEasel } from './easel-state.tsx';
import { squaredFrameOf } from './squared-frame.ts';
import { usePreview } from './use-preview.ts';
import { useViewAsLooked } from './use-view-as-looked.ts';
import { ViewButtons } from './view-buttons.tsx';
import { WipeEdge } from './wipe-edge.tsx';

const RightedPlace = late(() =>
  import('#app/_photo/righted-place.tsx').then((module) => module.RightedPlace),
);

/** @param tray What stands right under the pictures: tools and ways of looking. */
export function Easel({ tray }: { tray: ReactNode }) {
  const { board } = useBoardLive();
  return (
    <EaselStateProvider boardId={board.id}>
      <Pictures tray={tray} />
    </EaselStateProvider>
  );
}

function Pictures({ tray }: { tray: ReactNode }) {
  const { board, class: inClass } = useBoardLive();
  const { veiled } = inClass;
  const { hand, referenceId, paintingId, arrange, side } = useTools();
  const [edge, wantEdge] = useState(0.5);
  const setEdge = useOwn(hand, wantEdge);
  usePaintingRoom(paintingId);
  const reference = board.pictures.find(({ id }) => id === referenceId) ?? null;
  const painting = board.pictures.find(({ id }) => id === paintingId) ?? null;
  const putting = usePutting(painting);
  const over = arrange === 'over' && reference !== null && painting !== null && putting === null;
  const share = `${edge * 100}%`;
  return (
    <section className={styles.easel} aria-label={words.easel.label}>
      <div
        className={styles.pictures}
        data-arrange={over ? 'over' : 'beside'}
        data-side={putting ? 'painting' : side}
        data-putting={putting?.narrow}
      >
        {putting?.beside ? (
          <RightedPlace />
        ) : veiled ? null : (
          <ReferencePlace
            reference={reference}
            painting={painting}
            {...(over ? { clip: `inset(0 calc(100% - ${share}) 0 0)` } : {})}
          />
        )}
        <PaintingPlace
          reference={reference}
          painting={painting}
          {...(over ? { clip: `inset(0 0 0 ${share})` } : {})}
        />
        {over ? <WipeEdge edge={edge} setEdge={setEdge} /> : null}
      </div>
      <Listening edge={edge} setEdge={setEdge} />
      <EaselBar reference={reference} painting={painting} />
      <ViewButtons />
      <div className={styles.tray}>{tray}</div>
    </section>
  );
}

/** What follows every tool and every look, and draws nothing: apart, so that the pictures are left alone meanwhile. */
function Listening({ edge, setEdge }: { edge: number; setEdge(edge: number): void }) {
  useUndoKeys();
  useDropsWithTool();
  useViewAsLooked();
  useLookTogether({ edge, setEdge });
  usePreview();
  return null;
}

interface PlaceProps {
  reference: PictureView | null;
  painting: PictureView | null;
  clip?: string;
}

function ReferencePlace({ reference, painting, clip }: PlaceProps) {
  if (reference) return <OnEasel picture={reference} {...(clip ? { clip } : {})} />;
  return <Nothing>{painting ? words.easel.fromLife : words.easel.noPictures}</Nothing>;
}

function PaintingPlace({ reference, painting, clip }: PlaceProps) {
  if (painting) return <OnEasel picture={painting} {...(clip ? { clip } : {})} />;
  return reference ? <Nothing>{words.easel.noPainting}</Nothing> : null;
}

/** What stands where while the photo of the painting is put right; null while another tool is in hand. */
function usePutting(painting: PictureView | null): { beside: boolean; narrow: 'before' | 'after' } | null {
  const { may } = useBoardLive();
  const { tool } = useTools();
  const { beside, instead, adding, photo } = usePhotoDesk();
  const wide = useWide();
  if (tool !== 'photo' || !painting || !may.painting(painting.id)) return null;
  // The photo itself is needed while a card is set on it, and while there is nothing else to show.
  const after = instead && !adding && isCorrected(photo);
  return { beside: !wide || beside, narrow: after ? 'after' : 'before' };
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
  const { tool, setSide } = useTools();
  const { squared } = useEasel();
  const { width, height, kind } = picture;
  const photo = kind === 'painting' ? photoOf(picture.id) : null;
  // The corners are set on the photo as it came.
  const righted = squared && photo !== null && tool !== 'photo';
  const frame = useMemo(
    () => (righted && photo ? squaredFrameOf(photo, { width, height }) : null),
    [righted, photo, width, height],
  );
  const noted = [notedWords(picture), lightWords(picture)].filter(Boolean).join('. ');
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
          righted={righted}
          swipe={(towards) => setSide(towards === 'left' ? 'painting' : 'reference')}
          {...(clip ? { clip } : {})}
        />
      </div>
      <NineScale pictureId={picture.id} />
      <figcaption className={styles.caption}>
        <strong>{kind === 'reference' ? words.easel.referenceShort : words.easel.paintingShort}</strong>
        {kind === 'painting' ? <CaptureCaption /> : null}
        {picture.caption ? <span>{picture.caption}</span> : null}
        {kind === 'painting' ? <span>{picture.painter.name}</span> : null}
        {noted ? <span>{noted}</span> : null}
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
  const { kind, growing, setTaking, setLayer } = useMarkDesk();
  // biome-ignore lint/correctness/useExhaustiveDependencies: these changes are what ends the work of the hand.
  useEffect(() => {
    setDraft(null);
    setPin(null);
    setSentence(null);
    growing.set(null);
    setTaking(false);
    setLayer(null);
  }, [tool, kind, planeId, referenceId, paintingId, setDraft, setPin, setSentence]);
}
