'use client';
/** For whoever runs the board: its group, handing it on, and the end of its class. IO: HTTP. */
import { useEffect, useState } from 'react';
import { call, sentenceOf } from '#app/_api/client.ts';
import { countOver, handBoardOn, moveBoard, sayOver } from '#app/_api/decency.ts';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { dateTime } from '#app/_words/figures.ts';
import type { OverView } from '#server/core/contract/decency.ts';
import type { BoardView, GroupListItem } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { decencyWords } from '#words/decency.ts';
import { words as allWords } from '#words/shell.ts';
import styles from './decency.module.css';

const { place: words } = decencyWords;

interface BoardPlaceProps {
  board: BoardView;
  onChanged(): void;
}

export function BoardPlace({ board, onChanged }: BoardPlaceProps) {
  const [trouble, setTrouble] = useState<string | null>(null);
  if (!may(board.role, 'board.hand')) return null;
  const trying = async (act: () => Promise<unknown>) => {
    setTrouble(null);
    try {
      await act();
      onChanged();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  return (
    <section className={styles.part}>
      <h3>{words.title}</h3>
      <Group board={board} trying={trying} />
      <HandOn board={board} trying={trying} />
      <details className={styles.ending}>
        <summary>{words.ending}</summary>
        <p>{words.endingWhat}</p>
        <Over board={board} trying={trying} />
      </details>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}

interface PartProps {
  board: BoardView;
  trying(act: () => Promise<unknown>): Promise<void>;
}

/** Groups one may bring boards into. */
function Group({ board, trying }: PartProps) {
  const [groups, setGroups] = useState<readonly GroupListItem[]>([]);
  const [chosen, setChosen] = useState(board.group?.id ?? '');
  useEffect(() => {
    const controller = new AbortController();
    call<GroupListItem[]>('/api/groups', { signal: controller.signal })
      .then((all) => setGroups(all.filter(({ role }) => may(role, 'group.board'))))
      .catch(() => undefined); // Without an answer there is nothing to choose, and the line says why.
    return () => controller.abort();
  }, []);
  const { group } = board;
  const others = groups.filter(({ id }) => id !== group?.id);
  if (others.length === 0 && group === null) return null;
  return (
    <div className={styles.form}>
      <ChoiceField
        label={words.group}
        hint={words.moveNote}
        value={chosen}
        onChange={(event) => setChosen(event.target.value)}
      >
        <option value="">{words.noGroup}</option>
        {group ? <option value={group.id}>{group.name}</option> : null}
        {others.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </ChoiceField>
      {chosen === (group?.id ?? '') ? null : (
        <Button onClick={() => trying(() => moveBoard(board.id, chosen || null))}>{words.move}</Button>
      )}
    </div>
  );
}

function HandOn({ board, trying }: PartProps) {
  const [chosen, setChosen] = useState('');
  const heirs = board.members.filter(
    ({ role, id }) => role !== 'owner' && role !== 'guardian' && id !== board.me.id,
  );
  const heir = heirs.find(({ id }) => id === chosen);
  if (heirs.length === 0) return null;
  return (
    <div className={styles.form}>
      <ChoiceField label={words.hand} value={chosen} onChange={(event) => setChosen(event.target.value)}>
        <option value="">–</option>
        {heirs.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </ChoiceField>
      {heir ? (
        <span className={styles.acts}>
          {words.handSure(heir.name)}
          <Button weight="main" onClick={() => trying(() => handBoardOn(board.id, heir.id))}>
            {words.handIt}
          </Button>
          <Button weight="word" onClick={() => setChosen('')}>
            {allWords.cancel}
          </Button>
        </span>
      ) : null}
    </div>
  );
}

/** What would go is counted before it is asked. */
function Over({ board, trying }: PartProps) {
  const [over, setOver] = useState<OverView | null>(null);
  const count = () => trying(async () => setOver(await countOver(board.id)));
  const end = () =>
    trying(async () => {
      await sayOver(board.id);
      setOver(await countOver(board.id));
    });
  if (over === null) {
    return (
      <div className={styles.acts}>
        <Button onClick={count}>{words.over}</Button>
      </div>
    );
  }
  return (
    <div className={styles.part}>
      <p>
        {over.overAt ? words.overAt(dateTime(over.overAt)) : null} {words.overCount(over.goes, over.stays)}
      </p>
      <span className={styles.acts}>
        {over.goes > 0 ? (
          <Button weight="main" onClick={end}>
            {words.overDo}
          </Button>
        ) : null}
        <Button weight="word" onClick={() => setOver(null)}>
          {allWords.cancel}
        </Button>
      </span>
    </div>
  );
}
