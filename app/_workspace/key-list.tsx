'use client';
/** The list of keys, and the switch that turns letters off. */
import { Dialog } from '#app/_ui/dialog.tsx';
import { words as easelWords } from '#words/easel.ts';
import { keyNames as key } from '#words/key-names.ts';
import { keyListWords } from '#words/keys.ts';
import { words } from '#words/shell.ts';
import styles from './key-list.module.css';
import { LETTER_KEYS, type LetterAction } from './key-map.ts';
import { KEY_WORDS } from './key-words.ts';
import type { BoardKeys } from './use-board-keys.ts';

export function KeyList({ keys }: { keys: BoardKeys }) {
  const letters = Object.entries(LETTER_KEYS) as [LetterAction, string][]; // Object.entries widens the keys.
  return (
    <Dialog open={keys.listOpen} onClose={() => keys.setListOpen(false)} title={words.keys.title} wide>
      <p>{words.keys.lead}</p>
      <h3>{keyListWords.anywhere}</h3>
      <dl className={styles.keys}>
        {letters.map(([action, letter]) => (
          <Row key={action} pressed={letter} does={KEY_WORDS[action]} />
        ))}
        <Row pressed="O O" does={easelWords.outline.keyList.again} />
        <Row pressed={`${key.ctrl} Z`} does={words.keys.undo} />
        <Row pressed={`${key.ctrl} ${key.shift} Z`} does={words.keys.redo} />
      </dl>
      <Rows title={keyListWords.places} rows={AT_A_PLACE} />
      <Rows title={keyListWords.pages} rows={ON_OTHER_PAGES} />
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

/** Keys of what was gone to with Tab or a press; each place says its own again to those who do not see. */
const AT_A_PLACE = [
  ['+  −  0', words.keys.zoom],
  ['← ↑ → ↓', words.keys.pan],
  [key.shift, keyListWords.fine],
  [`${key.home} ${key.end}`, keyListWords.along],
  [key.space, easelWords.outline.keyList.space],
  [`${key.shift} ${key.space}`, easelWords.outline.keyList.straight],
  [key.enter, keyListWords.finish],
  [key.escape, keyListWords.leave],
  [key.backspace, keyListWords.back],
  [',  .', keyListWords.points],
  ['I', keyListWords.addPoint],
  [key.delete, keyListWords.takePoint],
  ['[  ]', keyListWords.size],
] as const;
const ON_OTHER_PAGES = [
  ['O', keyListWords.alone],
  ['B', keyListWords.hold],
] as const;

function Rows({ title, rows }: { title: string; rows: readonly (readonly [string, string])[] }) {
  return (
    <>
      <h3>{title}</h3>
      <dl className={styles.keys}>
        {rows.map(([pressed, does]) => (
          <Row key={pressed} {...{ pressed, does }} />
        ))}
      </dl>
    </>
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
