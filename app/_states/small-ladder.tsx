/**
 * A ladder small enough to stand under each state, all on one scale: a bar a plane from darks to lights, a tick at its
 * middle, and dashed the middles of the state before. In the flow: time line -> [small-ladder]. The list says it in words.
 */

import { figure } from '#app/_words/figures.ts';
import type { SmallRung } from '#server/core/contract/states.ts';
import { heightOfLightness } from '#server/core/ladder/geometry.ts';
import { statesWords } from '#words/states.ts';
import styles from './states.module.css';

const { line: words } = statesWords;
const [WIDE, HIGH] = [100, 64];

interface SmallLadderProps {
  at: number;
  ladder: readonly SmallRung[];
  before: readonly SmallRung[] | null;
}

const y = (lightness: number) => heightOfLightness(lightness) * HIGH;

export function SmallLadder({ at, ladder, before }: SmallLadderProps) {
  if (ladder.length === 0) return null;
  const step = WIDE / ladder.length;
  return (
    <div>
      <svg
        className={styles.ladder}
        viewBox={`0 0 ${WIDE} ${HIGH}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {[0.25, 0.5, 0.75].map((share) => (
          <line key={share} className={styles.grid} x1={0} x2={WIDE} y1={share * HIGH} y2={share * HIGH} />
        ))}
        {ladder.map((rung, index) => (
          <Rung
            key={rung.name}
            rung={rung}
            was={before?.find(({ name }) => name === rung.name)?.mid ?? null}
            left={index * step}
            step={step}
          />
        ))}
      </svg>
      <ol className="unseen" aria-label={words.ladder(at)}>
        {ladder.map(({ name, dark, mid, light }) => (
          <li key={name}>{words.rung(name, figure(dark, 0), figure(mid, 0), figure(light, 0))}</li>
        ))}
      </ol>
    </div>
  );
}

interface RungProps {
  rung: SmallRung;
  was: number | null;
  left: number;
  step: number;
}

function Rung({ rung: { dark, mid, light }, was, left, step }: RungProps) {
  const [from, to] = [left + step * 0.25, left + step * 0.75];
  return (
    <>
      {dark === null || light === null ? null : (
        <rect
          className={styles.bar}
          x={from}
          width={step / 2}
          y={y(light)}
          height={Math.max(1, y(dark) - y(light))}
        />
      )}
      {mid === null ? null : <line className={styles.middle} x1={from} x2={to} y1={y(mid)} y2={y(mid)} />}
      {was === null ? null : (
        <line
          className={styles.was}
          x1={left + step * 0.08}
          x2={left + step * 0.92}
          y1={y(was)}
          y2={y(was)}
        />
      )}
    </>
  );
}
