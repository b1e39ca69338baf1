'use client';
/**
 * Two paintings large: side by side, or one over the other with an edge to pull; and one thing to try from the first.
 *
 * In the flow: wall -> [beside]. A sheet over the whole screen, closed by Escape. The surround stays the neutral grey.
 */
import { useEffect, useRef, useState } from 'react';
import { WipeEdge } from '#app/_easel/wipe-edge.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './beside.module.css';
import type { Hung } from './hung.ts';
import { LargePainting } from './large-painting.tsx';
import { OneThingForm } from './one-thing.tsx';
import type { WallLine } from './wall-line.ts';

interface BesideProps {
  boardId: string;
  hung: readonly Hung[];
  /** Letter of the painting that was tapped. */
  first: string;
  line: WallLine;
  maySay: boolean;
  onClose(): void;
}

export function Beside({ boardId, hung, first, line, maySay, onClose }: BesideProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [left, setLeft] = useState(first);
  const [right, setRight] = useState(() => hung.find(({ letter }) => letter !== first)?.letter ?? first);
  const [over, setOver] = useState(false);
  const [edge, setEdge] = useState(0.5);
  const [place, setPlace] = useState<{ letter: string; at: FractionPoint } | null>(null);
  useEffect(() => {
    if (dialog.current && !dialog.current.open) dialog.current.showModal();
  }, []);
  const [one, other] = [hungAs(hung, left), hungAs(hung, right)];
  if (!one || !other) return null;
  const at = place?.letter === left ? place.at : null;
  return (
    <dialog ref={dialog} className={styles.beside} aria-label={words.beside.title} onClose={onClose}>
      <header className={styles.head}>
        <Picker label={words.beside.left} value={left} hung={hung} onPick={setLeft} />
        <Picker label={words.beside.right} value={right} hung={hung} onPick={setRight} />
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are switches. */}
        <div className={styles.ways} role="group" aria-label={words.beside.title}>
          <button type="button" aria-pressed={!over} onClick={() => setOver(false)}>
            {words.beside.apart}
          </button>
          <button type="button" aria-pressed={over} onClick={() => setOver(true)}>
            {words.beside.over}
          </button>
        </div>
        <div className={styles.close}>
          <Button weight="word" onClick={() => dialog.current?.close()}>
            {words.beside.close}
          </Button>
        </div>
      </header>
      <div className={styles.stage} data-over={over ? '' : undefined}>
        <LargePainting
          key={`first ${one.state.id}`}
          {...{ boardId, line }}
          hung={one}
          place={at}
          onPlace={maySay && !over ? (at) => setPlace({ letter: left, at }) : null}
        />
        <LargePainting
          key={`second ${other.state.id}`}
          {...{ boardId, line }}
          hung={other}
          place={null}
          onPlace={null}
          {...(over ? { clip: `inset(0 0 0 ${edge * 100}%)` } : {})}
        />
        {over ? <WipeEdge edge={edge} setEdge={setEdge} /> : null}
      </div>
      {over ? <p className={styles.how}>{words.beside.how}</p> : null}
      {maySay ? <OneThingForm key={left} boardId={boardId} hung={one} at={at} /> : null}
    </dialog>
  );
}

function hungAs(hung: readonly Hung[], letter: string): Hung | undefined {
  return hung.find((each) => each.letter === letter);
}

interface PickerProps {
  label: string;
  value: string;
  hung: readonly Hung[];
  onPick(letter: string): void;
}

function Picker({ label, value, hung, onPick }: PickerProps) {
  return (
    <label className={styles.picker}>
      <span className="unseen">{label}</span>
      <select value={value} onChange={({ target }) => onPick(target.value)}>
        {hung.map(({ letter, painter, mine }) => (
          <option key={letter} value={letter}>
            {[letter, painter?.name ?? (mine ? words.yours : '')].filter(Boolean).join(' · ')}
          </option>
        ))}
      </select>
    </label>
  );
}
