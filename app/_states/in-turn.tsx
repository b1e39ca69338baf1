'use client';
/**
 * Two states shown in turn, slowly, or by the hand: held down, the earlier one shows. In the flow: stage -> [in-turn]. Where
 * little motion is asked for, only the hand changes them. IO: listens for the letter B.
 */
import { useEffect, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { lettersOn } from '#app/_ui/letters.ts';
import { statesWords } from '#words/states.ts';
import { type Pair, stageRatio } from './pair.ts';
import styles from './states.module.css';

const { stage: words } = statesWords;
/** Each state stays this long: far slower than what may trouble anybody (WCAG 2.3.1: three a second). */
const EACH_MS = 1400;

/** True while the letter is held and nobody writes. */
function useHeldLetter(): boolean {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    const down = ({ key, target, ctrlKey, metaKey, altKey }: KeyboardEvent) => {
      const writes = target instanceof HTMLElement && target.matches('input, textarea, select');
      if (key.toLowerCase() !== 'b' || writes || ctrlKey || metaKey || altKey) return;
      if (lettersOn()) setHeld(true);
    };
    const up = ({ key }: KeyboardEvent) => {
      if (key.toLowerCase() === 'b') setHeld(false);
    };
    const away = () => setHeld(false);
    addEventListener('keydown', down);
    addEventListener('keyup', up);
    addEventListener('blur', away);
    return () => {
      removeEventListener('keydown', down);
      removeEventListener('keyup', up);
      removeEventListener('blur', away);
    };
  }, []);
  return held;
}

export function InTurn({ pair: { before, after, ratio } }: { pair: Pair }) {
  const [goes, setGoes] = useState(false);
  const [earlier, setEarlier] = useState(false);
  const [pressed, setPressed] = useState(false);
  const letter = useHeldLetter();
  useEffect(() => setGoes(!matchMedia('(prefers-reduced-motion: reduce)').matches), []);
  useEffect(() => {
    if (!goes) return;
    const timer = setInterval(() => setEarlier((was) => !was), EACH_MS);
    return () => clearInterval(timer);
  }, [goes]);
  const held = pressed || letter;
  const showsEarlier = held || (goes && earlier);
  const hold = (event: { key: string }) => event.key === ' ' || event.key === 'Enter';
  return (
    <figure className={styles.figure} style={stageRatio(ratio)}>
      <div className={styles.over}>
        {/* biome-ignore lint/performance/noImgElement: made by our own server for this one look. */}
        <img src={after.src} alt={words.after(after.at)} />
        {/* biome-ignore lint/performance/noImgElement: as above. */}
        <img
          src={before.src}
          alt={words.before(before.at)}
          style={{ visibility: showsEarlier ? 'visible' : 'hidden' }}
        />
      </div>
      <figcaption className={styles.turn}>
        <p aria-live={goes ? 'off' : 'polite'}>{words.shows(showsEarlier ? before.at : after.at)}</p>
        <Button
          aria-pressed={held}
          onPointerDown={() => setPressed(true)}
          onPointerUp={() => setPressed(false)}
          onPointerCancel={() => setPressed(false)}
          onPointerLeave={() => setPressed(false)}
          onKeyDown={(event) => hold(event) && setPressed(true)}
          onKeyUp={(event) => hold(event) && setPressed(false)}
          onBlur={() => setPressed(false)}
        >
          {words.hold}
        </Button>
        <Button weight="word" onClick={() => setGoes(!goes)}>
          {goes ? words.still : words.goOn}
        </Button>
        <p className={styles.quiet}>{words.holdKey}</p>
      </figcaption>
    </figure>
  );
}
