/**
 * House matters: reports one can act on or made, what was done, and for the host the school setting of the server.
 * `?board=` narrows it to one board. IO: session and store, through server/access.
 */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import styles from '#app/_boards/boards.module.css';
import { Record } from '#app/_decency/record.tsx';
import { Reports } from '#app/_decency/reports.tsx';
import { SchoolForm } from '#app/_decency/school-form.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { recordFor } from '#server/access/audit.ts';
import { reportsFor } from '#server/access/report.ts';
import { readSession } from '#server/access/session.ts';
import { houseRules } from '#server/store/school.ts';
import { decencyWords } from '#words/decency.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: decencyWords.house.title };

interface HousePageProps {
  searchParams: Promise<{ board?: string | string[] }>;
}

export default async function HousePage({ searchParams }: HousePageProps) {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  const { board } = await searchParams;
  const boardId = typeof board === 'string' ? board : null;
  const reports = await reportsFor(visitor, boardId);
  const record = await recordFor(visitor, boardId);
  const rules = visitor.isHost && boardId === null ? await houseRules() : null;
  return (
    <div className={styles.page}>
      <PageHead name={visitor.name} />
      <main className={styles.main}>
        <div className={styles.line}>
          <h1>{decencyWords.house.title}</h1>
          {boardId === null ? null : <Link href="/house">{decencyWords.house.all}</Link>}
        </div>
        <Reports reports={reports} meId={visitor.personId} />
        {record ? <Record record={record} /> : null}
        {rules ? <SchoolForm groupId={null} rules={rules} /> : null}
      </main>
    </div>
  );
}
