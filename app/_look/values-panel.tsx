'use client';
/**
 * The pictures in a few values: how many, where they are cut, and how much of each picture every value takes.
 *
 * In the flow: use-look-pixels -> [values panel] -> moved cuts -> value maps over the pictures.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { LEAST_APART, withMovedCut } from '#server/core/look/value-groups.ts';
import { VALUE_NUMBERS } from '#server/core/look/value-numbers.ts';
import { words as easelWords } from '#words/easel.ts';
import { lookWords } from '#words/look.ts';
import { Choice } from './choice.tsx';
import { GreyScale } from './grey-scale.tsx';
import { Heights } from './heights.tsx';
import { useLooking, useMovedCuts } from './look-state.tsx';
import { PanelFrame } from './panel-frame.tsx';
import { ShareBar } from './share-bar.tsx';
import { useValuesOf, type ValuesOf } from './use-look-pixels.ts';
import { useTrust } from './use-trust.ts';
import styles from './values.module.css';

const { values: words } = lookWords;

export function ValuesPanel() {
  const { referenceId, paintingId, side } = useTools();
  const { sameCuts } = useLooking();
  const leadId = referenceId ?? paintingId;
  const reference = useValuesOf(referenceId, leadId);
  const painting = useValuesOf(paintingId, leadId);
  const both = referenceId !== null && paintingId !== null;
  const { referenceShort, paintingShort } = easelWords.easel;
  const lead = referenceId ? reference : painting;
  return (
    <PanelFrame title={words.title} controls={<Controls both={both} parts={[reference, painting]} />}>
      <div className={styles.pictures} data-side={side} data-same={(both && sameCuts) || undefined}>
        {both && sameCuts ? <Cuts name={words.both} values={lead} /> : null}
        {referenceId ? (
          <Picture kind="reference" name={referenceShort} values={reference} cuts={!(both && sameCuts)} />
        ) : null}
        {paintingId ? (
          <Picture kind="painting" name={paintingShort} values={painting} cuts={!(both && sameCuts)} />
        ) : null}
      </div>
      <Advice />
    </PanelFrame>
  );
}

function Controls({ both, parts }: { both: boolean; parts: readonly ValuesOf[] }) {
  const { valueNumber, setValueNumber, sameCuts, setSameCuts } = useLooking();
  const { moveCuts } = useMovedCuts();
  const moved = parts.filter((part) => part.moved);
  const afresh = () => {
    for (const { key } of moved) moveCuts(key, null);
  };
  return (
    <>
      <Choice
        label={words.number}
        options={VALUE_NUMBERS.map((number) => ({ value: number, name: String(number) }))}
        chosen={valueNumber}
        onChoose={setValueNumber}
      />
      {both ? (
        <Choice
          label={words.cuts}
          options={[
            { value: false, name: words.own },
            { value: true, name: words.same },
          ]}
          chosen={sameCuts}
          onChoose={setSameCuts}
        />
      ) : null}
      <Button weight="word" disabled={moved.length === 0} onClick={afresh}>
        {words.again}
      </Button>
    </>
  );
}

interface PictureProps {
  kind: 'reference' | 'painting';
  name: string;
  values: ValuesOf;
  cuts: boolean;
}

/** One picture: its own cuts unless both are cut alike, and its shares. */
function Picture({ kind, name, values, cuts }: PictureProps) {
  return (
    <section className={styles.picture} data-kind={kind} aria-label={name}>
      <h3 className={styles.name}>{name}</h3>
      {cuts ? <CutScale name={name} values={values} /> : null}
      <Shares name={name} values={values} />
    </section>
  );
}

function Cuts({ name, values }: { name: string; values: ValuesOf }) {
  return (
    <section className={styles.picture} aria-label={name}>
      <h3 className={styles.name}>{name}</h3>
      <CutScale name={name} values={values} />
    </section>
  );
}

function Shares({ name, values: { shown, groups } }: { name: string; values: ValuesOf }) {
  const { valueNumber } = useLooking();
  if (shown.failed) return <p role="alert">{lookWords.unavailable}</p>;
  if (!groups) return <p className={styles.waiting}>{words.waiting}</p>;
  return <ShareBar label={words.shares(name)} groups={groups} names={words.names[valueNumber]} />;
}

function CutScale({ name, values: { shown, cuts, key } }: { name: string; values: ValuesOf }) {
  const { moveCuts } = useMovedCuts();
  const { valueNumber } = useLooking();
  const names = words.names[valueNumber];
  const handles = cuts.map((at, index) => ({
    at,
    label: words.cut(name, names[index] ?? '', names[index + 1] ?? ''),
    text: words.cutAt(at),
    least: (cuts[index - 1] ?? 0) + LEAST_APART,
    most: (cuts[index + 1] ?? 100) - LEAST_APART,
  }));
  return (
    <div className={styles.scale}>
      <Heights counts={shown.pixels?.counts ?? null} />
      <GreyScale
        handles={handles}
        step={1}
        onMove={(index, lightness) => moveCuts(key, withMovedCut(cuts, index, lightness))}
      />
    </div>
  );
}

function Advice() {
  const { paintingId, referenceId } = useTools();
  const { sameCuts } = useLooking();
  const { photoOf } = useBoardLive();
  const trustOf = useTrust();
  const doubtful = sameCuts && referenceId && paintingId && trustOf(paintingId) === 'C';
  const unlit = doubtful && !photoOf(paintingId).cards?.length;
  return (
    <p className={styles.advice}>
      {unlit ? words.unlit : words.how} {words.note}
    </p>
  );
}
