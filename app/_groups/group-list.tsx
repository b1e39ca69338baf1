/** The groups the caller belongs to, by name. */
import Link from 'next/link';
import styles from '#app/_boards/boards.module.css';
import type { GroupListItem } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import groupStyles from './groups.module.css';

export function GroupList({ groups }: { groups: readonly GroupListItem[] }) {
  if (groups.length === 0) return <p className={styles.about}>{words.people.groups.about}</p>;
  return (
    <ul className={groupStyles.groups}>
      {groups.map(({ id, name, members, boards }) => (
        <li key={id}>
          <Link href={`/groups/${id}`} prefetch={false}>
            {name}
          </Link>{' '}
          <span className={styles.about}>{words.people.groups.counts(members, boards)}</span>
        </li>
      ))}
    </ul>
  );
}
