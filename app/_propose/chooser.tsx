'use client';
/**
 * Planes that were found in a picture: looked at grouping by grouping, and one of them taken.
 *
 * In the flow: plane list -> [chooser] -> live writers. What is looked at lies over the picture on the easel and is
 * seen by nobody else; taking is one step that everybody sees.
 */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Choice } from '#app/_look/choice.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { proposeWords as words } from '#words/propose.ts';
import { Alternatives } from './alternatives.tsx';
import type { FindTarget } from './find-target.ts';
import styles from './propose.module.css';
import { useProposeDesk } from './propose-desk.tsx';
import type { Taken } from './taken.ts';
import { type GroupingsOfPicture, useGroupings } from './use-groupings.ts';

interface ChooserProps {
  targets: readonly FindTarget[];
  first: FindTarget;
  onTaken(taken: Taken): void;
}

export function Chooser({ targets, first, onTaken }: ChooserProps) {
  const { planes } = useBoardLive();
  const { setSide } = useTools();
  const { close } = useProposeDesk();
  const [pictureId, setPictureId] = useState(first.picture.id);
  const target = targets.find(({ picture }) => picture.id === pictureId) ?? first;
  const side = target.picture.kind;
  // On a narrow screen the picture that is looked into is the one that is shown.
  useEffect(() => setSide(side), [setSide, side]);
  const place = useRef<HTMLElement>(null);
  // Asked for from the foot of a long list, it would open out of sight.
  useEffect(() => {
    place.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <section ref={place} className={styles.chooser} aria-label={words.title[side]}>
      {planes.length > 0 ? (
        <div className={styles.head}>
          <h3 className={styles.title}>{words.title[side]}</h3>
          <Button weight="word" onClick={close}>
            {words.leave}
          </Button>
        </div>
      ) : null}
      {targets.length > 1 ? (
        <Choice
          label={words.where}
          options={targets.map(({ picture }) => ({ value: picture.id, name: words.sides[picture.kind] }))}
          chosen={target.picture.id}
          onChoose={(id: string) => setPictureId(id)}
        />
      ) : null}
      <Found key={target.picture.id} target={target} onTaken={onTaken} />
    </section>
  );
}

function Found({ target, onTaken }: { target: FindTarget; onTaken(taken: Taken): void }) {
  const found = useGroupings(target.picture);
  const { groupings } = found;
  if (groupings) return <Alternatives target={target} groupings={groupings} onTaken={onTaken} />;
  return <Waiting found={found} target={target} />;
}

/** The small pictures that are likely to come, so that nothing moves when they do. */
const PLACES = { set: [0, 1, 2, 3, 4, 5], match: [0] };

function Waiting({ found, target }: { found: GroupingsOfPicture; target: FindTarget }) {
  const { failed, doing, again } = found;
  const { kind, width, height } = target.picture;
  if (failed) {
    return (
      <Notice trouble sentence={failed === 'fetch' ? words.away : words.tooOld}>
        <Button onClick={again}>{words.tryAgain}</Button>
      </Notice>
    );
  }
  return (
    <>
      <p className={styles.doing} role="status">
        {doing === 'propose' ? words.doing.propose : words.doing.fetch(kind)}
      </p>
      <div className={styles.groupings} aria-hidden="true">
        {PLACES[target.way].map((at) => (
          <span key={at} className={styles.blank} style={{ aspectRatio: width / height }} />
        ))}
      </div>
    </>
  );
}
