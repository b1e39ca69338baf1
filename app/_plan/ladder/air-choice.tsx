'use client';
/**
 * The colour of the planned air: the photograph's own, a likely one, or one picked from the picture; and how much of it.
 *
 * In the flow: planned ladder -> [air-choice] -> wishes of the plan.
 */
import { useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { figure } from '#app/_words/figures.ts';
import { hexFromLinear } from '#server/core/colour/hex.ts';
import { rgbFromLab } from '#server/core/colour/lab.ts';
import { LIKELY_AIR_NAMES, MOST_STRENGTH, type WishedAir } from '#server/core/contract/plan-wishes.ts';
import type { LabColour } from '#server/core/contract/setup.ts';
import { LIKELY_AIRS, shownColour } from '#server/core/plan/air/likely-airs.ts';
import { planLadderWords } from '#words/plan-ladder.ts';
import { PickAir } from './pick-air.tsx';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';
import { Slide } from './slide.tsx';

const { air: words, strength } = planLadderWords;

function hexOf(colour: LabColour): string {
  return hexFromLinear(...rgbFromLab(shownColour(colour)));
}

function Air(props: { name: string; colour: LabColour | null; chosen: boolean; onChoose(): void }) {
  const { name, colour, chosen, onChoose } = props;
  return (
    <button type="button" aria-pressed={chosen} onClick={onChoose}>
      <span className={styles.swatch} style={{ background: colour ? hexOf(colour) : undefined }} />
      {name}
    </button>
  );
}

export function AirChoice() {
  const { view, wishes, setWishes } = usePlannedLadder();
  const [picking, setPicking] = useState(false);
  const photograph = view?.air.photograph ?? null;
  const { air } = wishes;
  const choose = (next: WishedAir | null) => setWishes({ air: next });
  const picked = typeof air === 'object' ? air : null;
  return (
    <section className={styles.lines} aria-labelledby="air-choice">
      <h2 id="air-choice">{words.title}</h2>
      <p className={styles.quiet}>{words.about}</p>
      <div className={styles.airs}>
        <Air
          name={words.own}
          colour={photograph}
          chosen={air === null || air === 'photograph'}
          onChoose={() => choose('photograph')}
        />
        {LIKELY_AIR_NAMES.map((name) => (
          <Air
            key={name}
            name={words.likely[name]}
            // A likely air takes how light the photograph's is.
            colour={{ ...LIKELY_AIRS[name], L: photograph?.L ?? LIKELY_AIRS[name].L }}
            chosen={air === name}
            onChoose={() => choose(name)}
          />
        ))}
        {picked ? <Air name={words.picked} colour={picked} chosen onChoose={() => choose(picked)} /> : null}
      </div>
      {picking ? (
        <PickAir
          onPick={(colour) => {
            choose(colour);
            setPicking(false);
          }}
          onLeave={() => setPicking(false)}
        />
      ) : (
        <div>
          <Button onClick={() => setPicking(true)}>{words.pick}</Button>
        </div>
      )}
      <Strength />
    </section>
  );
}

function amountInWords(amount: number): string {
  if (amount === 0) return strength.as;
  return amount === 1 ? strength.usual : strength.times(figure(amount, 1));
}

function Strength() {
  const { wishes, move, setWishes } = usePlannedLadder();
  return (
    <Slide
      label={strength.title}
      text={amountInWords(wishes.strength)}
      amount={wishes.strength}
      range={[0, MOST_STRENGTH, 0.1]}
      onMove={(amount) => move({ wishes: { strength: amount } })}
      onSet={(amount) => {
        setWishes({ strength: amount });
        move(null);
      }}
    />
  );
}
