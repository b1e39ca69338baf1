'use client';
/**
 * Where the words of a new mark are written: in the bar under the pictures, so that nothing covers them. Kept as a draft
 * until they are said.
 *
 * In the flow: placed pin or words, or a mark just made -> [mark-words] -> the marks room.
 */
import { type FormEvent, type KeyboardEvent, useEffect, useRef } from 'react';
import bar from '#app/_easel/easel-bar.module.css';
import { type EaselState, useEasel } from '#app/_easel/easel-state.tsx';
import { useStage } from '#app/_easel/stage-context.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useDraft } from '#app/_live/drafts.ts';
import { noteSaid } from '#app/_phrases/phrase-store.ts';
import { Phrases } from '#app/_phrases/phrases.tsx';
import type { About } from '#app/_phrases/use-slots.ts';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import { TEXT_LIMIT } from '#server/core/live/layout.ts';
import { markWords as words } from '#words/marks.ts';
import styles from './marks.module.css';
import { usePlaneAt } from './use-plane-at.ts';

type Placed = NonNullable<EaselState['pin']>;

/** The place of the new pin or words on its picture. */
export function NewPlace() {
  const { picture, frame } = useStage();
  const { pin } = useEasel();
  if (pin?.pictureId !== picture.id) return null;
  const [x, y] = frame.shown(pin.point);
  const style = { left: `${x * 100}%`, top: `${y * 100}%` };
  return (
    <span
      className={pin.kind === 'text' ? styles.words : styles.pin}
      data-new=""
      data-chosen=""
      style={style}
      aria-hidden="true"
    >
      {pin.kind === 'text' ? '…' : '?'}
    </span>
  );
}

export function PlacedWords({ placed }: { placed: Placed }) {
  const { board, write } = useBoardLive();
  const { setPin } = useEasel();
  const { setMarkId } = useTools();
  const planeAt = usePlaneAt();
  const { pictureId, point, kind } = placed;
  const add = (text: string) => {
    setMarkId(write.addMark({ pictureId, kind, points: [point], text, planeId: planeAt(pictureId, point) }));
    setPin(null);
  };
  return (
    <Field
      draftKey={`${kind}/${board.id}/${pictureId}`}
      label={words.say[kind]}
      sendWord={words.send}
      place={placed}
      about={{ pictureId, planeId: planeAt(pictureId, point) }}
      send={add}
      cancel={() => setPin(null)}
    />
  );
}

/** A mark that was just drawn may be given words; it need not. */
export function MadeWords({ markId }: { markId: string }) {
  const { write } = useBoardLive();
  return (
    <Field
      draftKey={`made/${markId}`}
      label={words.sayMore}
      sendWord={words.keep}
      send={(text) => write.rewriteMark(markId, text)}
    />
  );
}

interface FieldProps {
  draftKey: string;
  label: string;
  sendWord: string;
  /** Each new place takes the caret to the field; without one the hand keeps it. */
  place?: Placed;
  /** What phrases of one's own are filled with, where they may go into the words. */
  about?: About;
  send(text: string): void;
  cancel?(): void;
}

function Field({ draftKey, label, sendWord, place, about, send, cancel }: FieldProps) {
  const [text, setText] = useDraft(draftKey);
  const field = useRef<HTMLTextAreaElement>(null);
  // On a narrow screen what is asked takes a second line.
  const wide = useWide();
  useEffect(() => {
    if (place) field.current?.focus({ preventScroll: true });
  }, [place]);
  const finish = () => {
    const said = text.trim();
    if (!said) return;
    setText('');
    noteSaid(said);
    send(said);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') cancel?.();
    if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
    event.preventDefault();
    finish();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    finish();
  };
  return (
    <form className={bar.say} onSubmit={onSubmit}>
      <textarea
        ref={field}
        className={bar.field}
        aria-label={label}
        placeholder={label}
        maxLength={TEXT_LIMIT}
        rows={wide ? 1 : 2}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <Button weight={place ? 'main' : 'quiet'} type="submit" disabled={text.trim() === ''}>
        {sendWord}
      </Button>
      {cancel ? (
        <Button weight="word" onClick={cancel}>
          {words.cancel}
        </Button>
      ) : null}
      {about ? <Phrases {...{ field, text, about }} change={setText} limit={TEXT_LIMIT} /> : null}
    </form>
  );
}
