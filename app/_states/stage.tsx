'use client';
/**
 * Two states laid on one another: by a wipe, in turn, or as what changed.
 *
 * In the flow: states page -> [stage]. The server lays them; here only one lies over the other. Nothing changes by itself
 * where little motion is asked for.
 */
import { useState } from 'react';
import { statePictureAddress } from '#app/_api/states.ts';
import type { ComparedFacts, StatesView } from '#server/core/contract/states.ts';
import { statesWords } from '#words/states.ts';
import { InTurn } from './in-turn.tsx';
import { type Pair, stageRatio } from './pair.ts';
import styles from './states.module.css';
import { Wipe } from './wipe.tsx';

const { stage: words } = statesWords;
const WAYS = ['wipe', 'turn', 'change'] as const;
type Way = (typeof WAYS)[number];

interface StageProps {
  view: StatesView;
  /** Places of the earlier and the later state. */
  from: number;
  to: number;
  setFrom(at: number): void;
}

export function Stage({ view, from, to, setFrom }: StageProps) {
  const [way, setWay] = useState<Way>('wipe');
  const [one, two] = [view.states[from], view.states[to]];
  if (!one || !two) return null;
  const address = (which: 'before' | 'after' | 'change') =>
    statePictureAddress(view.board.id, { from: one.id, to: two.id }, which);
  const facts = from === to - 1 ? (view.steps[from]?.facts ?? null) : null;
  const shown = view.steps[from]?.facts?.shown;
  const pair: Pair = {
    before: { at: from, src: address('before') },
    after: { at: to, src: address('after') },
    ratio: shown ? shown.widthPx / shown.heightPx : one.width / one.height,
  };
  return (
    <section className={styles.part} aria-labelledby="stage">
      <h2 id="stage">{words.title(from, to)}</h2>
      <div className={styles.ways}>
        <fieldset>
          <legend className="unseen">{words.ways}</legend>
          {WAYS.map((each) => (
            <label key={each} data-on={way === each || undefined}>
              <input type="radio" name="way" checked={way === each} onChange={() => setWay(each)} />
              {words[each]}
            </label>
          ))}
        </fieldset>
        {to > 1 ? <Against from={from} to={to} setFrom={setFrom} /> : null}
      </div>
      <div key={`${one.id} ${two.id}`}>
        {way === 'wipe' ? <Wipe pair={pair} /> : null}
        {way === 'turn' ? <InTurn pair={pair} /> : null}
        {way === 'change' ? <Change src={address('change')} ratio={pair.ratio} facts={facts} /> : null}
      </div>
    </section>
  );
}

/** Which earlier state the later one is held against. */
function Against({ from, to, setFrom }: { from: number; to: number; setFrom(at: number): void }) {
  return (
    <label className={styles.against}>
      {words.against}
      <select value={from} onChange={(event) => setFrom(Number(event.target.value))}>
        {Array.from({ length: to }, (_, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a state is named by its place.
          <option key={at} value={at}>
            {statesWords.line.label(at)}
          </option>
        ))}
      </select>
    </label>
  );
}

function Change({ src, ratio, facts }: { src: string; ratio: number; facts: ComparedFacts | null }) {
  const shown = facts?.shown ?? null;
  const some = shown !== null && shown.lighter + shown.darker >= 0.005;
  return (
    <figure className={styles.figure} style={stageRatio(ratio)}>
      {/* biome-ignore lint/performance/noImgElement: made by our own server for this one look. */}
      <img className={styles.alone} src={src} alt={words.changed} />
      {shown ? (
        <figcaption>
          <p>{some ? words.shares(shown.lighter, shown.darker) : words.nothing}</p>
          <p className={styles.quiet}>{words.legend(shown.doubtL)}</p>
        </figcaption>
      ) : null}
    </figure>
  );
}
