'use client';
/**
 * What the parts of the critique of one painting share: the cards as they are shown, who may do what, and the acts.
 *
 * In the flow: live board + measures -> core `showCards` -> [CritiqueDesk] -> cards, readings, what works. After an
 * act the focus goes to where the card now stands. IO: moves the focus.
 */
import { createContext, type ReactNode, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { useBoardLive, useShownPreview } from '#app/_live/board-live.tsx';
import { type BoardMeasures, useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { Reading } from '#server/core/contract/measures.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { orderBeforeAll, ordersToMove } from '#server/core/live/card-order.ts';
import type { AnswerState, LiveCard } from '#server/core/live/layout.ts';
import {
  meantBy,
  meantKeyOf,
  planeIdsByName,
  type ShownCard,
  type ShownCards,
  showCards,
} from '#server/core/live/show-cards.ts';

/** Id of the element that takes the focus for a card. */
export const cardHeadId = (key: string) => `card-${key}`;
export const CARDS_TITLE_ID = 'cards-title';
export const READINGS_ID = 'readings-title';

export interface CardActs {
  answer(card: ShownCard, state: AnswerState, words: string): void;
  takeBack(card: ShownCard): void;
  /** Marks readings as meant. @param reason May be empty. @param nextId Where the focus goes. */
  mean(keys: readonly string[], reason: string, nextId: string): void;
  notMean(key: string): void;
  rewrite(card: ShownCard, change: { [P in keyof LiveCard]?: LiveCard[P] | null }): void;
  add(card: LiveCard): void;
  /** @param by −1 = up, 1 = down. */
  move(card: ShownCard, by: -1 | 1): void;
  drop(card: ShownCard): void;
  bringBack(card: ShownCard): void;
  /** As measured again; a card of a teacher's own is gone. */
  clear(card: ShownCard): void;
}

export interface CritiqueDesk {
  painting: PictureView;
  measures: BoardMeasures;
  cards: ShownCards;
  /** Cards that can change places, first to last. */
  movable: readonly ShownCard[];
  /** True while the figures behind the cards are worked out anew. */
  measuring: boolean;
  /** True when the picture is this person's own. */
  mine: boolean;
  mayAnswer: boolean;
  mayChange: boolean;
  /** Key in `meant` that mutes a reading, or null. */
  meantBy(reading: Reading): string | null;
  /** Key under which a reading would be marked as meant; null when its plane is gone. */
  meantKey(reading: Reading): string | null;
  /** The painter's reason, which may be empty. */
  reasonOf(meantKey: string): string;
  /** Live plane of a name in the document, or null. */
  planeIdOf(name: string): string | null;
  act: CardActs;
}

const DeskContext = createContext<CritiqueDesk | null>(null);

/** @throws Error outside `CritiqueDeskProvider`: a bug. */
export function useDesk(): CritiqueDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useDesk is used outside the critique.');
  return desk;
}

/** Moves the focus to the first of some elements that can be seen, once the screen shows what was done. */
function useFocusNext(): (...ids: string[]) => void {
  const wanted = useRef<string[]>([]);
  const [, again] = useState(0);
  useEffect(() => {
    const ids = wanted.current;
    wanted.current = [];
    for (const id of ids) {
      const element = document.getElementById(id);
      if (!element?.checkVisibility()) continue;
      element.focus();
      return;
    }
  });
  return (...ids) => {
    wanted.current = ids;
    again((round) => round + 1);
  };
}

function useActs(paintingId: string, cards: ShownCards, movable: readonly ShownCard[]): CardActs {
  const { write } = useBoardLive();
  const focusNext = useFocusNext();
  const onCard = (card: ShownCard) => focusNext(cardHeadId(card.key), CARDS_TITLE_ID);
  const change = (card: ShownCard, parts: Parameters<CardActs['rewrite']>[1]) => {
    write.changeCard(paintingId, card.key, parts);
    onCard(card);
  };
  return {
    answer(card, state, words) {
      write.setAnswer(paintingId, card.key, { state, words, about: card.readings.slice(0, 20) });
      onCard(card);
    },
    takeBack(card) {
      write.setAnswer(paintingId, card.key, null);
      onCard(card);
    },
    mean(keys, reason, nextId) {
      for (const key of keys) write.setMeant(paintingId, key, reason);
      focusNext(nextId, CARDS_TITLE_ID);
    },
    notMean(key) {
      write.setMeant(paintingId, key, null);
      focusNext(READINGS_ID);
    },
    rewrite: change,
    add(card) {
      const order = orderBeforeAll([...cards.open, ...cards.waiting, ...cards.declined, ...cards.dropped]);
      const key = write.addCard(paintingId, { ...card, ...(order === null ? {} : { order }) });
      focusNext(cardHeadId(key), CARDS_TITLE_ID);
    },
    move(card, by) {
      const at = movable.findIndex(({ key }) => key === card.key);
      write.orderCards(paintingId, ordersToMove(movable, card.key, at + by));
      onCard(card);
    },
    drop: (card) => change(card, { dropped: true }),
    bringBack: (card) => change(card, { dropped: null }),
    clear(card) {
      write.clearCard(paintingId, card.key);
      onCard(card);
    },
  };
}

export function CritiqueDeskProvider({ painting, children }: { painting: PictureView; children: ReactNode }) {
  const live = useBoardLive();
  const measures = useBoardMeasures();
  const preview = useShownPreview();
  const { document, planeIds } = measures;
  const { planes } = live;
  const [changes, answers, meant] = [
    live.cardsOf(painting.id),
    live.answersOf(painting.id),
    live.meantOf(painting.id),
  ];
  const cards = useMemo(
    () => showCards({ document, planeIds, planes, cards: changes, answers, meant }),
    [document, planeIds, planes, changes, answers, meant],
  );
  const movable = [...cards.open, ...cards.waiting];
  const names = planeIdsByName({ document, planeIds });
  const desk: CritiqueDesk = {
    ...{ painting, measures, cards, movable },
    measuring: document !== null && (measures.pending !== null || preview?.pictureId === painting.id),
    mine: painting.painter.id === live.board.me.id,
    mayAnswer: live.may.answer(painting.id),
    mayChange: live.may.cards,
    meantBy: (reading) => meantBy(reading, names, meant),
    meantKey: (reading) => meantKeyOf(reading, names),
    reasonOf: (key) => meant.get(key) ?? '',
    planeIdOf: (name) => names.get(name) ?? null,
    act: useActs(painting.id, cards, movable),
  };
  return <DeskContext value={desk}>{children}</DeskContext>;
}

/** Chooses a plane for picture, ladder and talk at once; nothing happens where there is none. */
export function useChoosePlane(): (planeId: string | null) => void {
  const { setPlaneId } = useTools();
  return (planeId) => {
    if (planeId !== null) setPlaneId(planeId);
  };
}
