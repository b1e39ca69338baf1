'use client';
/**
 * The bar under the pictures while the hand marks: which kind, how it is made, and what it needs beside.
 *
 * In the flow: easel bar -> [mark-controls] -> mark desk, marks room.
 */
import { type KeyboardEvent, useRef, useSyncExternalStore } from 'react';
import bar from '#app/_easel/easel-bar.module.css';
import { useEasel } from '#app/_easel/easel-state.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { markWords as words } from '#words/marks.ts';
import styles from './controls.module.css';
import type { Growing } from './growing-store.ts';
import { HAND_KINDS, type HandKind, useMarkDesk } from './mark-desk.tsx';
import { MadeWords, PlacedWords } from './mark-words.tsx';
import { SketchControls } from './sketch-controls.tsx';

export function MarkControls({ painting }: { painting: PictureView | null }) {
  const { may } = useBoardLive();
  const { pin } = useEasel();
  if (!may.mark) return <p className={bar.sentence}>{words.onlyLook}</p>;
  return (
    <>
      <Kinds />
      {pin ? <PlacedWords key={`${pin.pictureId} ${pin.kind}`} placed={pin} /> : <How painting={painting} />}
    </>
  );
}

/** One of the kinds is in hand; arrow keys go along, as in any row of choices (ARIA Authoring Practices). */
function Kinds() {
  const { kind, setKind } = useMarkDesk();
  const { setPin } = useEasel();
  const row = useRef<HTMLDivElement>(null);
  const choose = (next: HandKind) => {
    setPin(null);
    setKind(next);
  };
  const goAlong = (event: KeyboardEvent) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    const at = (HAND_KINDS.indexOf(kind) + step + HAND_KINDS.length) % HAND_KINDS.length;
    choose(HAND_KINDS[at] ?? 'pin');
    row.current?.querySelectorAll('button')[at]?.focus();
  };
  return (
    <div ref={row} className={styles.kinds} role="radiogroup" aria-label={words.kind} onKeyDown={goAlong}>
      {HAND_KINDS.map((name) => (
        // biome-ignore lint/a11y/useSemanticElements: these are buttons of a row, and look like the others of the bar.
        <button
          key={name}
          type="button"
          role="radio"
          aria-checked={kind === name}
          tabIndex={kind === name ? 0 : -1}
          onClick={() => choose(name)}
        >
          {words.kinds[name]}
        </button>
      ))}
    </div>
  );
}

/** What can be done with a mark that is set point by point. */
function Acts({ growing }: { growing: Growing }) {
  return (
    <div className={bar.buttons}>
      {growing.kind === 'arrow' ? null : (
        <Button weight="main" onClick={() => growing.finish()}>
          {words.finish}
        </Button>
      )}
      <Button weight="word" onClick={() => growing.back()}>
        {words.back}
      </Button>
      <Button weight="word" onClick={() => growing.giveUp()}>
        {words.giveUp}
      </Button>
    </div>
  );
}

const nothing = () => null;

/** How the mark in hand is made; while one grows point by point, what can be done with it. */
function How({ painting }: { painting: PictureView | null }) {
  const { kind, growing: store } = useMarkDesk();
  const { marks, board } = useBoardLive();
  const { markId } = useTools();
  const growing = useSyncExternalStore(store.subscribe, store.get, nothing);
  const made = marks.find(({ id }) => id === markId);
  const acts = growing && !growing.drawn ? <Acts growing={growing} /> : null;
  if (kind === 'sketch') return <SketchControls painting={painting} acts={acts} />;
  if (acts) return acts;
  if (made && made.author === board.me.id && made.text === '' && made.kind === kind) {
    return <MadeWords key={made.id} markId={made.id} />;
  }
  return <p className={bar.sentence}>{words.how[kind]}</p>;
}
