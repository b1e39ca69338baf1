'use client';
/**
 * The planes of the scene far to near: add, name, order, delete, carry to the painting.
 *
 * In the flow: live planes -> [plane-list] -> writers; the chosen plane is shared with easel and ladder.
 */
import { useRef, useState } from 'react';
import { CarryOffer } from '#app/_carry/carry-offer.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { FindAgain, FindPart } from '#app/_propose/find-part.tsx';
import { useProposeDesk } from '#app/_propose/propose-desk.tsx';
import { SceneConditions } from '#app/_scene/scene-conditions.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { words } from '#words/easel.ts';
import { proposeWords } from '#words/propose.ts';
import { AddPlane } from './add-plane.tsx';
import { PlaneRow } from './plane-row.tsx';
import styles from './planes.module.css';
import { useDragOrder } from './use-drag-order.ts';

/** @param shown Whether its leaf is the one that is seen. */
export function PlaneList({ shown }: { shown: boolean }) {
  const { planes, may, write, undo } = useBoardLive();
  const { choosing } = useProposeDesk();
  const { planeId, setPlaneId } = useTools();
  const [deleted, setDeleted] = useState<string | null>(null);
  const order = useDragOrder(planes.length, (from, to) => {
    const plane = planes[from];
    if (plane) write.movePlane(plane.id, to);
  });
  const carryPlace = useRef<HTMLDivElement>(null);
  /** The keys go to what comes next: carrying to the painting, or the first plane. */
  const goOn = () => {
    setDeleted(null);
    const next = carryPlace.current?.querySelector('button') ?? order.list.current?.querySelector('button');
    next?.focus();
  };
  const remove = (id: string, name: string) => {
    write.deletePlane(id);
    setDeleted(name);
    if (planeId === id) setPlaneId(null);
  };
  return (
    <>
      <section className={styles.planes} aria-labelledby="planes-title">
        <h2 id="planes-title" className={styles.title}>
          {words.planes.title}
        </h2>
        <FindPart shown={shown} onTaken={goOn} />
        <ol ref={order.list} className={styles.list} data-dragging={order.from !== null || undefined}>
          {planes.map((plane, at) => (
            <PlaneRow
              key={plane.id}
              plane={plane}
              last={at === planes.length - 1}
              dragged={order.from === at}
              dropBefore={order.mark === at}
              dropAfter={order.mark === planes.length && at === planes.length - 1}
              grip={order.gripFor(at)}
              remove={() => remove(plane.id, plane.name)}
            />
          ))}
        </ol>
        {deleted !== null ? (
          <p className={styles.deleted} role="status">
            {words.planes.removed(deleted)}{' '}
            <Button
              weight="word"
              onClick={() => {
                undo();
                setDeleted(null);
              }}
            >
              {words.planes.undo}
            </Button>
          </p>
        ) : null}
        <div ref={carryPlace} hidden={choosing}>
          <CarryOffer />
        </div>
        {may.setup && planes.length === 0 && choosing ? (
          <h3 className={styles.byHand}>{proposeWords.byHand}</h3>
        ) : null}
        {may.setup && (planes.length === 0 || !choosing) ? (
          <AddPlane onAdded={() => setDeleted(null)} />
        ) : null}
        <FindAgain />
      </section>
      <SceneConditions />
    </>
  );
}
