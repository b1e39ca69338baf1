'use client';
/**
 * The frames that were kept, side by side under their names; one of them, or the whole photograph, is looked at.
 *
 * In the flow: setup room -> [kept-list] -> chosen frame. Names are written when the field is left.
 */
import { type FormEvent, useEffect, useState } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { changeCrop, type KeptCrop, removeCrop } from '#server/core/live/plan/crops.ts';
import { frameWords } from '#words/plan-frames.ts';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { FrameCut } from './frame-cut.tsx';
import styles from './frames.module.css';
import { SideBySide } from './side-by-side.tsx';

const { kept: words, sheet } = frameWords;

interface KeptListProps {
  picture: PictureView;
  /** Whether they are shown side by side in place of the photograph. */
  beside: boolean;
  onBeside(beside: boolean): void;
  onWhole(): void;
}

export function KeptList({ picture, beside, onBeside, onWhole }: KeptListProps) {
  const { board } = useBoardLive();
  const { frameId, setFrameId } = usePlanChoice();
  const { frames } = useKeptFrames();
  return (
    <section className={styles.part} aria-labelledby="kept-frames">
      <div className={styles.head}>
        <h2 id="kept-frames">{words.title}</h2>
        {frames.length > 1 ? (
          <Button weight="word" onClick={() => onBeside(!beside)}>
            {beside ? words.besideEnd : words.beside}
          </Button>
        ) : null}
      </div>
      {frames.length === 0 ? <p className={styles.quiet}>{words.none}</p> : null}
      {frames.length > 0 ? (
        <ul className={styles.kept}>
          {frames.map((frame) => (
            <KeptOne
              key={frame.id}
              frame={frame}
              picture={picture}
              boardId={board.id}
              chosen={frame.id === frameId}
              onChoose={() => setFrameId(frame.id)}
            />
          ))}
        </ul>
      ) : null}
      {frames.length > 0 ? (
        <Button weight="word" aria-pressed={frameId === null} onClick={onWhole}>
          {words.whole}
        </Button>
      ) : null}
      {beside ? (
        <SideBySide
          boardId={board.id}
          picture={picture}
          frames={frames}
          onChoose={(id) => {
            setFrameId(id);
            onBeside(false);
          }}
        />
      ) : null}
    </section>
  );
}

interface KeptOneProps {
  frame: KeptCrop;
  picture: PictureView;
  boardId: string;
  chosen: boolean;
  onChoose(): void;
}

function KeptOne({ frame, picture, boardId, chosen, onChoose }: KeptOneProps) {
  const { may } = useBoardLive();
  const doc = useRoomDocument('setup');
  return (
    <li className={styles.one} data-chosen={chosen || undefined}>
      <button
        type="button"
        className={styles.pick}
        aria-pressed={chosen}
        aria-label={frame.name}
        onClick={onChoose}
      >
        <FrameCut boardId={boardId} picture={picture} box={frame.box} />
      </button>
      {may.setup && doc ? (
        <NameField frame={frame} onName={(name) => changeCrop(doc, frame.id, { name })} />
      ) : (
        <b>{frame.name}</b>
      )}
      <span className={styles.note}>{sheet.format(frame.canvas ?? frame.format)}</span>
      {may.setup && doc ? (
        <Button
          weight="word"
          aria-label={words.removeOf(frame.name)}
          onClick={() => removeCrop(doc, frame.id)}
        >
          {words.remove}
        </Button>
      ) : null}
    </li>
  );
}

/** An empty name is not taken: the old one comes back. */
function NameField({ frame, onName }: { frame: KeptCrop; onName(name: string): void }) {
  const [text, setText] = useState(frame.name);
  useEffect(() => setText(frame.name), [frame.name]);
  const done = () => {
    const name = text.trim();
    if (name === '') setText(frame.name);
    else if (name !== frame.name) onName(name);
  };
  const enter = (event: FormEvent) => {
    event.preventDefault();
    done();
  };
  return (
    <form onSubmit={enter}>
      <input
        className={styles.name}
        aria-label={words.name}
        value={text}
        maxLength={80}
        onChange={(event) => setText(event.target.value)}
        onBlur={done}
      />
    </form>
  );
}
