'use client';
/**
 * Where the words of a new pin are written: in the bar under the pictures, so that nothing covers them. Kept as
 * a draft until it is said.
 *
 * In the flow: pin hand -> [pin-words] -> the marks room.
 */
import { type FormEvent, type KeyboardEvent, useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useDraft } from '#app/_live/drafts.ts';
import { Button } from '#app/_ui/button.tsx';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import styles from './easel-bar.module.css';
import { useEasel } from './easel-state.tsx';
import layers from './layers.module.css';
import { planePlaces } from './plane-places.ts';
import { useStage } from './stage-context.tsx';

/** The place of the new pin on its picture. */
export function NewPin() {
  const { picture, frame } = useStage();
  const { pin } = useEasel();
  if (pin?.pictureId !== picture.id) return null;
  const [x, y] = frame.shown(pin.point);
  const style = { left: `${x * 100}%`, top: `${y * 100}%` };
  return (
    <span className={layers.pin} data-new="" data-chosen="" style={style} aria-hidden="true">
      ?
    </span>
  );
}

export function PinWords({ pin }: { pin: { pictureId: string; point: FractionPoint } }) {
  const { board, planes, outlinesOf, write } = useBoardLive();
  const { setPin } = useEasel();
  const { setMarkId } = useTools();
  const [text, setText] = useDraft(`pin/${board.id}/${pin.pictureId}`);
  const field = useRef<HTMLTextAreaElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new place asks for its words.
  useEffect(() => field.current?.focus({ preventScroll: true }), [pin]);
  const send = () => {
    const said = text.trim();
    if (!said) return;
    const outlines = outlinesOf(pin.pictureId);
    const drawn = planes.flatMap(({ id }) => {
      const outline = outlines.get(id);
      return outline ? [{ planeId: id, outline }] : [];
    });
    setMarkId(write.addPin({ ...pin, text: said, planeId: planePlaces(drawn).planeAt(pin.point) }));
    setText('');
    setPin(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') setPin(null);
    if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
    event.preventDefault();
    send();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    send();
  };
  return (
    <form className={styles.say} onSubmit={onSubmit}>
      <textarea
        ref={field}
        className={styles.field}
        aria-label={words.mark.say}
        placeholder={words.mark.say}
        maxLength={4000}
        rows={2}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <Button weight="main" type="submit" disabled={text.trim() === ''}>
        {words.mark.send}
      </Button>
      <Button weight="word" onClick={() => setPin(null)}>
        {words.mark.cancel}
      </Button>
    </form>
  );
}
