'use client';
/**
 * A teacher's words for a card: each part a field of its own; only the parts that were changed are written.
 *
 * In the flow: teacher's hand -> [card-form] -> `cards` of the painting's room.
 */
import { type FormEvent, type ReactNode, useId, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Phrases } from '#app/_phrases/phrases.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { LiveCard } from '#server/core/live/layout.ts';
import { CARD_WORDS, type CardWords, type ShownCard } from '#server/core/live/show-cards.ts';
import { critiqueWords } from '#words/critique.ts';
import { words as easelWords } from '#words/easel.ts';
import styles from './critique.module.css';
import { useDesk } from './desk.tsx';

const { teacher: words } = critiqueWords;
/** Longest words of each part, in characters; the room takes no more. */
const LONGEST: Record<keyof CardWords, number> = { what: 400, how: 1000, why: 1000, check: 1000 };
const NOTHING: CardWords = { what: '', how: '', why: '', check: '' };

interface WordsFormProps {
  first: CardWords;
  /** What an empty field goes back to; null = nothing was measured. */
  measured: CardWords | null;
  planeId: string | null;
  children?: ReactNode;
  keep(now: CardWords): void;
  cancel(): void;
}

function WordsForm({ first, measured, planeId, children, keep, cancel }: WordsFormProps) {
  const [now, setNow] = useState(first);
  const { painting } = useDesk();
  // Phrases go into the field that was written in last.
  const field = useRef<HTMLTextAreaElement>(null);
  const [part, setPart] = useState<keyof CardWords>('what');
  const id = useId();
  const lacking = now.what.trim() === '' && measured === null;
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (!lacking) keep(now);
  };
  return (
    <form
      className={styles.form}
      onSubmit={send}
      onKeyDown={(event) => {
        if (event.key === 'Escape') cancel();
      }}
    >
      {children}
      {CARD_WORDS.map((each, at) => (
        <div key={each} className={styles.field}>
          <label htmlFor={`${id}-${each}`}>{words.parts[each]}</label>
          <textarea
            id={`${id}-${each}`}
            ref={each === part ? field : undefined}
            // biome-ignore lint/a11y/noAutofocus: the form was just asked for, and its first field takes the focus.
            autoFocus={at === 0}
            rows={each === 'what' ? 2 : 3}
            maxLength={LONGEST[each]}
            placeholder={measured?.[each] ?? (each === 'what' ? words.whatHint : undefined)}
            value={now[each]}
            onFocus={() => setPart(each)}
            onChange={(event) => setNow({ ...now, [each]: event.target.value })}
          />
        </div>
      ))}
      <Phrases
        field={field}
        text={now[part]}
        change={(text) => setNow({ ...now, [part]: text })}
        about={{ pictureId: painting.id, planeId }}
        limit={LONGEST[part]}
      />
      {measured ? <p className={styles.note}>{words.back}</p> : null}
      <div className={styles.acts}>
        <Button type="submit" weight="quiet" disabled={lacking}>
          {words.keep}
        </Button>
        <Button weight="word" onClick={cancel}>
          {easelWords.talk.cancel}
        </Button>
      </div>
    </form>
  );
}

export function RewriteCard({ card, close }: { card: ShownCard; close(): void }) {
  const { act } = useDesk();
  const [first] = useState(card.words);
  return (
    <WordsForm
      first={first}
      measured={card.measured}
      planeId={card.planeId}
      cancel={close}
      keep={(now) => {
        const change: { [P in keyof LiveCard]?: LiveCard[P] | null } = {};
        for (const part of CARD_WORDS) {
          const text = now[part].trim();
          if (text === first[part]) continue;
          change[part] = text === '' || text === card.measured?.[part] ? null : text;
        }
        close();
        act.rewrite(card, change);
      }}
    />
  );
}

/** A card of the teacher's own, on a plane or on the whole picture. */
export function NewCard({ close }: { close(): void }) {
  const { act } = useDesk();
  const { planes } = useBoardLive();
  const [planeId, setPlaneId] = useState('');
  const id = useId();
  return (
    <WordsForm
      first={NOTHING}
      measured={null}
      planeId={planeId || null}
      cancel={close}
      keep={(now) => {
        const parts = CARD_WORDS.flatMap((part) => (now[part].trim() ? [[part, now[part].trim()]] : []));
        close();
        act.add({ ...Object.fromEntries(parts), ...(planeId ? { planeId } : {}) });
      }}
    >
      <div className={styles.field}>
        <label htmlFor={id}>{words.place}</label>
        <select id={id} value={planeId} onChange={(event) => setPlaneId(event.target.value)}>
          <option value="">{words.whole}</option>
          {planes.map((plane) => (
            <option key={plane.id} value={plane.id}>
              {plane.name}
            </option>
          ))}
        </select>
      </div>
    </WordsForm>
  );
}
