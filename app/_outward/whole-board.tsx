'use client';
/** The whole board as one file; what would stay behind is said before it is taken. IO: HTTP. */
import { useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { archiveContents, filesOf } from '#app/_api/outward.ts';
import plain from '#app/_enter/plain.module.css';
import { buttonClass } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { ArchiveContents } from '#server/core/contract/outward.ts';
import { outwardWords } from '#words/outward.ts';
import styles from './outward.module.css';

const { board: words } = outwardWords;

export function WholeBoard({ boardId }: { boardId: string }) {
  const [contents, setContents] = useState<ArchiveContents | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    archiveContents(boardId, controller.signal).then(setContents, (thrown) => {
      if (!controller.signal.aborted) setTrouble(sentenceOf(thrown));
    });
    return () => controller.abort();
  }, [boardId]);
  return (
    <section className={`${plain.sheet} ${plain.form}`}>
      <h2>{words.whole}</h2>
      <p>{words.wholeText}</p>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
      {contents ? <Contents contents={contents} /> : trouble ? null : <p role="status">{words.looking}</p>}
      <a className={buttonClass('main')} href={filesOf.whole(boardId)} download>
        {words.wholeTake}
      </a>
    </section>
  );
}

/** What stays behind is listed under its reason, so that each reason stands there once. */
function Contents({ contents: { pictures, leftOut } }: { contents: ArchiveContents }) {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  return (
    <>
      <p>{words.wholeCount(pictures)}</p>
      {leftOut.length > 0 ? (
        <div className={styles.part}>
          <p>{words.behind(leftOut.length)}</p>
          {reasons.map((reason) => (
            <div key={reason} className={styles.part}>
              <p className={plain.quiet}>{reason.charAt(0).toUpperCase() + reason.slice(1)}</p>
              <ul className={styles.list}>
                {leftOut.map(({ pictureId, caption, painter, why }) =>
                  why === reason ? <li key={pictureId}>{words.pictureBy(caption, painter)}</li> : null,
                )}
              </ul>
            </div>
          ))}
          <p className={plain.quiet}>{words.behindHow}</p>
        </div>
      ) : null}
    </>
  );
}
