'use client';
/**
 * Every reading of the picture: those that speak first, then the quiet ones with the reason why they are quiet.
 *
 * In the flow: measured document + `meant` -> [readings]. Choosing one chooses its farthest plane.
 */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Say } from '#app/_talk/say.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { Reading } from '#server/core/contract/measures.ts';
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';
import { READINGS_ID, useChoosePlane, useDesk } from './desk.tsx';
import { Why } from './why.tsx';

const { readings: words, answer: answerWords } = critiqueWords;
/** Longest reason, in characters; the room takes no more. */
const LONGEST_REASON = 400;

/** Readings about the photo: nobody means a photo to be burnt out. */
const isOfPhoto = ({ id }: Reading) => id.startsWith('G');

interface Listed {
  id: string;
  reading: Reading;
  /** Key in `meant` that mutes it, or null. */
  meant: string | null;
}

export function Readings() {
  const { measures, meantBy } = useDesk();
  const { document } = measures;
  if (!document) return null;
  const listed = document.readings.map((reading): Listed => {
    return { id: `${reading.id} ${reading.planes.join()}`, reading, meant: meantBy(reading) };
  });
  const isQuiet = ({ reading, meant }: Listed) => reading.muted !== null || meant !== null;
  const ordered = [...listed.filter((one) => !isQuiet(one)), ...listed.filter(isQuiet)];
  if (ordered.length === 0) return <p className={styles.note}>{words.none}</p>;
  return (
    <details className={styles.aside}>
      <summary id={READINGS_ID}>{words.title(ordered.length)}</summary>
      <ul className={styles.list}>
        {ordered.map((one) => (
          <li key={one.id}>
            {isQuiet(one) ? (
              <Quiet reading={one.reading} meant={one.meant} />
            ) : (
              <Speaking reading={one.reading} />
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The sentence; where it is about planes, it chooses the farthest of them. */
function Sentence({ reading }: { reading: Reading }) {
  const { planeIdOf } = useDesk();
  const { planeId } = useTools();
  const choosePlane = useChoosePlane();
  const ids = reading.planes.map(planeIdOf);
  const farthest = ids.find((id) => id !== null) ?? null;
  if (farthest === null) return <p>{reading.sentence}</p>;
  return (
    <button
      type="button"
      className={styles.sentence}
      aria-pressed={planeId !== null && ids.includes(planeId)}
      onClick={() => choosePlane(farthest)}
    >
      {reading.sentence}
    </button>
  );
}

function Speaking({ reading }: Pick<Listed, 'reading'>) {
  const { mayAnswer, meantKey, painting, act } = useDesk();
  const [asking, setAsking] = useState(false);
  const key = isOfPhoto(reading) || !mayAnswer ? null : meantKey(reading);
  return (
    <div className={styles.reading}>
      <p className={styles.kind}>
        {isOfPhoto(reading) ? words.photo : words.forms[reading.form ?? 'finding']}
      </p>
      <Sentence reading={reading} />
      <div className={styles.beside}>
        <Why why={reading.why} source={reading.source} />
        {key !== null && !asking ? (
          <button type="button" className={`${styles.act} ${styles.small}`} onClick={() => setAsking(true)}>
            {answerWords.meant}
          </button>
        ) : null}
      </div>
      {key !== null && asking ? (
        <Say
          draftKey={`meant/${painting.id}/${key}`}
          label={answerWords.askMeant}
          first=""
          sendWord={answerWords.keep}
          limit={LONGEST_REASON}
          mayBeEmpty
          send={(reason) => act.mean([key], reason, READINGS_ID)}
          cancel={() => setAsking(false)}
        />
      ) : null}
    </div>
  );
}

function Quiet({ reading, meant }: Omit<Listed, 'id'>) {
  const { mayAnswer, reasonOf, act } = useDesk();
  const reason = meant === null ? '' : reasonOf(meant);
  return (
    <div className={styles.reading} data-quiet="">
      <p className={styles.kind}>{meant === null ? words.quiet : words.meant}</p>
      <Sentence reading={reading} />
      {meant === null ? <p className={styles.note}>{reading.muted}</p> : null}
      {reason ? <p className={styles.note}>{words.meantWhy(reason)}</p> : null}
      {meant !== null && mayAnswer ? (
        <button type="button" className={`${styles.act} ${styles.small}`} onClick={() => act.notMean(meant)}>
          {words.notMeant}
        </button>
      ) : null}
    </div>
  );
}

/** That colour and amounts are withheld, and what would change that; nothing where the photo can be trusted. */
export function Withheld() {
  const { painting, measures } = useDesk();
  const { may } = useBoardLive();
  const { tool, setTool, setSide } = useTools();
  const grade = measures.document?.capture.grade ?? null;
  if (!measures.document || grade === 'A' || grade === 'B') return null;
  return (
    <div className={styles.part}>
      <p className={styles.note}>{words.withheld}</p>
      {may.painting(painting.id) && tool !== 'photo' ? (
        <Button
          weight="word"
          onClick={() => {
            setSide('painting');
            setTool('photo');
          }}
        >
          {words.squareUp}
        </Button>
      ) : null}
    </div>
  );
}
