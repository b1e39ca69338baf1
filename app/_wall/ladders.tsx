'use client';
/**
 * All ladders in one chart, each line told by letter, pattern and lightness; the same in figures under it.
 *
 * In the flow: measures of what hangs -> ladder-lines -> [ladders] -> screen. Letters stand in the order of the wall: no
 * figure sorts anything here.
 */
import { useState } from 'react';
import { Axis } from '#app/_ladder/chart.tsx';
import { withKeys } from '#app/_ladder/with-keys.ts';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import { wallWords as words } from '#words/wall.ts';
import { type Hung, measuredOf } from './hung.ts';
import { LadderFigures } from './ladder-figures.tsx';
import {
  LADDER_PARTS,
  type LadderLine,
  type LadderPart,
  type Ladders,
  laddersOf,
  lineStyle,
  type Point,
} from './ladder-lines.ts';
import styles from './ladders.module.css';

export function LaddersPart({ hung }: { hung: readonly Hung[] }) {
  const [part, setPart] = useState<LadderPart>('mid');
  const [found, setFound] = useState<string | null>(null);
  const measured = measuredOf(hung);
  if (measured.length < 2) return <p className={styles.quiet}>{words.ladders.none}</p>;
  const ladders = laddersOf(measured, part);
  const target = measured[0]?.document.target ?? 'none';
  return (
    <>
      <div className={styles.top}>
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are switches. */}
        <div className={styles.parts} role="group" aria-label={words.ladders.part}>
          {LADDER_PARTS.map((each) => (
            <button key={each} type="button" aria-pressed={part === each} onClick={() => setPart(each)}>
              {words.ladders.parts[each]}
            </button>
          ))}
        </div>
        <ul className={styles.legend}>
          {measured.map(({ letter, index }) => (
            <li key={letter}>
              <button
                type="button"
                aria-pressed={found === letter}
                aria-label={words.ladders.find(letter)}
                onClick={() => setFound(found === letter ? null : letter)}
              >
                <Sample index={index} />
                <strong>{letter}</strong>
              </button>
            </li>
          ))}
          {ladders.target.length > 0 && target !== 'none' ? (
            <li className={styles.targetSign}>
              <i /> {words.ladders[target]}
            </li>
          ) : null}
        </ul>
      </div>
      <Chart
        ladders={ladders}
        indexOf={new Map(measured.map(({ letter, index }) => [letter, index]))}
        found={found}
      />
      <LadderFigures measured={measured} planes={ladders.planes} part={part} />
    </>
  );
}

function Sample({ index }: { index: number }) {
  const { dashes, tone } = lineStyle(index);
  return (
    <svg className={styles.sample} viewBox="0 0 44 10" aria-hidden="true">
      <line x1="0" x2="44" y1="5" y2="5" data-casing={tone} />
      <line x1="0" x2="44" y1="5" y2="5" data-tone={tone} strokeDasharray={dashes} />
    </svg>
  );
}

const path = (run: readonly Point[]) =>
  run.map(({ x, y }) => `${(x * 1000).toFixed(1)},${(y * 1000).toFixed(1)}`).join(' ');
const share = (part: number) => `${(part * 100).toFixed(2)}%`;

interface ChartProps {
  ladders: Ladders;
  indexOf: ReadonlyMap<string, number>;
  /** Letter of the line that is brought forward, or null. */
  found: string | null;
}

/** For the eye: the table says the same in text. */
function Chart({ ladders, indexOf, found }: ChartProps) {
  const { planes, lines, target } = ladders;
  const forward = [...lines].sort(
    (one, other) => Number(one.letter === found) - Number(other.letter === found),
  );
  return (
    <ScrollRegion className={styles.scroller} label={words.ladders.title}>
      <div className={styles.chart} style={{ '--planes': planes.length } as React.CSSProperties}>
        <Axis />
        <div className={styles.plot} aria-hidden="true">
          <svg className={styles.lines} viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true">
            {target.map((run) => (
              <polyline key={path(run)} points={path(run)} data-target="" />
            ))}
            {forward.map((line) => (
              <Line key={line.letter} line={line} index={indexOf.get(line.letter) ?? 0} found={found} />
            ))}
          </svg>
          {forward.map(({ letter, runs }) =>
            runs
              .flat()
              .map(({ x, y }) => (
                <i
                  key={`${letter} ${x}`}
                  className={styles.dot}
                  data-tone={lineStyle(indexOf.get(letter) ?? 0).tone}
                  data-quiet={found !== null && found !== letter ? '' : undefined}
                  style={{ left: share(x), top: share(y) }}
                />
              )),
          )}
          {lines.map(({ letter, letterX, letterY }) =>
            letterX === null || letterY === null ? null : (
              <span
                key={letter}
                className={styles.letter}
                data-quiet={found !== null && found !== letter ? '' : undefined}
                style={{ left: share(letterX), top: share(letterY) }}
              >
                {letter}
              </span>
            ),
          )}
        </div>
        <ol className={styles.feet}>
          {withKeys(planes, (name) => name).map(({ key, item, index }) => (
            <li key={key}>
              <span>{index + 1}</span> {item}
            </li>
          ))}
        </ol>
      </div>
    </ScrollRegion>
  );
}

function Line({ line, index, found }: { line: LadderLine; index: number; found: string | null }) {
  const { dashes, tone } = lineStyle(index);
  const quiet = found !== null && found !== line.letter ? '' : undefined;
  const strong = found === line.letter ? '' : undefined;
  return line.runs.map((run) => (
    <g key={path(run)} data-quiet={quiet} data-strong={strong}>
      <polyline points={path(run)} data-casing={tone} />
      <polyline points={path(run)} data-tone={tone} strokeDasharray={dashes} />
    </g>
  ));
}
