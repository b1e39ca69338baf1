/** One group: its boards, its people, its invitations. IO: session and store. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { BoardList } from '#app/_boards/board-list.tsx';
import styles from '#app/_boards/boards.module.css';
import { NewBoard } from '#app/_boards/new-board.tsx';
import { BringBoard, GroupTitle } from '#app/_decency/group-place.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { GroupPeople } from '#app/_groups/group-people.tsx';
import groupStyles from '#app/_groups/groups.module.css';
import { NewsOfBoards } from '#app/_since/news-of-boards.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { groupAsSeen } from '#server/access/group-view.ts';
import { roleInGroup } from '#server/access/roles.ts';
import { readSession } from '#server/access/session.ts';
import { may } from '#server/core/permissions/may.ts';
import { listBoards } from '#server/store/boards.ts';
import { words } from '#words/shell.ts';

interface GroupPageProps {
  params: Promise<{ groupId: string }>;
}

/** Read once for title and page alike. 'stranger' without a session, null when there is no such group for them. */
const read = cache(async (groupId: string) => {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return 'stranger';
  const role = await roleInGroup(visitor, groupId);
  const group = role && (await groupAsSeen(groupId, visitor, role));
  return group ? { visitor, group } : null;
});

export async function generateMetadata({ params }: GroupPageProps): Promise<Metadata> {
  const found = await read((await params).groupId);
  return { title: found && found !== 'stranger' ? found.group.name : words.people.groups.title };
}

export default async function GroupPage({ params }: GroupPageProps) {
  const found = await read((await params).groupId);
  if (found === 'stranger') {
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  }
  if (!found) notFound();
  const { visitor, group } = found;
  const all = await listBoards(visitor.personId, visitor.isHost);
  const boards = all.filter((board) => board.group?.id === group.id);
  const elsewhere = all.filter((board) => board.group?.id !== group.id && may(board.role, 'board.group'));
  return (
    <div className={styles.page}>
      <PageHead name={visitor.name} />
      <main className={styles.main}>
        <div className={styles.line}>
          <GroupTitle group={group} mayRename={may(group.role, 'group.rename')} />
          {may(group.role, 'group.board') ? <NewBoard group={group.id} /> : null}
        </div>
        {boards.length > 0 ? (
          <NewsOfBoards>
            <BoardList boards={boards} />
          </NewsOfBoards>
        ) : (
          <p>{words.people.groups.noBoard}</p>
        )}
        <div className={groupStyles.beside}>
          <GroupPeople group={group} meId={visitor.personId}>
            {may(group.role, 'group.board') ? <BringBoard groupId={group.id} boards={elsewhere} /> : null}
          </GroupPeople>
        </div>
      </main>
    </div>
  );
}
