/** The caller's boards; to a stranger, where to get a link. IO: session and store. */
import { headers } from 'next/headers';
import Link from 'next/link';
import { BoardList } from '#app/_boards/board-list.tsx';
import styles from '#app/_boards/boards.module.css';
import { NewBoard } from '#app/_boards/new-board.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { GroupList } from '#app/_groups/group-list.tsx';
import groupStyles from '#app/_groups/groups.module.css';
import { NewGroup } from '#app/_groups/new-group.tsx';
import { HomeHomework } from '#app/_homework/home-homework.tsx';
import { TakeBoardIn } from '#app/_outward/take-board-in.tsx';
import { HomeWaiting } from '#app/_queue/home-waiting.tsx';
import { NewsOfBoards } from '#app/_since/news-of-boards.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { homeworkAtHome } from '#server/access/homework.ts';
import { readSession } from '#server/access/session.ts';
import { waitingFor } from '#server/access/waiting.ts';
import { services } from '#server/http/services.ts';
import { listBoards } from '#server/store/boards.ts';
import { listGroups } from '#server/store/groups.ts';
import { isOnlyViewer } from '#server/store/members.ts';
import { decencyWords } from '#words/decency.ts';
import { pathWords } from '#words/path.ts';
import { words } from '#words/shell.ts';

export default async function BoardsPage() {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) {
    return (
      <PlainPage title={words.boards.stranger} lead={words.boards.strangerText}>
        <p>
          <Link href="/sign-in">{words.account.signIn.title}</Link>
        </p>
        <p>{words.boards.strangerHost}</p>
      </PlainPage>
    );
  }
  const boards = await listBoards(visitor.personId, visitor.isHost);
  const groups = await listGroups(visitor.personId, visitor.isHost);
  const mayMake = visitor.isHost || !(await isOnlyViewer(visitor.personId));
  return (
    <div className={styles.page}>
      <PageHead name={visitor.name} way={words.product}>
        {' '}
        <Link href="/path">{pathWords.link}</Link>
        {' · '}
        <Link href="/account">{words.account.account.link}</Link>
        {' · '}
        <Link href="/house">{visitor.isHost ? decencyWords.house.linkHost : decencyWords.house.link}</Link>
      </PageHead>
      <main className={styles.main}>
        <div className={styles.line}>
          <h1>{words.boards.title}</h1>
          {mayMake ? (
            <div className={styles.make}>
              <TakeBoardIn />
              <NewBoard />
            </div>
          ) : null}
        </div>
        <HomeWaiting waiting={await waitingFor(visitor, boards)} />
        <HomeHomework home={await homeworkAtHome(visitor, boards, services().isVeiled)} />
        <NewsOfBoards>
          <BoardList boards={boards} />
        </NewsOfBoards>
        {mayMake || groups.length > 0 ? (
          <section className={groupStyles.boards}>
            <div className={styles.line}>
              <h2>{words.people.groups.title}</h2>
              {mayMake ? <NewGroup /> : null}
            </div>
            <GroupList groups={groups} />
          </section>
        ) : null}
      </main>
    </div>
  );
}
