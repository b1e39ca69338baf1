'use client';
/**
 * Two patches touching each other on neutral grey; how the second stands to the first, in words, then in figures.
 *
 * In the flow: patch hand -> [patch panel].
 */
import { Button } from '#app/_ui/button.tsx';
import { figure, signedFigure } from '#app/_words/figures.ts';
import { STEP_L } from '#server/core/look/nine-steps.ts';
import type { Patch } from '#server/core/look/patch.ts';
import {
  type PatchDifference,
  type PatchSource,
  patchDifference,
  patchDoubt,
  strengthWords,
  temperatureWords,
} from '#server/core/look/patch-words.ts';
import { lookWords } from '#words/look.ts';
import { type TakenPatch, useLooking } from './look-state.tsx';
import { PanelFrame } from './panel-frame.tsx';
import styles from './patch.module.css';
import { useSpotWords } from './use-spot-words.ts';
import { useTrust } from './use-trust.ts';

const { patch: words } = lookWords;

export function PatchPanel() {
  const { patches, clearPatches } = useLooking();
  const trustOf = useTrust();
  const [first, second] = patches.map((taken) =>
    taken ? { ...taken, trust: trustOf(taken.pictureId) } : null,
  ) as [Source | null, Source | null]; // two in, two out
  const difference = first && second ? patchDifference(first, second) : null;
  return (
    <PanelFrame
      title={words.title}
      controls={
        <Button weight="word" disabled={!first && !second} onClick={clearPatches}>
          {words.clear}
        </Button>
      }
    >
      <div className={styles.patches}>
        <div className={styles.pair}>
          <Swatch which={0} taken={first} />
          <Swatch which={1} taken={second} />
          <Of which={0} source={first} />
          <Of which={1} source={second} />
        </div>
        <div className={styles.words} role="status">
          {difference ? <Difference difference={difference} /> : <p>{words.how}</p>}
        </div>
      </div>
    </PanelFrame>
  );
}

type Source = TakenPatch & PatchSource;

/** The colour itself, with nothing on it; pressed, the next tap takes it anew. */
function Swatch({ which, taken }: { which: 0 | 1; taken: TakenPatch | null }) {
  const { patchInHand, choosePatch } = useLooking();
  const name = words.names[which];
  return (
    <button
      type="button"
      className={styles.swatch}
      data-which={which}
      data-empty={taken ? undefined : ''}
      style={taken ? { background: taken.patch.hex } : undefined}
      aria-pressed={patchInHand === which}
      aria-label={patchInHand === which ? words.taking(name) : words.take(name)}
      onClick={() => choosePatch(which)}
    />
  );
}

/** Where a patch is from, and what it is by itself. */
function Of({ which, source }: { which: 0 | 1; source: Source | null }) {
  const { patchInHand } = useLooking();
  const placeOf = useSpotWords();
  return (
    <div className={styles.of}>
      <p className={styles.name}>
        <b data-in-hand={patchInHand === which || undefined}>{words.names[which]}</b>{' '}
        {source ? placeOf(source.pictureId, source.point) : words.empty}
      </p>
      {source ? <p>{alone(source)}</p> : null}
    </div>
  );
}

/** `value 5.2 ± 0.3, greyed, cool`. */
function alone({ patch, trust }: Source): string {
  if (trust === 'C') return words.unknown;
  const doubt = patchDoubt(trust);
  const value = figure(patch.lab.L / STEP_L, 1);
  const off = doubt ? ` ± ${figure(doubt / STEP_L, 1)}` : '';
  const described = [strengthWords(patch.chroma), temperatureWords(patch.warmCool)];
  return `${words.value} ${bound(patch)}${value}${off}, ${described.join(', ')}`;
}

/** A patch that is mostly blown or crushed is lighter or darker than it looks. */
function bound({ clipped, lab }: Patch): string {
  if (clipped < 0.3) return '';
  return `${lab.L > 50 ? words.bound.blown : words.bound.crushed} `;
}

function Difference({ difference }: { difference: PatchDifference }) {
  const { figures, trust, words: said } = difference;
  return (
    <>
      <p className={styles.said}>{words.second(said)}</p>
      {figures ? <Figures figures={figures} /> : <p>{words.uncorrected}</p>}
      {trust === 'A' || trust === 'B' ? <p className={styles.note}>{words.graded(trust)}</p> : null}
    </>
  );
}

function Figures({ figures }: { figures: NonNullable<PatchDifference['figures']> }) {
  const { difference, units } = words;
  const off = (amount: number, digits: number) => (amount ? ` ± ${figure(amount, digits)}` : '');
  const rows = [
    [
      difference.lightness,
      `${signedFigure(figures.lightness / STEP_L, 1)}${off(figures.doubt.lightness / STEP_L, 1)} ${units.steps}`,
    ],
    [difference.chroma, `${signedFigure(figures.chroma, 0)}${off(figures.doubt.ab, 0)} ${units.chroma}`],
    [difference.warmCool, `${signedFigure(figures.warmCool, 0)}${off(figures.doubt.ab, 0)}`],
    [difference.dE00, `${figure(figures.dE00, 1)} ${units.dE00}`],
  ] as const;
  return (
    <dl className={styles.figures} aria-label={words.caption}>
      {rows.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
