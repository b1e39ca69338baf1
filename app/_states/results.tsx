'use client';
/**
 * What became of each card: what it asked, how much of it the next state shows, and whether it is closed or taken along.
 *
 * In the flow: step -> [results], on the page of states and on the board. IO: HTTP.
 */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { settleCard } from '#app/_api/states.ts';
import { Notice } from '#app/_ui/notice.tsx';
import type { CardResult } from '#server/core/contract/states.ts';
import { moveWords } from '#words/moves.ts';
import { statesWords } from '#words/states.ts';
import styles from './states.module.css';

const { cards: words } = statesWords;

interface ResultsProps {
  boardId: string;
  cards: readonly CardResult[];
  mayAnswer: boolean;
  /** Whether these are told yet: the photos lie on one another and both are measured. */
  told: boolean;
  refresh(): Promise<void>;
}

export function Results({ boardId, cards, mayAnswer, told, refresh }: ResultsProps) {
  if (cards.length === 0) return told ? <p className={styles.quiet}>{words.none}</p> : null;
  return (
    <ul className={styles.results}>
      {cards.map((card) => (
        <li key={`${card.pictureId} ${card.key}`}>
          <Result card={card} told={told} />
          {mayAnswer ? <Settle boardId={boardId} card={card} refresh={refresh} /> : <Settled card={card} />}
        </li>
      ))}
    </ul>
  );
}

function Result({ card: { where, what, answer, moves }, told }: { card: CardResult; told: boolean }) {
  const [only, ...more] = moves;
  return (
    <>
      <p>
        <strong>{where}</strong>
        {more.length === 0 ? `, ${what}` : null}
        {more.length === 0 && only ? <Verdict>{moveWords(only)}</Verdict> : null}
      </p>
      {more.length > 0 ? (
        <ul className={styles.moves}>
          {moves.map((move) => (
            <li key={move.words}>
              {move.words}
              <Verdict>{moveWords(move)}</Verdict>
            </li>
          ))}
        </ul>
      ) : null}
      {moves.length === 0 && told ? <p className={styles.quiet}>{words.eye}</p> : null}
      {answer ? <p className={styles.quiet}>{words.own(answer)}</p> : null}
    </>
  );
}

/** How far it went stands by itself, so that the eye finds it down the list. */
function Verdict({ children }: { children: string }) {
  return (
    <>
      {': '}
      <span className={styles.verdict}>{children}</span>
    </>
  );
}

function Settled({ card: { state } }: { card: CardResult }) {
  if (state !== 'done' && state !== 'carried') return null;
  return <p className={styles.quiet}>{state === 'done' ? words.closed : words.carried}</p>;
}

function Settle({ boardId, card, refresh }: { boardId: string; card: CardResult; refresh(): Promise<void> }) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const settle = (state: 'done' | 'carried' | null) => async () => {
    setBusy(true);
    try {
      await settleCard(boardId, card, state);
      setTrouble(null);
      await refresh();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    setBusy(false);
  };
  const settled = card.state === 'done' || card.state === 'carried';
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are a few words in a row. */}
      <div className={styles.acts} role="group" aria-label={words.label(card.where)}>
        <Settled card={card} />
        {settled ? (
          <Act busy={busy} act={settle(null)} word={words.reopen} />
        ) : (
          <>
            <Act busy={busy} act={settle('done')} word={words.done} />
            <Act busy={busy} act={settle('carried')} word={words.carry} />
          </>
        )}
      </div>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </>
  );
}

function Act({ busy, act, word }: { busy: boolean; act(): Promise<void>; word: string }) {
  return (
    <button type="button" className={styles.act} disabled={busy} onClick={() => void act()}>
      {word}
    </button>
  );
}
