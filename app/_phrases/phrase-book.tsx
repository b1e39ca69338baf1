'use client';
/** The book of one's own phrases: added, changed, put in order, deleted. In the flow: phrase-store -> [phrase-book]. */
import { type FormEvent, useId, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import type { PhraseView } from '#server/core/contract/own-time.ts';
import { MOST_PHRASES, PHRASE_LIMIT } from '#server/core/contract/own-time-limits.ts';
import { queueWords } from '#words/queue.ts';
import { usePhrases } from './phrase-store.ts';
import styles from './phrases.module.css';

const { phrases: words } = queueWords;

export function PhraseBook() {
  const { board } = useBoardLive();
  const { phrases, trouble, bookOpen, store } = usePhrases(board.me.id);
  const kept = phrases ?? [];
  return (
    <Dialog open={bookOpen} onClose={() => store.openBook(false)} title={words.title} wide>
      <p>
        {words.private} {words.slots}
      </p>
      <p role="alert">{trouble}</p>
      {kept.length < MOST_PHRASES ? (
        <WordsForm label={words.add} sendWord={words.addIt} send={(text) => store.keep(text)} />
      ) : (
        <p>{words.full(MOST_PHRASES)}</p>
      )}
      <ol className={styles.book}>
        {kept.map((phrase, at) => (
          <li key={phrase.id}>
            <Kept phrase={phrase} first={at === 0} last={at === kept.length - 1} />
          </li>
        ))}
      </ol>
    </Dialog>
  );
}

function Kept({ phrase, first, last }: { phrase: PhraseView; first: boolean; last: boolean }) {
  const { board } = useBoardLive();
  const { store } = usePhrases(board.me.id);
  const [changing, setChanging] = useState(false);
  if (changing) {
    const rewrite = async (text: string) => {
      const done = await store.rewrite(phrase.id, text);
      if (done) setChanging(false);
      return done;
    };
    return (
      <WordsForm
        label={words.field}
        first={phrase.words}
        sendWord={words.save}
        send={rewrite}
        cancel={() => setChanging(false)}
      />
    );
  }
  const act = (what: string, go: () => void, disabled = false) => (
    <Button weight="word" disabled={disabled} aria-label={words.moveLabel(what, phrase.words)} onClick={go}>
      {what}
    </Button>
  );
  return (
    <>
      <p className={styles.kept}>{phrase.words}</p>
      <p className={styles.acts}>
        {act(words.change, () => setChanging(true))}
        {act(words.up, () => void store.move(phrase.id, -1), first)}
        {act(words.down, () => void store.move(phrase.id, 1), last)}
        {act(words.remove, () => void store.forget(phrase.id))}
      </p>
    </>
  );
}

interface WordsFormProps {
  label: string;
  first?: string;
  sendWord: string;
  /** @returns Whether it was kept. */
  send(text: string): Promise<boolean>;
  cancel?(): void;
}

function WordsForm({ label, first = '', sendWord, send, cancel }: WordsFormProps) {
  const [text, setText] = useState(first);
  const id = useId();
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() !== '' && (await send(text.trim())) && !cancel) setText('');
  };
  return (
    <form className={styles.form} onSubmit={keep}>
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        rows={2}
        maxLength={PHRASE_LIMIT}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <span className={styles.acts}>
        <Button type="submit" disabled={text.trim() === ''}>
          {sendWord}
        </Button>
        {cancel ? (
          <Button weight="word" onClick={cancel}>
            {queueWords.cancel}
          </Button>
        ) : null}
      </span>
    </form>
  );
}
