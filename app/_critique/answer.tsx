'use client';
/**
 * What the painter says to a card: does it, does it another way, leaves it, or meant it. Everybody sees the answer.
 *
 * In the flow: card -> [answer] -> `answers` and `meant` of the painting's room.
 */
import { useState } from 'react';
import { Say } from '#app/_talk/say.tsx';
import type { LiveAnswer } from '#server/core/live/layout.ts';
import type { ShownCard } from '#server/core/live/show-cards.ts';
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';
import { CARDS_TITLE_ID, useDesk } from './desk.tsx';

const { answer: words } = critiqueWords;
/** Longest words of an answer and longest reason, in characters; the room takes no more. */
const LONGEST = { adapted: 1000, declined: 1000, meant: 400 } as const;
type Asked = keyof typeof LONGEST;
const ASKS: Record<Asked, string> = {
  adapted: words.askAdapt,
  declined: words.askDecline,
  meant: words.askMeant,
};

/** What was answered, in words; also what was answered before the card said something else. */
export function Answered({ card }: { card: ShownCard }) {
  const { answer, lapsed } = card;
  if (answer) return <Said answer={answer} />;
  if (!lapsed) return null;
  return (
    <div className={styles.answered}>
      <p className={styles.note}>{words.lapsed}</p>
      {lapsed.words ? <p className={styles.note}>{words.quote(lapsed.words)}</p> : null}
    </div>
  );
}

function Said({ answer: { state, words: own } }: { answer: LiveAnswer }) {
  const { mine, painting } = useDesk();
  if (state === 'open') return null;
  return (
    <div className={styles.answered}>
      <p>
        <strong>{mine ? words.mine[state] : words.theirs[state](painting.painter.name)}</strong>
      </p>
      {own ? <p className={styles.own}>{words.quote(own)}</p> : null}
    </div>
  );
}

/** The painter's acts, for whoever may answer for this picture. */
export function Answer({ card }: { card: ShownCard }) {
  const { mayAnswer, mine, painting, act } = useDesk();
  const [asked, setAsked] = useState<Asked | null>(null);
  if (!mayAnswer) return null;
  if (asked) return <Asking card={card} asked={asked} close={() => setAsked(null)} />;
  const { answer } = card;
  return (
    <div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are a few words in a row. */}
      <div className={styles.acts} role="group" aria-label={words.label(card.where)}>
        {answer ? (
          <>
            <Act act={() => act.takeBack(card)}>
              {answer.state === 'declined' ? words.takeUp : words.takeBack}
            </Act>
            {answer.state === 'adapted' || answer.state === 'declined' ? (
              <Act act={() => setAsked(answer.state === 'adapted' ? 'adapted' : 'declined')}>
                {words.change}
              </Act>
            ) : null}
          </>
        ) : (
          <>
            <Act act={() => act.answer(card, 'accepted', '')}>{words.accept}</Act>
            <Act act={() => setAsked('adapted')}>{words.adapt}</Act>
            {card.meantKeys.length > 0 ? <Act act={() => setAsked('meant')}>{words.meant}</Act> : null}
            <Act act={() => setAsked('declined')}>{words.decline}</Act>
          </>
        )}
      </div>
      {mine ? null : <p className={styles.note}>{words.forPainter(painting.painter.name)}</p>}
    </div>
  );
}

function Act({ act, children }: { act(): void; children: string }) {
  return (
    <button type="button" className={styles.act} onClick={act}>
      {children}
    </button>
  );
}

function Asking({ card, asked, close }: { card: ShownCard; asked: Asked; close(): void }) {
  const { painting, act } = useDesk();
  return (
    <Say
      draftKey={`card/${painting.id}/${card.key}/${asked}`}
      label={ASKS[asked]}
      first={asked === 'meant' ? '' : (card.answer?.words ?? '')}
      sendWord={words.keep}
      limit={LONGEST[asked]}
      mayBeEmpty={asked !== 'adapted'}
      send={(text) => {
        close();
        if (asked === 'meant') act.mean(card.meantKeys, text, CARDS_TITLE_ID);
        else act.answer(card, asked, text);
      }}
      cancel={close}
    />
  );
}
