'use client';
/** Phrases to choose from, found by typing; arrows choose, Enter takes. In the flow: phrases -> [phrase-list]. */
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { PhraseView } from '#server/core/contract/own-time.ts';
import { fillSlots, type SlotWords } from '#server/core/own-time/slots.ts';
import { LANGUAGE } from '#server/core/say/language.ts';
import { queueWords } from '#words/queue.ts';
import styles from './phrases.module.css';

const { phrases: words } = queueWords;

interface PhraseListProps {
  phrases: readonly PhraseView[];
  slots: SlotWords;
  insert(phrase: string): void;
}

export function PhraseList({ phrases, slots, insert }: PhraseListProps) {
  const [sought, setSought] = useState('');
  const [at, setAt] = useState(0);
  const search = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => search.current?.focus({ preventScroll: true }), []);
  const found = phrases.filter((phrase) => fits(phrase.words, sought));
  const chosen = Math.min(at, found.length - 1);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step) setAt((chosen + step + found.length) % Math.max(1, found.length));
    const phrase = event.key === 'Enter' ? found[chosen] : undefined;
    if (phrase) insert(phrase.words);
    if (step || event.key === 'Enter') event.preventDefault();
  };
  if (phrases.length === 0) return <p className={styles.note}>{words.none}</p>;
  return (
    <>
      <input
        ref={search}
        type="search"
        className={styles.search}
        role="combobox"
        aria-label={words.search}
        aria-expanded="true"
        aria-controls={id}
        aria-autocomplete="list"
        aria-activedescendant={found[chosen] ? `${id}-${found[chosen].id}` : undefined}
        placeholder={words.search}
        value={sought}
        onChange={(event) => {
          setSought(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div id={id} role="listbox" aria-label={words.label} className={styles.list}>
        {found.map((phrase, place) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are on the search field, which keeps the focus.
          <div
            key={phrase.id}
            id={`${id}-${phrase.id}`}
            role="option"
            tabIndex={-1}
            aria-selected={place === chosen}
            ref={place === chosen ? intoView : undefined}
            onClick={() => insert(phrase.words)}
          >
            {fillSlots(phrase.words, slots).words}
          </div>
        ))}
      </div>
      {found.length === 0 ? <p className={styles.note}>{words.noMatch}</p> : null}
    </>
  );
}

/** Every word that is sought stands somewhere in the phrase. */
function fits(phrase: string, sought: string): boolean {
  const text = phrase.toLocaleLowerCase(LANGUAGE);
  return sought
    .toLocaleLowerCase(LANGUAGE)
    .split(/\s+/)
    .every((word) => text.includes(word));
}

function intoView(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: 'nearest' });
}
