'use client';
/** What can be done with the outline of the chosen plane. In the flow: easel-bar -> [outline-controls] -> draft, live. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { Button } from '#app/_ui/button.tsx';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import styles from './easel-bar.module.css';
import { useEasel } from './easel-state.tsx';
import { WHOLE_PICTURE } from './outline-edit.ts';
import type { Shown } from './shown.ts';
import { useDraft } from './use-draft-hand.ts';

export function OutlineControls(shown: Shown) {
  const { planeId, side } = useTools();
  const { planes, may, outlinesOf } = useBoardLive();
  const { draft } = useEasel();
  const plane = planes.find(({ id }) => id === planeId);
  const wide = useWide();
  const writable = [shown.reference, shown.painting].filter(
    (picture): picture is PictureView =>
      picture !== null &&
      (wide || picture.kind === side) &&
      (picture.kind === 'reference' ? may.setup : may.painting(picture.id)),
  );
  if (writable.length === 0) return <p className={styles.sentence}>{words.outline.onlyLook}</p>;
  if (!plane) return <p className={styles.sentence}>{words.outline.choose}</p>;
  if (draft) return <DraftControls plane={plane} />;
  const bare = writable.filter(({ id }) => !outlinesOf(id).has(plane.id));
  const [target] = bare;
  if (target && bare.length === writable.length) return <BeginControls plane={plane} target={target} />;
  return <NudgeControls plane={plane} writable={writable} shown={shown} />;
}

function howTo(plane: PlaneView, way: 'ridge' | 'round'): string {
  if (way === 'round') return words.outline.drawRound(plane.name);
  return plane.kind === 'sky' ? words.outline.drawSky(plane.name) : words.outline.drawRidge(plane.name);
}

function BeginControls({ plane, target }: { plane: PlaneView; target: PictureView }) {
  const { way, setWay } = useEasel();
  const { write } = useBoardLive();
  return (
    <>
      <p className={styles.sentence}>{howTo(plane, way)}</p>
      <fieldset className={styles.choice} aria-label={words.outline.how}>
        <button type="button" aria-pressed={way === 'ridge'} onClick={() => setWay('ridge')}>
          {words.outline.ridge}
        </button>
        <button type="button" aria-pressed={way === 'round'} onClick={() => setWay('round')}>
          {words.outline.round}
        </button>
        {plane.number === 1 ? (
          <button
            type="button"
            title={words.outline.wholeWhy}
            onClick={() => write.setOutline(target.id, plane.id, WHOLE_PICTURE)}
          >
            {words.outline.whole}
          </button>
        ) : null}
      </fieldset>
    </>
  );
}

function DraftControls({ plane }: { plane: PlaneView }) {
  const { draft, finish, takeBack, giveUp } = useDraft();
  const { following, setFollowing } = useEasel();
  if (!draft) return null;
  return (
    <>
      <p className={styles.sentence}>
        {howTo(plane, draft.way)}{' '}
        <span className={styles.count}>{words.outline.soFar(draft.stops.length)}</span>
      </p>
      <div className={styles.buttons}>
        <Button weight="main" onClick={() => finish()}>
          {words.outline.finish}
        </Button>
        <Button onClick={takeBack}>{words.outline.back}</Button>
        <Button
          aria-pressed={following}
          title={words.outline.followWhy}
          onClick={() => setFollowing(!following)}
        >
          {words.outline.follow}
        </Button>
        <Button weight="word" onClick={giveUp}>
          {words.outline.giveUp}
        </Button>
      </div>
    </>
  );
}

interface NudgeControlsProps {
  plane: PlaneView;
  writable: PictureView[];
  shown: Shown;
}

function NudgeControls({ plane, writable, shown: { reference, painting } }: NudgeControlsProps) {
  const { outlinesOf, write } = useBoardLive();
  const { way, setDraft, setSentence } = useEasel();
  const on = (picture: PictureView | null) => picture !== null && outlinesOf(picture.id).has(plane.id);
  const drawnOn = writable.filter(on);
  const mayCarry = painting !== null && writable.includes(painting);
  const carry = () => {
    if (!reference || !painting) return;
    write.carryOutlines(reference.id, painting.id, [plane.id]);
    setSentence(null);
  };
  return (
    <>
      <p className={styles.sentence}>{words.outline.nudge(plane.name)}</p>
      <div className={styles.buttons}>
        {mayCarry && on(reference) && !on(painting) ? (
          <Button weight="main" onClick={carry}>
            {words.outline.carryThis}
          </Button>
        ) : null}
        {drawnOn.map(({ id, kind }) => (
          <span key={id} className={styles.buttons}>
            {words.outline.on[kind]}
            <Button
              weight="word"
              onClick={() => setDraft({ pictureId: id, planeId: plane.id, way, points: [], stops: [] })}
            >
              {words.outline.again}
            </Button>
            <Button weight="word" onClick={() => write.deleteOutline(id, plane.id)}>
              {words.outline.remove}
            </Button>
          </span>
        ))}
      </div>
    </>
  );
}
