'use client';
/**
 * What stands under a planned plane: how it differs from the photograph, its figures, chroma and warm–cool to be moved.
 *
 * In the flow: planned ladder -> [plane-foot] -> wishes of the plan.
 */
import chart from '#app/_ladder/chart.module.css';
import { Button } from '#app/_ui/button.tsx';
import { figure, NO_FIGURE, signedFigure } from '#app/_words/figures.ts';
import type { PlaneResult } from '#server/core/contract/measures.ts';
import type { HandlePart } from '#server/core/contract/plan-wishes.ts';
import { gapWords } from '#server/core/gaps/gap-words.ts';
import { ladderWords } from '#words/ladder.ts';
import { planLadderWords as words } from '#words/plan-ladder.ts';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';
import { Slide } from './slide.tsx';

/** Both sides are exact: the plan is made of the photograph. */
function exactly({ gap }: PlaneResult): Record<string, [number, number]> {
  return Object.fromEntries(
    Object.entries(gap ?? {}).flatMap(([key, amount]): [string, [number, number]][] =>
      amount === null ? [] : [[key, [amount, amount]]],
    ),
  );
}

export function PlaneFoot({ plane, planeId }: { plane: PlaneResult; planeId: string }) {
  const { handles, setHandle, clearHandles, move } = usePlannedLadder();
  const handle = handles.get(planeId) ?? {};
  const { painting: planned } = plane;
  if (planned.mid === null) return <p className={chart.words}>{plane.reference?.notes[0] ?? NO_FIGURE}</p>;
  const said = gapWords({ gap: plane.gap, doubt: { gap: exactly(plane), recession: {} } }, 'reference', 'A');
  const set = Object.keys(handle) as HandlePart[]; // the parts that are there
  const times = handle.chroma ?? 1;
  const turned = handle.warmCool ?? 0;
  const slid = (part: 'chroma' | 'warmCool', neutral: number) => ({
    onMove: (amount: number) => move({ planeId, part, amount }),
    onSet: (amount: number) => {
      setHandle(planeId, part, amount === neutral ? null : amount);
      move(null);
    },
  });
  return (
    <>
      <p className={chart.words}>{said.join(', ')}</p>
      <div className={styles.foot}>
        <dl className={styles.figures}>
          {(['light', 'mid', 'dark'] as const).map((part) => (
            <div key={part}>
              <dt>{ladderWords.rows[part]}</dt>
              <dd>{words.value(figure((planned[part] ?? 0) / 10, 1))}</dd>
            </div>
          ))}
        </dl>
        <Slide
          label={<Of part="chroma" plane={plane.name} />}
          text={words.chroma(figure(planned.chroma, 0), times === 1 ? '' : figure(times, 2))}
          amount={times}
          range={[0, 2, 0.05]}
          {...slid('chroma', 1)}
        />
        <Slide
          label={<Of part="warmCool" plane={plane.name} />}
          text={words.warmCool(
            signedFigure(planned.warmCool, 0),
            turned === 0 ? '' : signedFigure(turned, 0),
          )}
          amount={turned}
          range={[-20, 20, 1]}
          {...slid('warmCool', 0)}
        />
        {set.length > 0 ? (
          <Button weight="word" aria-label={words.asAirOf(plane.name)} onClick={() => clearHandles(planeId)}>
            {words.asAir}
          </Button>
        ) : null}
      </div>
    </>
  );
}

function Of({ part, plane }: { part: HandlePart; plane: string }) {
  return (
    <>
      {words.part[part]} <span className="unseen">{plane}</span>
    </>
  );
}
