'use client';
/** The name of a group, written anew in place, and bringing a board into it. IO: HTTP. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { moveBoard, renameGroup } from '#app/_api/decency.ts';
import { useGoing } from '#app/_api/use-going.ts';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { BoardListItem, GroupName } from '#server/core/contract/responses.ts';
import { decencyWords } from '#words/decency.ts';
import { words as allWords } from '#words/shell.ts';
import styles from './decency.module.css';

const { group: words } = decencyWords;

export function GroupTitle({ group, mayRename }: { group: GroupName; mayRename: boolean }) {
  const [writing, setWriting] = useState(false);
  if (writing) return <Rename group={group} close={() => setWriting(false)} />;
  return (
    <span className={styles.acts}>
      <h1>{group.name}</h1>
      {mayRename ? (
        <Button weight="word" onClick={() => setWriting(true)}>
          {words.rename}
        </Button>
      ) : null}
    </span>
  );
}

function Rename({ group, close }: { group: GroupName; close(): void }) {
  const router = useRouter();
  const [name, setName] = useState(group.name);
  const { busy, trouble, onSubmit } = useGoing(async () => {
    await renameGroup(group.id, name);
    router.refresh();
    close();
  });
  return (
    <form className={styles.form} onSubmit={onSubmit}>
      <h1 className="unseen">{group.name}</h1>
      <TextField
        label={words.name}
        trouble={trouble}
        value={name}
        maxLength={120}
        required
        autoFocus
        onChange={(event) => setName(event.target.value)}
      />
      <span className={styles.acts}>
        <Button weight="main" type="submit" busy={busy}>
          {words.keep}
        </Button>
        <Button weight="word" onClick={close}>
          {allWords.cancel}
        </Button>
      </span>
    </form>
  );
}

/** @param boards Boards one runs that are not in this group. */
export function BringBoard({ groupId, boards }: { groupId: string; boards: readonly BoardListItem[] }) {
  const router = useRouter();
  const [chosen, setChosen] = useState('');
  const [trouble, setTrouble] = useState<string | null>(null);
  const bring = async () => {
    setTrouble(null);
    try {
      await moveBoard(chosen, groupId);
      setChosen('');
      router.refresh();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  if (boards.length === 0) return null;
  return (
    <section className={`${styles.sheet} ${styles.form}`}>
      <h2>{words.bring}</h2>
      <ChoiceField label={words.board} value={chosen} onChange={(event) => setChosen(event.target.value)}>
        <option value="">–</option>
        {boards.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </ChoiceField>
      <Button disabled={chosen === ''} onClick={bring}>
        {words.bringIt}
      </Button>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
