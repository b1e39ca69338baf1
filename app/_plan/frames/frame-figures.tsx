'use client';
/**
 * The frame under the hand in figures, its format, and what can be done with it.
 *
 * In the flow: working frame + crop scene -> [frame-figures] -> kept frames. The figures follow the hand at once.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField } from '#app/_ui/field.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { canvasesFor } from '#server/core/plan/crops/formats.ts';
import type { Judged } from '#server/core/plan/crops/judge.ts';
import { frameWords } from '#words/plan-frames.ts';
import { FORMAT_GROUPS, FREE } from './frame-formats.ts';
import styles from './frames.module.css';
import type { Working, WorkingFrame } from './use-working-frame.ts';

const { hand: words, figures } = frameWords;

interface FrameFiguresProps {
  working: Working;
  frame: WorkingFrame;
  picture: PictureView;
  /** Null until it is known what lies where. */
  judged: Judged | null;
  failed: boolean;
}

export function FrameFigures({ working, frame, picture, judged, failed }: FrameFiguresProps) {
  const { may } = useBoardLive();
  return (
    <section className={styles.part} aria-labelledby="this-frame">
      <h2 id="this-frame">{frame.kept ? frame.kept.name : words.title}</h2>
      <p className={styles.trouble} role="alert">
        {working.trouble}
      </p>
      {failed ? <p role="alert">{figures.failed}</p> : null}
      <Rows frame={frame} picture={picture} judged={judged} />
      <FormatChooser working={working} frame={frame} />
      <p className={styles.quiet}>{words.how}</p>
      {frame.reasons.length > 0 ? (
        <details className={styles.why}>
          <summary>{words.why}</summary>
          <ul>
            {frame.reasons.map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
        </details>
      ) : null}
      <div className={styles.acts}>
        {may.setup && !frame.kept ? (
          <Button weight="main" disabled={working.trouble !== null} onClick={working.keep}>
            {words.keep}
          </Button>
        ) : null}
        <Button weight="word" onClick={working.putAway}>
          {words.away}
        </Button>
      </div>
    </section>
  );
}

function Rows({ frame, picture, judged }: Pick<FrameFiguresProps, 'frame' | 'picture' | 'judged'>) {
  const [x0, y0, x1, y1] = frame.box;
  const [wide, high] = [Math.round((x1 - x0) * picture.width), Math.round((y1 - y0) * picture.height)];
  const canvases = frame.format.canvas ? [frame.format.canvas] : canvasesFor(wide / high);
  const rows: readonly (readonly [string, string])[] = [
    ...(judged
      ? ([
          [figures.sky, figures.share(judged.sky)],
          [figures.nearest, figures.share(judged.foreground)],
          [figures.horizon, figures.down(judged.horizon)],
          [figures.weight, figures.side(judged.heavier, judged.lever)],
          [figures.cut, figures.cutThings(judged.cut.length)],
        ] as const)
      : []),
    [figures.pixels, figures.size(wide, high)],
    [figures.canvas, canvases.length > 0 ? figures.canvases(canvases) : figures.noCanvas],
  ];
  return (
    <>
      {judged ? null : <p className={styles.quiet}>{figures.waiting}</p>}
      <dl className={styles.figures}>
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

function FormatChooser({ working, frame }: Pick<FrameFiguresProps, 'working' | 'frame'>) {
  return (
    <div className={styles.format}>
      <ChoiceField
        label={words.format}
        value={frame.format.value}
        onChange={(event) => working.setFormat(event.target.value)}
      >
        <option value={FREE}>{words.free}</option>
        {(['plain', 'canvases'] as const).map((group) => (
          <optgroup key={group} label={words[group]}>
            {FORMAT_GROUPS[group].map(({ value, canvas, format }) => (
              <option key={value} value={value}>
                {frameWords.sheet.format(canvas ?? format)}
              </option>
            ))}
          </optgroup>
        ))}
      </ChoiceField>
      <label className={styles.holds}>
        <input
          type="checkbox"
          checked={working.holds}
          disabled={frame.format.ratio === null}
          onChange={(event) => working.setHolds(event.target.checked)}
        />
        {words.holds}
      </label>
    </div>
  );
}
