'use client';
/**
 * The groupings that were found, the one that is looked at in words, and what taking it would do.
 *
 * In the flow: chooser -> [alternatives] -> easel preview, live writers.
 */
import { useEffect, useState } from 'react';
import { troubleOf } from '#app/_easel/outline-trouble.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { planesHold } from '#app/_live/presence.ts';
import { Choice } from '#app/_look/choice.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { proposeWords as words } from '#words/propose.ts';
import type { FindTarget } from './find-target.ts';
import { GroupingChoice } from './grouping-choice.tsx';
import { type Grouping, type Groupings, whyNoMore } from './groupings.ts';
import styles from './propose.module.css';
import { useProposeDesk } from './propose-desk.tsx';
import type { Taken } from './taken.ts';
import { useChoosingHold } from './use-choosing-hold.ts';
import { useKeysOnceAsked } from './use-keys-once-asked.ts';

interface AlternativesProps {
  target: FindTarget;
  groupings: Groupings;
  onTaken(taken: Taken): void;
}

interface Offer {
  all: readonly Grouping[];
  /** Why there are no more groupings, or none. */
  note: string | null;
  /** What can be done where there are none. */
  byHand: string;
  /** Index of the one to begin with. */
  first: number;
}

/** What may be chosen here: everything, or the one grouping that fits the board's planes. */
function offered({ way }: FindTarget, groupings: Groupings, planes: number): Offer {
  if (way === 'set') {
    return { all: groupings.all, note: whyNoMore(groupings), byHand: words.none, first: groupings.chosenAt };
  }
  const all = groupings.all.filter((grouping) => grouping.length === planes);
  const note = groupings.notes.get(planes);
  return { all, note: note ?? words.tooMany(planes), byHand: note ? words.noMatch : '', first: 0 };
}

export function Alternatives({ target, groupings, onTaken }: AlternativesProps) {
  const { planes } = useBoardLive();
  const offer = offered(target, groupings, planes.length);
  if (offer.all.length > 0) return <Choosing {...{ target, groupings, offer, onTaken }} />;
  return (
    <p className={styles.note} role="status">
      {offer.note} {offer.byHand}
    </p>
  );
}

/** Which grouping is chosen, and which is looked at: the one under the pointer before the chosen one. */
function useLooked({ all, first }: Offer, pictureId: string) {
  const { show } = useProposeDesk();
  const [chosen, setChosen] = useState(first);
  const [looked, setLooked] = useState<number | null>(null);
  const chosenAt = Math.min(chosen, all.length - 1);
  const shownAt = Math.min(looked ?? chosenAt, all.length - 1);
  const grouping = all[shownAt];
  useEffect(() => {
    if (grouping) show({ pictureId, grouping });
    return () => show(null);
  }, [show, pictureId, grouping]);
  const choose = (at: number) => {
    setLooked(null);
    setChosen(at);
  };
  return { chosenAt, shownAt, choose, look: setLooked };
}

