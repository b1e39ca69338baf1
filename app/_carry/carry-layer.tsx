'use client';
/**
 * The planes that are being carried over, over the painting: ridges, what is unsure of them, corners to pull.
 *
 * In the flow: carry-desk -> [carry-layer] -> stage; and, for the others, that somebody is placing planes.
 */
import { Fragment, useEffect, useId } from 'react';
import { useEasel } from '#app/_easel/easel-state.tsx';
import lines from '#app/_easel/layers.module.css';
import { linePattern } from '#app/_easel/line-pattern.ts';
import { BOX, closedPath, openPath } from '#app/_easel/shape-path.ts';
import { useStage } from '#app/_easel/stage-context.tsx';
import { type ToolHand, useGiveHand } from '#app/_easel/use-tool-hand.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { carryHold } from '#app/_live/presence.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';
import { carryWords as words } from '#words/carry.ts';
import styles from './carry.module.css';
import { useCarryDoor } from './carry-desk.tsx';
import type { CarryDesk } from './carry-desk-types.ts';
import { boundsOfAll, cornersOf } from './placing.ts';
import { signsOf, stretchesOf } from './unsure-places.ts';
import { handlesOf, useCarryHand } from './use-carry-hand.ts';

const at = ([x, y]: FractionPoint) => ({ left: `${x * 100}%`, top: `${y * 100}%` });

/** The layer with the hand that places planes, which is there as soon as something is carried. */
export function CarryPlaces(props: { picture: PictureView; give: ToolHand['give'] }) {
  const { work } = useCarryDoor();
  return (
    <>
      <CarryLayer />
      {work ? <CarryHand {...props} /> : null}
    </>
  );
}

function CarryHand({ picture, give }: { picture: PictureView; give: ToolHand['give'] }) {
  useGiveHand(give, useCarryHand(picture));
  return null;
}

export function CarryLayer() {
  const { picture } = useStage();
  const { work: desk } = useCarryDoor();
  const { heldBy } = useBoardLive();
  const other = heldBy(carryHold(picture.id));
  if (other) {
    return (
      <p className={styles.other} role="status">
        {words.heldBy(other)}
      </p>
    );
  }
  return desk?.placing && desk.wish?.toId === picture.id && desk.carried ? <Carried {...desk} /> : null;
}

/** The ladder follows what is being placed. */
function useInLadder({ wish, outlines }: CarryDesk): void {
  const { setMoving } = useEasel();
  const pictureId = wish?.toId;
  useEffect(() => {
    if (!pictureId || outlines.size === 0) return;
    setMoving({ pictureId, outlines });
    return () => setMoving(null);
  }, [pictureId, outlines, setMoving]);
}

function Carried(desk: CarryDesk) {
  const { carried, wish, inHand, fit, laid } = desk;
  const { frame, aspect } = useStage();
  const { planes } = useBoardLive();
  const id = useId();
  useInLadder(desk);
  const shown = (point: FractionPoint) => frame.shown(wish ? wish.original(point) : point);
  const drawn = (carried?.planes ?? []).flatMap((plane) => {
    const view = planes.find((each) => each.id === plane.id);
    return view ? [{ plane, view, outline: plane.outline.map(shown), stretches: stretchesOf(plane) }] : [];
  });
  const { badges } = planePlaces(drawn.map(({ plane, outline }) => ({ planeId: plane.id, outline })));
  const handles = handlesOf(desk);
  const edge = laid && inHand === null ? cornersOf(boundsOfAll(laid.placement)) : handles;
  return (
    <>
      <svg
        className={lines.lines}
        viewBox={`0 0 ${BOX} ${BOX * aspect}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path className={styles.edge} d={closedPath(edge.map(shown), aspect)} />
        {drawn.map(({ plane, view, stretches }, index) => {
          const nearer = drawn.slice(index + 1);
          const { dashes, core, casing } = linePattern(view.number);
          return (
            <Fragment key={plane.id}>
              <mask
                id={`${id}-${index}`}
                maskUnits="userSpaceOnUse"
                x={0}
                y={0}
                width={BOX}
                height={BOX * aspect}
              >
                <rect width={BOX} height={BOX * aspect} fill="var(--white)" />
                {nearer.map((other) => (
                  <path key={other.plane.id} d={closedPath(other.outline, aspect)} fill="var(--black)" />
                ))}
              </mask>
              <g data-chosen={plane.id === inHand || undefined} mask={`url(#${id}-${index})`}>
                {stretches.map(({ unsure, points }, stretch) => {
                  const path = openPath(points.map(shown), aspect);
                  return fit && unsure ? (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a stretch is named by its place along the ridge.
                    <g key={stretch}>
                      <path className={styles.band} d={path} />
                      <path className={styles.open} d={path} />
                    </g>
                  ) : (
                    // biome-ignore lint/suspicious/noArrayIndexKey: as above.
                    <g key={stretch}>
                      <path className={lines.casing} d={path} stroke={casing} strokeDasharray={dashes} />
                      <path className={lines.core} d={path} stroke={core} strokeDasharray={dashes} />
                    </g>
                  );
                })}
              </g>
            </Fragment>
          );
        })}
      </svg>
      {handles.map((corner, index) => (
        <span
          key={words.handle(index)}
          className={styles.handle}
          style={at(shown(corner))}
          aria-hidden="true"
        />
      ))}
      {fit
        ? drawn.flatMap(({ plane, stretches }) =>
            signsOf(stretches).map((sign) => (
              <span
                key={`${plane.id} ${sign.join()}`}
                className={styles.sign}
                style={at(shown(sign))}
                aria-hidden="true"
              >
                ?
              </span>
            )),
          )
        : null}
      {drawn.map(({ plane, view }) => {
        const place = badges.get(plane.id);
        return place ? (
          <span
            key={plane.id}
            className={lines.badge}
            data-chosen={plane.id === inHand || undefined}
            style={at(place)}
            aria-hidden="true"
          >
            {view.number}
          </span>
        ) : null;
      })}
    </>
  );
}
