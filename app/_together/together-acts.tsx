'use client';
/**
 * What can be done in the strip while others are here: ask to speak, thank for it, and what whoever runs the class does
 * for everybody at once.
 *
 * In the flow: together-strip, loaded late -> [together-acts] -> presence, class room.
 */
import { uuidv4 } from 'lib0/random';
import { type ReactNode, useEffect, useState } from 'react';
import { useBoardLive, usePresenceLine, useRoomDocument } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { setLook, setSwitch } from '#server/core/class/run.ts';
import { readClass } from '#server/core/class/state.ts';
import { togetherWords as words } from '#words/together.ts';
import { useTogether } from './together.tsx';
import styles from './together-strip.module.css';

export function TogetherActs({ alone, runs }: { alone: boolean; runs: boolean }) {
  return (
    <>
      <Wishes runs={runs} />
      <div className={styles.acts}>
        {alone || runs ? null : <Ask />}
        {runs ? <Running /> : null}
      </div>
    </>
  );
}

/** One's own wish to speak. It is laid down by oneself, or by the thanks of who runs the class. */
function Ask() {
  const line = usePresenceLine();
  const { thanked } = useTogether();
  const [wish, setWish] = useState<string | null>(null);
  const heard = wish !== null && thanked.includes(wish);
  useEffect(() => {
    if (heard) setWish(null);
  }, [heard]);
  // The server writes since when.
  useEffect(() => line.tell({ wish: wish === null ? null : { id: wish, sinceMs: 0 } }), [line, wish]);
  if (wish === null) return <Button onClick={() => setWish(uuidv4())}>{words.ask}</Button>;
  return (
    <>
      <span role="status">{words.asked}</span>
      <Button weight="word" onClick={() => setWish(null)}>
        {words.takeBack}
      </Button>
    </>
  );
}

/** Who would like to speak: calmly by name; who runs the class can thank each of them. */
function Wishes({ runs }: { runs: boolean }) {
  const { board } = useBoardLive();
  const line = usePresenceLine();
  const { wishes } = useTogether();
  const [thanks, setThanks] = useState<readonly string[]>([]);
  useEffect(() => line.tell({ thanks: [...thanks] }), [line, thanks]);
  const theirs = wishes.filter(({ person, id }) => person.id !== board.me.id && !thanks.includes(id));
  if (theirs.length === 0) return null;
  return (
    <div className={styles.wishes}>
      <p role="status">{words.wishes(theirs.map(({ person }) => person.name))}</p>
      {runs ? (
        <div className={styles.acts}>
          {theirs.map(({ person, id }) => (
            <Button
              key={id}
              title={words.thankHow(person.name)}
              onClick={() => setThanks((before) => [...before.slice(-20), id])}
            >
              {words.thank(person.name)}
            </Button>
          ))}
        </div>
      ) : null}
    </div>
  );
}

/** What whoever runs the class does for everybody: one tap each. */
function Running() {
  const { board } = useBoardLive();
  const doc = useRoomDocument('class');
  if (!doc) return null;
  const { look, closed, quiet } = readClass(doc);
  const mine = look?.personId === board.me.id;
  return (
    <>
      <Switch
        how={words.bringHow}
        onPress={() => setLook(doc, mine ? null : { personId: board.me.id, since: Date.now() })}
      >
        {mine ? words.setFree : words.bring}
      </Switch>
      {mine ? (
        <Switch
          how={words.bringHow}
          onPress={() => setLook(doc, { personId: board.me.id, since: Date.now() })}
        >
          {words.bringAgain}
        </Switch>
      ) : null}
      <Switch on={quiet} how={words.quietHow} onPress={() => setSwitch(doc, 'quiet', !quiet)}>
        {words.quiet}
      </Switch>
      <Switch on={closed} how={words.closeMarkingHow} onPress={() => setSwitch(doc, 'closed', !closed)}>
        {words.closeMarking}
      </Switch>
    </>
  );
}

interface SwitchProps {
  /** Left out where pressing it does not stay. */
  on?: boolean;
  how: string;
  onPress(): void;
  children: ReactNode;
}

function Switch({ on, how, onPress, children }: SwitchProps) {
  return (
    <button type="button" className={styles.switch} aria-pressed={on} title={how} onClick={onPress}>
      {children}
    </button>
  );
}
