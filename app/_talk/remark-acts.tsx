'use client';
/**
 * What can be done with a remark besides answering: nod at it, say what became of it, hide it.
 *
 * In the flow: remark -> [remark-acts] -> `nods` of the marks room, `answers` and `hidden` of the picture's room. A nod is
 * a name, never a number.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView, MarkWriters, Nod, RemarkWriters } from '#app/_live/mark-types.ts';
import type { MarkState } from '#server/core/live/layout.ts';
import { markWords as words } from '#words/marks.ts';
import styles from './talk.module.css';

export const NO_NODS: readonly Nod[] = [];
const SETTABLE = ['tried', 'done', 'declined'] as const;

export type RemarkActWriters = Pick<MarkWriters, 'setNod'> & RemarkWriters;

/** Who agrees, by name. */
export function Agreed({ nods, meId }: { nods: readonly Nod[]; meId: string }) {
  if (nods.length === 0) return null;
  const others = nods.filter(({ id }) => id !== meId).map(({ name }) => name);
  return <p className={styles.note}>{words.agree(others.length < nods.length, others)}</p>;
}

interface NodActProps {
  mark: MarkView;
  nods: readonly Nod[];
  meId: string;
  write: RemarkActWriters;
}

/** For everybody but its author. */
export function NodAct({ mark, nods, meId, write }: NodActProps) {
  if (mark.author === meId) return null;
  const nodded = nods.some(({ id }) => id === meId);
  return (
    <button
      type="button"
      className={styles.word}
      aria-pressed={nodded}
      aria-label={nodded ? words.unnodLabel(mark.authorName) : words.nodLabel(mark.authorName)}
      onClick={() => write.setNod(mark.id, !nodded)}
    >
      {nodded ? words.nodded : words.nod}
    </button>
  );
}

interface StateActsProps {
  mark: MarkView;
  state: MarkState;
  write: RemarkActWriters;
}

/** One tap says it; the same tap again opens the remark once more. */
export function StateActs({ mark, state, write }: StateActsProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are a few words in a row.
    <span className={styles.states} role="group" aria-label={words.setLabel(mark.number ?? 0)}>
      {SETTABLE.map((name) => (
        <button
          key={name}
          type="button"
          className={styles.word}
          aria-pressed={state === name}
          onClick={() => write.setMarkState(mark.pictureId, mark.id, state === name ? 'open' : name)}
        >
          {words.set[name]}
        </button>
      ))}
    </span>
  );
}

/** Of somebody else's words on one's own picture. */
export function HideAct({ mark, meId, write }: Omit<NodActProps, 'nods'>) {
  const hidden = mark.sight === 'hidden';
  if (mark.author === meId && !hidden) return null;
  return (
    <button
      type="button"
      className={styles.word}
      aria-label={hidden ? words.unhideLabel(mark.authorName) : words.hideLabel(mark.authorName)}
      onClick={() => write.setHidden(mark.pictureId, mark.id, !hidden)}
    >
      {hidden ? words.unhide : words.hide}
    </button>
  );
}

/** That not everybody sees it. */
export function SightNote({ mark, meId }: { mark: MarkView; meId: string }) {
  if (mark.sight === 'shown') return null;
  if (mark.sight === 'kept') return <p className={styles.note}>{words.sketch.kept}</p>;
  return <p className={styles.note}>{mark.author === meId ? words.hidden.own : words.hidden.others}</p>;
}

/** The plane a mark is about: chosen by itself when it was made, to be changed here. */
export function PlaneChoice({ mark }: { mark: MarkView }) {
  const { planes, write } = useBoardLive();
  if (planes.length === 0 || mark.kind === 'reply') return null;
  const known = planes.some(({ id }) => id === mark.planeId);
  return (
    <label className={styles.choice}>
      {words.plane}
      <select
        value={known ? (mark.planeId ?? '') : ''}
        onChange={(event) => write.setMarkPlane(mark.id, event.target.value || null)}
      >
        <option value="">{words.noPlane}</option>
        {planes.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
