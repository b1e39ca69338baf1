'use client';
/**
 * The strip beside the pictures while others are here: whom one looks with, who would like to speak, and what whoever
 * runs the class can do for everybody at once.
 *
 * In the flow: together -> [together-strip] -> presence, class room.
 */
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { late } from '#app/_ui/late.tsx';
import { readClass } from '#server/core/class/state.ts';
import { may } from '#server/core/permissions/may.ts';
import { togetherWords as words } from '#words/together.ts';
import { useTogether } from './together.tsx';
import styles from './together-strip.module.css';

const TogetherActs = late(() => import('./together-acts.tsx').then((module) => module.TogetherActs));

export function TogetherStrip() {
  const { board } = useBoardLive();
  const { others, wishes, sentence, lookers } = useTogether();
  const runs = may(board.role, 'room.class');
  const class_ = useRoomDocument('class');
  const { closed, quiet } = class_ ? readClass(class_) : { closed: false, quiet: false };
  const alone = others.length === 0 && wishes.length === 0;
  if (alone && !sentence && !closed && !quiet) return null;
  return (
    <section className={styles.strip} aria-label={words.label}>
      <div role="status" className={styles.said}>
        {sentence ? <p>{sentence}</p> : null}
        <With />
        {lookers.length > 0 ? <p className={styles.quiet}>{words.lookers(lookers)}</p> : null}
        {quiet ? <p>{words.quieted}</p> : null}
        {closed && !runs ? <p>{words.closed}</p> : null}
      </div>
      <TogetherActs alone={alone} runs={runs} />
    </section>
  );
}

/** Whom one looks with, and the way out. */
function With() {
  const { following, letGo } = useTogether();
  if (!following) return null;
  const { name, brought } = following;
  return (
    <p className={styles.with}>
      <span>{brought ? words.broughtTo(name) : words.lookingWith(name)}</span>
      <Button weight="quiet" onClick={letGo} title={words.letGoHow}>
        {words.letGo}
      </Button>
    </p>
  );
}
