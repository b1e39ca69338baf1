'use client';
/** The list of keys, and the switch that turns letters off. */
import { Dialog } from '#app/_ui/dialog.tsx';
import { words } from '#app/_words/en.ts';
import { words as easelWords } from '#app/_words/en-easel.ts';
import styles from './key-list.module.css';
import { KEY_WORDS, LETTER_KEYS, type LetterAction } from './key-map.ts';
import type { BoardKeys } from './use-board-keys.ts';

export function KeyList({ keys }: { keys: BoardKeys }) {
  const letters = Object.entries(LETTER_KEYS) as [LetterAction, string][]; // Object.entries widens the keys.
  return (
    <Dialog open={keys.listOpen} onClose={() => keys.setListOpen(false)} title={words.keys.title} wide>
      <p>{words.keys.lead}</p>
      <dl className={styles.keys}>
        {letters.map(([action, letter]) => (
          <Row key={action} pressed={letter} does={KEY_WORDS[action]} />
        ))}
        <Row pressed="O O" does={easelWords.outline.keyList.again} />
        <Row pressed="Shift" does={easelWords.outline.keyList.straight} />
        <Row pressed="Space" does={easelWords.outline.keyList.space} />
        <Row pressed="Ctrl Z" does={words.keys.undo} />
        <Row pressed="Ctrl Shift Z" does={words.keys.redo} />
        <Row pressed="+  −  0" does={words.keys.zoom} />
        <Row pressed="← ↑ → ↓" does={words.keys.pan} />
      </dl>
      <label className={styles.letters}>
        <input
          type="checkbox"
          checked={keys.lettersOn}
          onChange={(event) => keys.setLettersOn(event.target.checked)}
        />
        {words.keys.letters}
      </label>
    </Dialog>
  );
}

function Row({ pressed, does }: { pressed: string; does: string }) {
  return (
    <>
      <dt>
        <kbd>{pressed}</kbd>
      </dt>
      <dd>{does}</dd>
    </>
  );
}
