'use client';
/**
 * The part of the plan that weighs the picture and looks at its shapes.
 *
 * In the flow: use-weight -> [weight-panel] -> beam under the picture, suggestions, each drawn on the picture when chosen.
 */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { figure, signedFigure } from '#app/_words/figures.ts';
import { WHOLE } from '#server/core/plan/in-frame.ts';
import type { Suggestion } from '#server/core/plan/shapes/suggestion.ts';
import { planWeightWords as words } from '#words/plan-weight.ts';
import { FrameChoice } from '../frame-choice.tsx';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { UnderStage } from '../stage/stage-context.tsx';
import { Beam } from './beam.tsx';
import type { LookedAt } from './look-at.ts';
import { useRearranged } from './rearranged.tsx';
import { SuggestionMarks } from './suggestion-marks.tsx';
import { useWeight } from './use-weight.ts';
import styles from './weight.module.css';

export function WeightPanel() {
  const { looked, sentence, failed } = useWeight();
  const { chosen } = useKeptFrames();
  if (sentence) return <p>{sentence}</p>;
  if (failed) return <p>{words.failed}</p>;
  if (!looked) return <p role="status">{words.working}</p>;
  return (
    <>
      <UnderStage>
        <Beam balance={looked.balance} box={chosen?.box ?? WHOLE} />
      </UnderStage>
      <FrameChoice />
      <Balance looked={looked} />
      <Suggestions suggestions={looked.suggestions} />
    </>
  );
}

function Balance({ looked: { balance } }: { looked: LookedAt }) {
  const { chosen } = useKeptFrames();
  const { raster } = useRearranged();
  const { lever, heavier, heaviness } = balance;
  return (
    <section className={styles.lines} aria-labelledby="weight-title">
      <h2 id="weight-title">{words.title}</h2>
      <p role="status" className={styles.said}>
        {words.side[heavier]}
      </p>
      <p>{words.lever(signedFigure(lever, 2))}</p>
      {chosen ? <p>{words.ofFrame(chosen.name)}</p> : null}
      {raster ? <p>{words.ofRearranged}</p> : null}
      <p className={styles.quiet}>{words.about}</p>
      <p>{words.heaviness(figure(heaviness.left, 2), figure(heaviness.right, 2))}</p>
      <p className={styles.quiet}>{words.heavinessAbout}</p>
    </section>
  );
}

/** What tells one suggestion from another of its kind. */
function keyOf({ kind, planes }: Suggestion): string {
  return `${kind} ${planes.join(' ')}`;
}

function Suggestions({ suggestions }: { suggestions: readonly Suggestion[] }) {
  const { planes, outlinesOf } = useBoardLive();
  const { picture } = usePlanChoice();
  const [key, setKey] = useState<string | null>(null);
  const chosen = suggestions.find((each) => keyOf(each) === key) ?? null;
  const outlines = picture ? outlinesOf(picture.id) : null;
  const known = planes.some(({ id }) => outlines?.has(id));
  return (
    <section className={styles.lines} aria-labelledby="shapes-title">
      <h2 id="shapes-title">{words.suggestions}</h2>
      <p className={styles.quiet}>{words.suggestionsAbout}</p>
      {known ? null : <p>{words.noPlanes}</p>}
      {suggestions.length === 0 ? <p>{words.none}</p> : null}
      <ul className={styles.list}>
        {suggestions.map((each) => (
          <li key={keyOf(each)}>
            <button
              type="button"
              aria-pressed={each === chosen}
              onClick={() => setKey(each === chosen ? null : keyOf(each))}
            >
              {each.sentence}
            </button>
            {each === chosen ? <p className={styles.quiet}>{words.whyWith(each.why, each.source)}</p> : null}
          </li>
        ))}
      </ul>
      {chosen ? <SuggestionMarks suggestion={chosen} /> : null}
    </section>
  );
}