function Choosing({ target, groupings, offer, onTaken }: AlternativesProps & { offer: Offer }) {
  const { picture, way } = target;
  const { board, planes } = useBoardLive();
  const { all } = offer;
  const { chosenAt, shownAt, choose, look } = useLooked(offer, picture.id);
  const [keeps, setKeeps] = useState(true);
  const takesKeys = useKeysOnceAsked();
  const hold = useChoosingHold(picture.id);
  const { take, trouble } = useTake(target, all[chosenAt], keeps, onTaken);
  const suggestedAt = way === 'set' ? groupings.chosenAt : -1;
  const count = all[chosenAt]?.length ?? 0;
  return (
    <>
      <p className={styles.lead}>{way === 'set' ? words.lead : words.leadMatch(planes.length)}</p>
      <GroupingChoice
        boardId={board.id}
        pictureId={picture.id}
        aspect={picture.height / picture.width}
        {...{ all, chosenAt, suggestedAt, takesKeys }}
        onChoose={(at) => {
          hold();
          choose(at);
        }}
        onLook={look}
        onTake={take}
      />
      {way === 'set' && planes.length > 0 ? (
        <OfThePlanes count={count} side={picture.kind} {...{ keeps, setKeeps }} />
      ) : null}
      <div className={styles.acts}>
        <Button weight="main" onClick={take}>
          {way === 'set' ? words.take(count) : words.takeMatch(picture.kind)}
        </Button>
        <ChoosingToo pictureId={picture.id} />
      </div>
      <p className={styles.trouble} role="alert">
        {trouble}
      </p>
      <InWords grouping={all[shownAt] ?? []} matched={way === 'match'} />
      {shownAt === suggestedAt ? <p className={styles.note}>{words.why(groupings.reason)}</p> : null}
      {way === 'set' && shownAt === all.length - 1 && offer.note ? (
        <p className={styles.note}>{offer.note}</p>
      ) : null}
    </>
  );
}

/** Somebody else who is choosing planes for the same picture. */
function ChoosingToo({ pictureId }: { pictureId: string }) {
  const { heldBy } = useBoardLive();
  const chooser = heldBy(planesHold(pictureId));
  return (
    <p className={styles.note} role="status">
      {chooser ? words.choosing(chooser) : null}
    </p>
  );
}

/** Names of the planes that are looked at, far to near; matched, they go by the names of the board's own. */
function InWords({ grouping, matched }: { grouping: Grouping; matched: boolean }) {
  const { planes } = useBoardLive();
  return (
    <ol className={styles.names} aria-live="polite">
      {grouping.map(({ name }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a proposed plane has no other name than its place.
        <li key={at}>
          <span className={styles.place}>{at + 1}</span> {matched ? planes[at]?.name : name}
        </li>
      ))}
    </ol>
  );
}

interface OfThePlanesProps {
  /** Planes of the grouping that would be taken. */
  count: number;
  side: FindTarget['picture']['kind'];
  keeps: boolean;
  setKeeps(keeps: boolean): void;
}

/** What becomes of the planes that are there: only where the number is the same can they be kept. */
function OfThePlanes({ count, side, keeps, setKeeps }: OfThePlanesProps) {
  const { planes } = useBoardLive();
  const same = count === planes.length;
  return (
    <div className={styles.ofThePlanes}>
      {same ? (
        <Choice
          label={words.ownNames}
          options={[
            { value: true, name: words.keep },
            { value: false, name: words.replace },
          ]}
          chosen={keeps}
          onChoose={setKeeps}
        />
      ) : null}
      <p className={styles.note}>{same && keeps ? words.keepWhy(side) : words.replaceWhy(planes.length)}</p>
    </div>
  );
}

/** Takes a grouping: as a new set, or as outlines for the planes that are there. */
function useTake(
  { picture, way }: FindTarget,
  grouping: Grouping | undefined,
  keeps: boolean,
  onTaken: (taken: Taken) => void,
) {
  const { planes, write } = useBoardLive();
  const { close } = useProposeDesk();
  const { setLinesShown } = useTools();
  const [trouble, setTrouble] = useState<string | null>(null);
  const lays = planes.length > 0 && planes.length === grouping?.length && (way === 'match' || keeps);
  const take = () => {
    if (!grouping) return;
    const before = planes.map(({ id }) => id);
    let ids: string[] | null = null;
    const failed = troubleOf(() => {
      if (lays) {
        const outlines = grouping.map(({ outline }, at) => [before[at] ?? '', outline] as const);
        write.layOutlines(picture.id, new Map(outlines));
      } else ids = write.takePlanes(picture.id, grouping);
    });
    setTrouble(failed);
    if (failed !== null) return;
    setLinesShown(true);
    close();
    onTaken({ side: picture.kind, ids, before });
  };
  return { take, trouble };
}
