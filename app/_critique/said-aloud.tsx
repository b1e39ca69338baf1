'use client';
/**
 * Says what changed on cards, readings and focus to those who listen, whoever did it. In the flow: critique desk ->
 * [said-aloud].
 */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { LiveAnswer } from '#server/core/live/layout.ts';
import type { ShownCard } from '#server/core/live/show-cards.ts';
import { critiqueWords } from '#words/critique.ts';
import { useDesk } from './desk.tsx';

const { said } = critiqueWords;

interface State {
  answers: ReadonlyMap<string, LiveAnswer>;
  /** What each card says and whether it was left out, by key. */
  cards: ReadonlyMap<string, string>;
  meant: number;
}

function answeredSentence(where: string, { state, words }: LiveAnswer): string | null {
  if (state === 'open') return null;
  return said[state](where, words).trim();
}

/** The first entry that is new or other, or gone. */
function changedKey<T>(before: ReadonlyMap<string, T>, now: ReadonlyMap<string, T>): string | null {
  const same = (key: string) => JSON.stringify(before.get(key)) === JSON.stringify(now.get(key));
  return [...now.keys(), ...before.keys()].find((key) => !same(key)) ?? null;
}

function newsOf(before: State, now: State, cards: ReadonlyMap<string, ShownCard>): string | null {
  const answered = changedKey(before.answers, now.answers);
  if (answered !== null) {
    const where = cards.get(answered)?.where;
    const answer = now.answers.get(answered);
    if (!where) return null;
    return answer ? answeredSentence(where, answer) : said.takenBack(where);
  }
  if (before.meant !== now.meant) return now.meant > before.meant ? said.meant : said.notMeant;
  const changed = changedKey(before.cards, now.cards);
  if (changed === null) return null;
  const card = cards.get(changed);
  if (!card) return said.gone;
  return now.cards.get(changed)?.includes('"dropped":true')
    ? said.left(card.where)
    : said.changed(card.where, card.words.what);
}

export function SaidAloud() {
  const { answersOf, cardsOf, meantOf } = useBoardLive();
  const { painting, cards } = useDesk();
  const [answers, changes, meant] = [answersOf(painting.id), cardsOf(painting.id), meantOf(painting.id)];
  const before = useRef<State | null>(null);
  const [sentence, setSentence] = useState('');
  useEffect(() => {
    const now: State = {
      answers,
      cards: new Map([...changes].map(([key, change]) => [key, JSON.stringify(change)])),
      meant: meant.size,
    };
    const last = before.current;
    before.current = now;
    if (!last) return;
    const all = [...cards.open, ...cards.waiting, ...cards.declined, ...cards.dropped];
    const news = newsOf(last, now, new Map(all.map((card) => [card.key, card])));
    if (news) setSentence(news);
  }, [answers, changes, meant, cards]);
  return (
    <p className="unseen" role="status">
      {sentence}
    </p>
  );
}
