'use client';
/**
 * Where a sheet is taken along: on which paper, to print or as a picture.
 *
 * In the flow: critique, plan page -> [take-along] -> server -> this device's downloads. IO: HTTP, the browser's downloads,
 * remembers the paper in this browser.
 */
import { useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchSheet, type SheetOf } from '#app/_api/homework.ts';
import { Button } from '#app/_ui/button.tsx';
import { PAPERS, type Paper, SHEET_KINDS, type SheetKind } from '#server/core/sheet/content.ts';
import { takeAlongWords as words } from '#words/homework.ts';
import styles from './take-along.module.css';

interface TakeAlongProps extends SheetOf {
  boardId: string;
}

export function TakeAlong({ boardId, about, pictureId }: TakeAlongProps) {
  const [paper, setPaper] = usePaper();
  const [drawing, setDrawing] = useState<SheetKind | null>(null);
  const [said, setSaid] = useState<{ sentence: string; trouble: boolean } | null>(null);
  const take = async (as: SheetKind) => {
    setDrawing(as);
    setSaid(null);
    try {
      const file = await fetchSheet(boardId, { about, pictureId }, { as, paper });
      download(file);
      setSaid({ sentence: words.done(file.name), trouble: false });
    } catch (thrown) {
      setSaid({ sentence: sentenceOf(thrown), trouble: true });
    }
    setDrawing(null);
  };
  return (
    <section className={styles.part} aria-labelledby="take-along-title">
      <h2 id="take-along-title" className={styles.title}>
        {words.title}
      </h2>
      <p className={styles.about}>{about === 'plan' ? words.aboutPlan : words.about}</p>
      <fieldset className={styles.papers}>
        <legend className="unseen">{words.paper}</legend>
        {PAPERS.map((each) => (
          <label key={each} className={styles.paper}>
            <input
              type="radio"
              name="paper"
              value={each}
              checked={paper === each}
              onChange={() => setPaper(each)}
            />
            {words.papers[each]}
          </label>
        ))}
      </fieldset>
      <p className={styles.acts}>
        {SHEET_KINDS.map((as) => (
          <Button
            key={as}
            busy={drawing === as}
            busyWord={words.drawing}
            disabled={drawing !== null}
            onClick={() => void take(as)}
          >
            {words.kinds[as]}
          </Button>
        ))}
      </p>
      <p className={styles.said} role={said?.trouble ? 'alert' : 'status'}>
        {said?.sentence}
      </p>
    </section>
  );
}

const KEPT = 'veilstep-paper';

/** The paper of the last time, on this device; without one, by the region that the browser's language names. */
function usePaper(): [Paper, (paper: Paper) => void] {
  const [paper, setPaper] = useState<Paper>('a4');
  // The server that draws the page first knows neither the device nor its language.
  useEffect(() => setPaper(keptPaper() ?? usualPaper()), []);
  return [
    paper,
    (chosen) => {
      setPaper(chosen);
      try {
        localStorage.setItem(KEPT, chosen);
      } catch {
        // A browser that keeps nothing asks again the next time.
      }
    },
  ];
}

function keptPaper(): Paper | null {
  try {
    return PAPERS.find((each) => each === localStorage.getItem(KEPT)) ?? null;
  } catch {
    return null;
  }
}

/** Letter is usual in North America and a few places more (common knowledge, no source), A4 elsewhere. */
function usualPaper(): Paper {
  return /-(US|CA|MX|PH|CL|CO|CR|GT|PA|SV|VE|PR)\b/i.test(navigator.language) ? 'letter' : 'a4';
}

function download(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  // The download has begun by then; the bytes need not stay in memory.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
