'use client';
/** Whom one blocks, and how to undo it. IO: HTTP. */
import { useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchBlocks, unblockPerson } from '#app/_api/decency.ts';
import plain from '#app/_enter/plain.module.css';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { PersonView } from '#server/core/contract/responses.ts';
import { decencyWords } from '#words/decency.ts';
import styles from './decency.module.css';

const { block: words } = decencyWords;

export function BlockedList() {
  const [people, setPeople] = useState<readonly PersonView[] | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    fetchBlocks(controller.signal)
      .then(setPeople)
      .catch((thrown: unknown) => {
        if (!controller.signal.aborted) setTrouble(sentenceOf(thrown));
      });
    return () => controller.abort();
  }, []);
  const undo = async ({ id }: PersonView) => {
    try {
      await unblockPerson(id);
      setPeople((before) => before?.filter((each) => each.id !== id) ?? null);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  return (
    <section className={`${plain.sheet} ${plain.form}`}>
      <h2>{words.title}</h2>
      {people?.length === 0 ? <p>{words.none}</p> : null}
      <ul className={styles.record}>
        {people?.map((person) => (
          <li key={person.id} className={styles.acts}>
            {person.name}
            <Button weight="word" aria-label={words.undoLabel(person.name)} onClick={() => undo(person)}>
              {words.undo}
            </Button>
          </li>
        ))}
      </ul>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
