'use client';
/**
 * The line under the pictures while a photo is put right: what to do next, and the few buttons for it.
 *
 * In the flow: easel-bar -> [photo-controls] -> live photo. Everything else stands in the leaf at the side.
 */
import { useEffect, useState } from 'react';
import bar from '#app/_easel/easel-bar.module.css';
import { useEasel } from '#app/_easel/easel-state.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { words } from '#words/photo.ts';
import { BesideChoice } from './beside-choice.tsx';
import { isCorrected, usePhotoDesk } from './photo-desk.tsx';
import { type Corners, MOST_CARDS, STARTING_CORNERS, WHOLE_CORNERS } from './photo-parts.ts';

export function PhotoControls({ painting }: { painting: PictureView | null }) {
  const { may } = useBoardLive();
  if (!painting) return <p className={bar.sentence}>{words.none}</p>;
  if (!may.painting(painting.id)) return <p className={bar.sentence}>{words.onlyLook}</p>;
  return <Controls key={painting.id} painting={painting} />;
}

function Controls({ painting }: { painting: PictureView }) {
  const { photoOf, write } = useBoardLive();
  const { adding } = usePhotoDesk();
  const photo = photoOf(painting.id);
  const { corners, cards = [], size } = photo;
  const { setSentence } = useEasel();
  // On a narrow screen the list of cards right below adds the next one.
  const wide = useWide();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was said before is over once cards or size change.
  useEffect(() => setSentence(null), [JSON.stringify([cards, size]), setSentence]);
  const { finding, justFound, find } = useFinding(painting);
  const set = (next: Corners | null) => {
    setSentence(null);
    write.setCorners(painting.id, next);
  };
  return (
    <>
      <p className={bar.sentence} role="status">
        {howTo({ corners, cards: cards.length, adding, justFound })}
      </p>
      <div className={bar.buttons}>
        {adding ? null : (
          <>
            <Button
              weight={corners ? 'word' : 'main'}
              busy={finding}
              busyWord={words.finding}
              onClick={() => void find()}
            >
              {words.find}
            </Button>
            {corners ? (
              <Button weight="word" onClick={() => set(null)}>
                {words.clear}
              </Button>
            ) : (
              <>
                <Button weight="quiet" onClick={() => set(STARTING_CORNERS)}>
                  {words.byHand}
                </Button>
                <Button weight="quiet" onClick={() => set(WHOLE_CORNERS)}>
                  {words.fills}
                </Button>
              </>
            )}
          </>
        )}
        {wide || adding || cards.length === 0 ? (
          <AddCard cards={cards.length} next={corners !== undefined} />
        ) : null}
        {!adding && isCorrected(photo) ? <BesideChoice /> : null}
      </div>
    </>
  );
}

/** @param next Whether a card is the next thing to set. */
function AddCard({ cards, next }: { cards: number; next: boolean }) {
  const { adding, setAdding } = usePhotoDesk();
  const { setSentence } = useEasel();
  if (cards >= MOST_CARDS) return null;
  const startOrStop = () => {
    setSentence(null);
    setAdding(!adding);
  };
  return (
    <Button weight={next && cards === 0 && !adding ? 'main' : 'word'} onClick={startOrStop}>
      {adding ? words.cards.stop : cards === 0 ? words.cards.add : words.cards.addAnother}
    </Button>
  );
}

interface Standing {
  corners: Corners | undefined;
  cards: number;
  adding: boolean;
  justFound: boolean;
}

const isWhole = (corners: Corners) => JSON.stringify(corners) === JSON.stringify(WHOLE_CORNERS);

/** The sentence for the next thing to do. */
function howTo({ corners, cards, adding, justFound }: Standing): string {
  if (adding) return words.how.adding;
  if (!corners) return words.how.begin;
  if (cards > 0) return words.how.cards;
  if (isWhole(corners)) return `${words.how.whole} ${words.how.noCard}`;
  return justFound ? words.how.found : `${words.how.corners} ${words.how.noCard}`;
}

/** Looks for the corners beside the page; one undoable step, or one sentence: what was not found is not set. */
function useFinding(painting: PictureView) {
  const { photoOf, write } = useBoardLive();
  const { line } = usePhotoDesk();
  const { setSentence } = useEasel();
  const [finding, setFinding] = useState(false);
  const [found, setFound] = useState<unknown>(null);
  const now = photoOf(painting.id).corners;
  const find = async () => {
    if (!line) return;
    setFinding(true);
    setSentence(null);
    try {
      const corners = await line.corners();
      const before = photoOf(painting.id).corners;
      if (corners) write.setCorners(painting.id, corners);
      setSentence(corners ? null : before ? words.notSureKept : words.notSure);
      setFound(corners && JSON.stringify(corners));
    } catch {
      setSentence(words.away);
    } finally {
      setFinding(false);
    }
  };
  return { finding, find, justFound: found !== null && found === JSON.stringify(now) };
}
