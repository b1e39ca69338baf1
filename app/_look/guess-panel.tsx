'use client';
/**
 * Guess first: the value of a spot or a plane is guessed on the scale, then shown; one's own errors are kept for oneself.
 *
 * In the flow: chosen spot -> [guess panel] -> guesses kept in this browser. Nothing of it is sent anywhere.
 */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { figure } from '#app/_words/figures.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { greyOf, STEP_L } from '#server/core/look/nine-steps.ts';
import { type Guess, tendencies } from '#server/core/look/tendency.ts';
import { lookWords } from '#words/look.ts';
import { GreyScale } from './grey-scale.tsx';
import styles from './guess.module.css';
import { forgetGuesses, keepGuess, keptGuesses } from './kept.ts';
import { type GuessedSpot, useLooking } from './look-state.tsx';
import { PanelFrame } from './panel-frame.tsx';
import { useTakeSpot } from './use-guess-hand.ts';
import { useTakePlane } from './use-take-plane.ts';

const { guess: words } = lookWords;
/** A guess in the middle of the scale leans to neither side. */
const START = 5;
const GUESS_STEP = 0.5;

export function GuessPanel() {
  const { spot } = useLooking();
  const [guesses, setGuesses] = useState<readonly Guess[]>([]);
  useEffect(() => setGuesses(keptGuesses()), []);
  const guessed = (guess: number, { shown }: GuessedSpot) =>
    setGuesses(keepGuess({ at: Date.now(), guessed: guess, shown }));
  const forget = () => {
    forgetGuesses();
    setGuesses([]);
  };
  return (
    <PanelFrame title={words.title}>
      <div className={styles.guess}>
        {spot ? (
          <Scale key={`${spot.pictureId} ${spot.point.join()} ${spot.plane}`} spot={spot} onGuess={guessed} />
        ) : (
          <Choosing />
        )}
        <Leaning guesses={guesses} onForget={forget} />
      </div>
    </PanelFrame>
  );
}

/** A spot is tapped on a picture, a plane is taken here, or chance chooses. */
function Choosing() {
  const { referenceId, paintingId } = useTools();
  const [trouble, setTrouble] = useState<string | null>(null);
  const onReference = useTakeSpot(referenceId, setTrouble);
  const onPainting = useTakeSpot(paintingId, setTrouble);
  const any = () => {
    const take = referenceId && (!paintingId || Math.random() < 0.5) ? onReference : onPainting;
    const inside = () => 0.06 + Math.random() * 0.88;
    take([inside(), inside()]);
  };
  return (
    <div className={styles.choosing}>
      <p>{words.how}</p>
      <Button onClick={any}>{words.any}</Button>
      <PlanesOf pictureId={referenceId} label={words.planesOf.reference} />
      <PlanesOf pictureId={paintingId} label={words.planesOf.painting} />
      <p role="alert">{trouble}</p>
    </div>
  );
}

function PlanesOf({ pictureId, label }: { pictureId: string | null; label: string }) {
  const { planes, take } = useTakePlane(pictureId);
  if (planes.length === 0) return null;
  return (
    <section className={styles.planes} aria-label={label}>
      <h3>{label}</h3>
      {planes.map((plane) => (
        <Button key={plane.id} weight="word" onClick={() => take(plane.id)}>
          {plane.number} {plane.name}
        </Button>
      ))}
    </section>
  );
}

/** The guess on the scale; shown, the value stands beside it. */
function Scale({ spot, onGuess }: { spot: GuessedSpot; onGuess(guess: number, spot: GuessedSpot): void }) {
  const { setSpot } = useLooking();
  const { board } = useBoardLive();
  const [guess, setGuess] = useState(START);
  const [open, setOpen] = useState(false);
  const kind = board.pictures.find(({ id }) => id === spot.pictureId)?.kind ?? 'painting';
  const move = (_: number, lightness: number) => {
    const steps = Math.round(lightness / STEP_L / GUESS_STEP) * GUESS_STEP;
    if (!open) setGuess(Math.min(10, Math.max(0, steps)));
  };
  const show = () => {
    setOpen(true);
    onGuess(guess, spot);
  };
  const handle = {
    at: guess * STEP_L,
    label: words.slider,
    text: figure(guess, 1),
    least: open ? guess * STEP_L : 0,
    most: open ? guess * STEP_L : 100,
  };
  return (
    <div className={styles.one}>
      <p className={styles.about}>{words.about(lookWords.patch.sides[kind], spot.plane)}</p>
      <div>
        <GreyScale handles={[handle]} step={GUESS_STEP * STEP_L} onMove={move}>
          {open ? <span className={styles.true} style={{ left: `${spot.shown * STEP_L}%` }} /> : null}
        </GreyScale>
        <p className={styles.numbers} aria-hidden="true">
          {Array.from({ length: 11 }, (_, step) => step).map((step) => (
            <span key={step} style={{ left: `${step * STEP_L}%` }}>
              {step}
            </span>
          ))}
        </p>
      </div>
      <div className={styles.told} role="status">
        {open ? <Told guess={guess} shown={spot.shown} /> : <p className={styles.hint}>{words.asSeen}</p>}
      </div>
      <p className={styles.buttons}>
        {open ? null : <Button onClick={show}>{words.show}</Button>}
        <Button weight={open ? 'quiet' : 'word'} onClick={() => setSpot(null)}>
          {words.next}
        </Button>
      </p>
    </div>
  );
}

/** The two greys touching, and in words which way the eye went. */
function Told({ guess, shown }: { guess: number; shown: number }) {
  return (
    <>
      <div className={styles.greys} aria-hidden="true">
        <span style={{ background: greyOf(guess * STEP_L) }} />
        <span style={{ background: greyOf(shown * STEP_L) }} />
        <small>{words.guessed}</small>
        <small>{words.shown}</small>
      </div>
      <p className={styles.said}>{words.told(guess, shown)}</p>
    </>
  );
}

function Leaning({ guesses, onForget }: { guesses: readonly Guess[]; onForget(): void }) {
  const { setCheckOpen } = useLooking();
  const found = tendencies(guesses);
  return (
    <section className={styles.leaning} aria-label={words.tendencyTitle}>
      <h3>{words.tendencyTitle}</h3>
      {found.map(({ zone, lean, miss }) => (
        <p key={zone}>{words.tendency(words.zones[zone], lean, miss)}</p>
      ))}
      {found.length === 0 ? <p>{words.tooFew}</p> : null}
      <p className={styles.hint}>
        {guesses.length > 0 ? `${words.counted(guesses.length)} ` : ''}
        {words.kept}
      </p>
      <p className={styles.buttons}>
        {guesses.length > 0 ? (
          <Button weight="word" onClick={onForget}>
            {words.forget}
          </Button>
        ) : null}
        <Button weight="word" onClick={() => setCheckOpen(true)}>
          {lookWords.check.title}
        </Button>
      </p>
    </section>
  );
}
