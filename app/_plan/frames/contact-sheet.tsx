'use client';
/**
 * The proposed frames as small pictures, the best first; one is taken onto the photograph.
 *
 * In the flow: plan document -> [contact-sheet] -> working frame.
 */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Choice } from '#app/_look/choice.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Crop } from '#server/core/plan/crops/propose-crops.ts';
import { frameWords } from '#words/plan-frames.ts';
import { usePlanDocument } from '../plan-document.tsx';
import { FrameCut } from './frame-cut.tsx';
import { choiceFor } from './frame-formats.ts';
import styles from './frames.module.css';
import type { Working } from './use-working-frame.ts';

const { sheet: words } = frameWords;
type Way = keyof typeof words.ways;
const WAYS: readonly Way[] = ['all', 'lying', 'square', 'standing'];
/** Frames shown at first. */
const FIRST = 9;
/** Proportions nearer to 1 than this count as square. */
const SQUARE = 1.02;

function wayOf({ box: [x0, y0, x1, y1] }: Crop, picture: PictureView): Way {
  const ratio = ((x1 - x0) * picture.width) / ((y1 - y0) * picture.height);
  if (Math.max(ratio, 1 / ratio) < SQUARE) return 'square';
  return ratio > 1 ? 'lying' : 'standing';
}

export function ContactSheet({ picture, working }: { picture: PictureView; working: Working }) {
  const { plan, pending, trouble } = usePlanDocument();
  const [way, setWay] = useState<Way>('all');
  const [all, setAll] = useState(false);
  const crops = (plan?.crops ?? []).filter((crop) => way === 'all' || wayOf(crop, picture) === way);
  const shown = all ? crops : crops.slice(0, FIRST);
  return (
    <section className={styles.part} aria-labelledby="proposed-frames">
      <h2 id="proposed-frames">{words.title}</h2>
      <p role="status" className={styles.quiet}>
        {pending}
      </p>
      {trouble ? <p role="alert">{trouble}</p> : null}
      {plan?.crops.length === 0 ? plan.notes.map((note) => <p key={note}>{note}</p>) : null}
      {plan && plan.crops.length > 0 ? (
        <Choice<Way>
          label={words.label}
          options={WAYS.map((value) => ({ value, name: words.ways[value] }))}
          chosen={way}
          onChoose={setWay}
        />
      ) : null}
      {plan && plan.crops.length > 0 && crops.length === 0 ? <p>{words.none}</p> : null}
      <ol className={styles.sheet}>
        {shown.map((crop, at) => (
          <li key={crop.box.join()}>
            <Proposed crop={crop} at={at + 1} picture={picture} working={working} />
          </li>
        ))}
      </ol>
      {crops.length > shown.length ? (
        <Button weight="word" onClick={() => setAll(true)}>
          {words.more(crops.length - shown.length)}
        </Button>
      ) : null}
    </section>
  );
}

interface ProposedProps {
  crop: Crop;
  at: number;
  picture: PictureView;
  working: Working;
}

function Proposed({ crop, at, picture, working }: ProposedProps) {
  const { board } = useBoardLive();
  const { box, format, sky, foreground, reasons } = crop;
  const chosen = working.frame?.reasons === reasons;
  return (
    <button
      type="button"
      className={styles.proposed}
      aria-pressed={chosen}
      onClick={() => working.take(box, choiceFor(format, null), reasons)}
    >
      <FrameCut boardId={board.id} picture={picture} box={box} label={words.one(format, at)} />
      <span className={styles.caption} aria-hidden="true">
        {words.format(format)}
      </span>
      <span className={styles.note}>{words.shares(sky, foreground)}</span>
    </button>
  );
}
