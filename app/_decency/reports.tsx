'use client';
/** Reports: those one can act on, with what can be done, and one's own, with whether they were read. IO: HTTP. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { closeReport } from '#app/_api/decency.ts';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { dateTime } from '#app/_words/figures.ts';
import type { ReportAct, ReportView } from '#server/core/contract/decency.ts';
import { decencyWords } from '#words/decency.ts';
import { words as allWords } from '#words/shell.ts';
import styles from './decency.module.css';

const { reports: words } = decencyWords;

interface ReportsProps {
  reports: readonly ReportView[];
  meId: string;
}

/** Open ones first; one's own that others act on stand apart. */
export function Reports({ reports, meId }: ReportsProps) {
  const mine = reports.filter(({ acts, reporter, note, quoted }) => {
    return reporter.id === meId && acts.length === 0 && note === '' && quoted === '';
  });
  const others = reports.filter((each) => !mine.includes(each));
  const open = others.filter(({ closedAt }) => closedAt === null);
  const closed = others.filter(({ closedAt }) => closedAt !== null);
  return (
    <section className={styles.part}>
      <h2>{words.title}</h2>
      {reports.length === 0 ? <p className={styles.quiet}>{words.none}</p> : null}
      <Titled title={words.open} reports={open} />
      <Titled title={words.mine} reports={mine} />
      <Titled title={words.closed} reports={closed} />
    </section>
  );
}

function Titled({ title, reports }: { title: string; reports: readonly ReportView[] }) {
  if (reports.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul className={styles.list}>
        {reports.map((report) => (
          <Row key={report.id} report={report} />
        ))}
      </ul>
    </>
  );
}

function stateOf({ closedAt, seenAt, outcome }: ReportView): string {
  if (closedAt !== null) return words.done(words.outcome[outcome ?? 'noted'], dateTime(closedAt));
  return seenAt === null ? words.waits : words.seen(dateTime(seenAt));
}

function Row({ report }: { report: ReportView }) {
  const { about, person, board, quoted, reporter, at, note } = report;
  return (
    <li className={styles.report}>
      <b>{words.what(about, person.name, board.title)}</b>
      <p className={styles.words}>{report.words}</p>
      {quoted ? (
        <figure className={styles.part}>
          <figcaption className={styles.quiet}>{words.quoted}</figcaption>
          <blockquote className={styles.quoted}>{quoted}</blockquote>
        </figure>
      ) : null}
      <p className={styles.quiet}>
        {words.said(reporter.name, dateTime(at))} · {stateOf(report)}
      </p>
      {note ? <p className={styles.quiet}>{note}</p> : null}
      {report.acts.length > 0 ? <Acts report={report} /> : null}
    </li>
  );
}

/** What cannot be undone is asked twice, in place. */
function Acts({ report }: { report: ReportView }) {
  const router = useRouter();
  const [note, setNote] = useState('');
  const [asked, setAsked] = useState<ReportAct | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const act = async (chosen: ReportAct) => {
    setBusy(true);
    setTrouble(null);
    try {
      await closeReport(report, chosen, note);
      router.refresh();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  return (
    <div className={styles.part}>
      <TextField
        label={words.note}
        value={note}
        maxLength={1000}
        onChange={(event) => setNote(event.target.value)}
      />
      <div className={styles.acts}>
        {asked === null
          ? report.acts.map((each) => (
              <Button key={each} busy={busy} onClick={() => (each === 'note' ? act(each) : setAsked(each))}>
                {words.acts[each]}
              </Button>
            ))
          : null}
        {asked === null ? <a href={`/boards/${report.board.id}`}>{words.toBoard}</a> : null}
        {asked ? (
          <>
            <span>{words.sure[asked]}</span>
            <Button weight="main" busy={busy} onClick={() => act(asked)}>
              {words.acts[asked]}
            </Button>
            <Button weight="word" onClick={() => setAsked(null)}>
              {allWords.cancel}
            </Button>
          </>
        ) : null}
      </div>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </div>
  );
}
