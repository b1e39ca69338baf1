'use client';
/**
 * The groupings as small pictures of which one is chosen: by pointer, finger, or the arrow keys; Enter takes it.
 *
 * In the flow: chooser -> [grouping-choice]. Radio buttons as the ARIA Authoring Practices describe them.
 */
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { proposeWords as words } from '#words/propose.ts';
import { GroupingSmall } from './grouping-small.tsx';
import type { Grouping } from './groupings.ts';
import styles from './propose.module.css';

interface GroupingChoiceProps {
  boardId: string;
  pictureId: string;
  aspect: number;
  all: readonly Grouping[];
  chosenAt: number;
  suggestedAt: number;
  /** True: the keys go to the chosen one as soon as it is there. */
  takesKeys: boolean;
  onChoose(at: number): void;
  /** The one under the pointer; null when it leaves. */
  onLook(at: number | null): void;
  onTake(): void;
}

const STEPS: Record<string, number> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

export function GroupingChoice(props: GroupingChoiceProps) {
  const { boardId, pictureId, aspect, all, chosenAt, suggestedAt, takesKeys, onChoose, onLook, onTake } =
    props;
  const list = useRef<HTMLDivElement>(null);
  const focusOn = (at: number) => list.current?.querySelectorAll('button')[at]?.focus();
  // biome-ignore lint/correctness/useExhaustiveDependencies: only the asking moves the keys here, not each choice.
  useEffect(() => {
    if (takesKeys) focusOn(chosenAt);
  }, [takesKeys]);
  const choose = (at: number) => {
    onChoose(at);
    focusOn(at);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const byNumber = all.findIndex((grouping) => String(grouping.length) === event.key);
    const step = STEPS[event.key];
    if (event.key === 'Enter') onTake();
    else if (step) choose((chosenAt + step + all.length) % all.length);
    else if (byNumber >= 0) choose(byNumber);
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={list}
      className={styles.groupings}
      role="radiogroup"
      aria-label={words.groupings}
      aria-description={words.keys}
      onKeyDown={onKeyDown}
      onPointerLeave={() => onLook(null)}
    >
      {all.map((grouping, at) => (
        // biome-ignore lint/a11y/useSemanticElements: the whole small picture is the choice, and Enter takes it.
        <button
          key={grouping.length}
          type="button"
          role="radio"
          className={styles.grouping}
          aria-checked={at === chosenAt}
          tabIndex={at === chosenAt ? 0 : -1}
          aria-label={words.grouping(
            grouping.map(({ name }) => name),
            at === suggestedAt,
          )}
          onClick={() => onChoose(at)}
          onPointerEnter={({ pointerType }) => pointerType === 'mouse' && onLook(at)}
        >
          <GroupingSmall boardId={boardId} pictureId={pictureId} grouping={grouping} aspect={aspect} />
          <span className={styles.caption}>
            {words.caption(grouping.length)}
            {at === suggestedAt ? <span className={styles.suggested}>{words.suggested}</span> : null}
          </span>
        </button>
      ))}
    </div>
  );
}
