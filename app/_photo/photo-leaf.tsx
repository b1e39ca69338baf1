'use client';
/**
 * The leaf that speaks of the painting's photo: cards, size, what the picture is, and how far it can be trusted.
 *
 * In the flow: side panels -> [photo-leaf] -> its parts.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { mayNotePicture } from '#app/_people/roles-on-board.ts';
import { Noting } from '#app/_post/noting.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { lightWords, notedWords } from '#words/noted.ts';
import { words } from '#words/photo.ts';
import { CaptureTrust } from './capture-trust.tsx';
import { CardsPart } from './cards-part.tsx';
import styles from './leaf.module.css';
import { usePhotoDesk } from './photo-desk.tsx';
import { SizePart } from './size-part.tsx';

/** The server tells everyone that a picture changed, and the board is fetched again for that. */
const boardComesAgain = () => Promise.resolve();

export function PhotoLeaf() {
  const { board, may } = useBoardLive();
  const { tool, setTool } = useTools();
  const { painting } = usePhotoDesk();
  if (!painting) return <p className={styles.lead}>{words.none}</p>;
  const mayPut = may.painting(painting.id);
  return (
    <div className={styles.leaf}>
      {mayPut && tool !== 'photo' ? <Button onClick={() => setTool('photo')}>{words.begin}</Button> : null}
      {mayPut && tool === 'photo' ? (
        <>
          <CardsPart key={`cards-${painting.id}`} painting={painting} />
          <SizePart key={`size-${painting.id}`} painting={painting} />
        </>
      ) : null}
      <CaptureTrust />
      {mayNotePicture(board, painting) ? (
        <section className={styles.part}>
          <h2 className={styles.title}>{words.noted}</h2>
          <p>{[notedWords(painting), lightWords(painting)].filter(Boolean).join('. ') || words.notNoted}</p>
          <Noting key={painting.id} boardId={board.id} picture={painting} refresh={boardComesAgain} />
        </section>
      ) : null}
    </div>
  );
}
