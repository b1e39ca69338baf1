'use client';
/** What can be done with the outline of the chosen plane. In the flow: easel-bar -> [outline-controls] -> draft, live. */
import { useEffect, useState } from 'react';
import { useCarryDoor } from '#app/_carry/carry-desk.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { Button } from '#app/_ui/button.tsx';
import { OUTLININGS, type Outlining } from '#app/_workspace/tools.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { carryWords } from '#words/carry.ts';
import { words } from '#words/easel.ts';
import styles from './easel-bar.module.css';
import { type OutlineWay, useEasel } from './easel-state.tsx';
import { WHOLE_PICTURE } from './outline-edit.ts';
import type { Shown } from './shown.ts';
import { useDraft } from './use-draft.ts';
import { useMerge } from './use-merge.ts';

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
  return <EditControls plane={plane} writable={writable} shown={shown} />;
}

function howTo(plane: PlaneView, way: OutlineWay): string {
  if (way === 'round') return words.outline.drawRound(plane.name);
  if (way === 'split') return words.outline.splitHow(plane.name);
  return plane.kind === 'sky' ? words.outline.drawSky(plane.name) : words.outline.drawRidge(plane.name);
}

/** A plane without an outline on the pictures in view: how to give it one. */
function BeginControls({ plane, target }: { plane: PlaneView; target: PictureView }) {
  const { way, setWay } = useEasel();
  const { outlining, setOutlining } = useTools();
  const { write } = useBoardLive();
  const paints = outlining === 'add';
  const draw = (next: typeof way) => {
    setWay(next);
    setOutlining('line');
  };
  return (
    <>
      <p className={styles.sentence}>{paints ? words.outline.addHow(plane.name) : howTo(plane, way)}</p>
      <fieldset className={styles.choice} aria-label={words.outline.how}>
        <button type="button" aria-pressed={!paints && way === 'ridge'} onClick={() => draw('ridge')}>
          {words.outline.ridge}
        </button>
        <button type="button" aria-pressed={!paints && way === 'round'} onClick={() => draw('round')}>
          {words.outline.round}
        </button>
        <button type="button" aria-pressed={paints} onClick={() => setOutlining('add')}>
          {words.outline.paintOver}
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
  if (!draft) return null;
  return (
    <>
      <p className={styles.sentence}>
        {howTo(plane, draft.way)}{' '}
        <span className={styles.count}>{words.outline.soFar(draft.stops.length)}</span>
      </p>
      <div className={styles.buttons}>
        <Button weight="main" onClick={() => finish()}>
          {draft.way === 'split' ? words.outline.splitFinish : words.outline.finish}
        </Button>
        <Button onClick={takeBack}>{words.outline.back}</Button>
        <FollowSwitch />
        <Button weight="word" onClick={giveUp}>
          {words.outline.giveUp}
        </Button>
      </div>
    </>
  );
}

/** Whether lines bend onto the edge between two points. */
function FollowSwitch() {
  const { following, setFollowing } = useEasel();
  return (
    <Button aria-pressed={following} title={words.outline.followWhy} onClick={() => setFollowing(!following)}>
      {words.outline.follow}
    </Button>
  );
}

interface EditControlsProps {
  plane: PlaneView;
  writable: PictureView[];
  shown: Shown;
}

/** A plane that has its outline: what the hand does to it. */
function EditControls({ plane, writable, shown }: EditControlsProps) {
  const { outlining } = useTools();
  const [asks, setAsks] = useState<'join' | 'redraw' | null>(null);
  const done = () => setAsks(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another plane or another hand ends the question.
  useEffect(() => setAsks(null), [plane.id, outlining]);
  if (asks === 'join') return <JoinControls plane={plane} done={done} />;
  if (asks === 'redraw') return <RedrawControls plane={plane} writable={writable} done={done} />;
  const how = {
    line: words.outline.nudge,
    add: words.outline.addHow,
    away: words.outline.awayHow,
    split: words.outline.splitHow,
  }[outlining];
  return (
    <>
      <p className={styles.sentence}>{how(plane.name)}</p>
      <HandChoice join={() => setAsks('join')} redraw={() => setAsks('redraw')} />
      <CarryThis plane={plane} writable={writable} shown={shown} />
    </>
  );
}

function HandChoice({ join, redraw }: { join(): void; redraw(): void }) {
  const { outlining, setOutlining } = useTools();
  const { may, planes } = useBoardLive();
  const { setSentence } = useEasel();
  const allowed = (act: () => void) => () => {
    setSentence(may.setup ? null : words.outline.partsNeedSetup);
    if (may.setup) act();
  };
  const take = (next: Outlining) => () => {
    setSentence(null);
    setOutlining(next);
  };
  return (
    <fieldset className={styles.choice} aria-label={words.outline.hand}>
      {OUTLININGS.map((each) => (
        <button
          key={each}
          type="button"
          aria-pressed={each === outlining}
          onClick={each === 'split' ? allowed(take(each)) : take(each)}
        >
          {words.outline.hands[each]}
        </button>
      ))}
      {planes.length > 1 ? (
        <button type="button" onClick={allowed(join)}>
          {words.outline.join}
        </button>
      ) : null}
      <button type="button" onClick={redraw}>
        {words.outline.redraw}
      </button>
    </fieldset>
  );
}

/** Which of its neighbours far to near becomes part of the plane. */
function JoinControls({ plane, done }: { plane: PlaneView; done(): void }) {
  const { planes } = useBoardLive();
  const merge = useMerge();
  const neighbours = planes.filter(({ number }) => Math.abs(number - plane.number) === 1);
  return (
    <>
      <p className={styles.sentence}>{words.outline.joinWhich(plane.name)}</p>
      <div className={styles.buttons}>
        {neighbours.map((other) => (
          <Button
            key={other.id}
            onClick={() => {
              void merge(plane, other);
              done();
            }}
          >
            {other.name}
          </Button>
        ))}
        <Button weight="word" onClick={done}>
          {words.outline.joinNot}
        </Button>
      </div>
    </>
  );
}

interface RedrawControlsProps {
  plane: PlaneView;
  writable: PictureView[];
  done(): void;
}

/** On which picture the outline is drawn anew, or taken off. */
function RedrawControls({ plane, writable, done }: RedrawControlsProps) {
  const { outlinesOf, write } = useBoardLive();
  const { setOutlining } = useTools();
  const { way, setDraft } = useEasel();
  const drawn = writable.filter(({ id }) => outlinesOf(id).has(plane.id));
  const redraw = (pictureId: string) => {
    setOutlining('line');
    setDraft({ pictureId, planeId: plane.id, way, points: [], stops: [] });
    done();
  };
  return (
    <>
      <p className={styles.sentence}>{words.outline.redrawHow(plane.name)}</p>
      <div className={styles.buttons}>
        {drawn.map(({ id, kind }) => (
          <span key={id} className={styles.buttons}>
            {words.outline.on[kind]}
            <Button weight="word" onClick={() => redraw(id)}>
              {words.outline.again}
            </Button>
            <Button
              weight="word"
              onClick={() => {
                write.deleteOutline(id, plane.id);
                done();
              }}
            >
              {words.outline.remove}
            </Button>
          </span>
        ))}
        <Button weight="word" onClick={done}>
          {words.outline.joinNot}
        </Button>
      </div>
    </>
  );
}

/** Offers to carry planes over to a painting that lacks this one. */
function CarryThis({ plane, writable, shown: { reference, painting } }: EditControlsProps) {
  const { outlinesOf } = useBoardLive();
  const { begin } = useCarryDoor();
  const on = (picture: PictureView) => outlinesOf(picture.id).has(plane.id);
  if (!reference || !painting || !writable.includes(painting)) return null;
  if (!on(reference) || on(painting)) return null;
  return (
    <Button weight="main" onClick={begin}>
      {carryWords.offer}
    </Button>
  );
}
