'use client';
/** What can be changed of a chosen step besides by hand on the stage: name, size and side of a motif, height and width of a bend. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { figure } from '#app/_words/figures.ts';
import { MOST_LIFT } from '#server/core/contract/rearranging.ts';
import type { KeptBend, KeptMotif, RearrangeStep } from '#server/core/live/plan/rearranging.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { Slide } from '../ladder/slide.tsx';
import styles from './rearrange.module.css';
import { useRearranging } from './rearranging.tsx';

export function StepDetail({ step }: { step: RearrangeStep }) {
  const { change } = useRearranging();
  return (
    <div className={styles.group}>
      <label className={styles.row}>
        {words.name}
        <input
          key={step.name}
          className={styles.text}
          defaultValue={step.name}
          maxLength={80}
          aria-label={words.nameOf(step.name)}
          onBlur={({ target }) => {
            const name = target.value.trim();
            if (name !== '' && name !== step.name) change(step, { name });
          }}
        />
      </label>
      {step.kind === 'motif' ? <MotifDetail motif={step} /> : <BendDetail bend={step} />}
    </div>
  );
}

function MotifDetail({ motif }: { motif: KeptMotif }) {
  const { change, move } = useRearranging();
  const { planes } = useBoardLive();
  const percent = Math.round(motif.scale * 100);
  return (
    <>
      <Slide
        label={words.size}
        text={words.sizeText(percent)}
        amount={percent}
        range={[20, 400, 1]}
        onMove={(amount) => move({ scale: amount / 100 })}
        onSet={(amount) => change(motif, { scale: amount / 100 })}
      />
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={motif.mirrored}
          onChange={({ target }) => change(motif, { mirrored: target.checked })}
        />
        {words.mirrored}
      </label>
      <label className={styles.row}>
        {words.ownPlane}
        <select
          value={motif.planeId ?? ''}
          onChange={({ target }) => change(motif, { planeId: target.value === '' ? null : target.value })}
        >
          <option value="">{words.allWithin}</option>
          {planes.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <div>
        <Button weight="word" onClick={() => change(motif, { move: [0, 0], scale: 1, mirrored: false })}>
          {words.back}
        </Button>
      </div>
    </>
  );
}

function BendDetail({ bend }: { bend: KeptBend }) {
  const { change, move } = useRearranging();
  return (
    <>
      <Slide
        label={words.height}
        text={words.heightText(figure(bend.lift * 100, 1))}
        amount={bend.lift}
        range={[-MOST_LIFT, MOST_LIFT, 0.005]}
        onMove={(lift) => move({ lift })}
        onSet={(lift) => change(bend, { lift })}
      />
      <Slide
        label={words.reach}
        text={words.reachText(Math.round(bend.reach * 100))}
        amount={bend.reach}
        range={[0.02, 1, 0.01]}
        onMove={(reach) => move({ reach })}
        onSet={(reach) => change(bend, { reach })}
      />
    </>
  );
}
