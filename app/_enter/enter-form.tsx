'use client';
/** Asks for a name and enters with the link's key; whoever is known already enters with one press. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { enter, Refused, sentenceOf } from '#app/_api/client.ts';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#words/shell.ts';
import styles from './plain.module.css';

/** Sent where a host goes on under the name they have. */
const NO_NAME = '-';

/** A host who may go on as themselves. */
export interface HostBefore {
  id: string;
  /** Name and since when. */
  words: string;
}

interface EnterFormProps {
  /** The host's key, a host link's key or an invite's token. */
  entryKey: string;
  /** Name of the session this browser has already, or null. */
  knownAs: string | null;
  /** What to do when the link does not open, said under the server's sentence. */
  whatToDo: string;
  /** With a host's key: the hosts there are. */
  hosts?: readonly HostBefore[];
}

export function EnterForm({ entryKey, knownAs, whatToDo, hosts = [] }: EnterFormProps) {
  const [as, setAs] = useState<string | null>(null);
  const [name, setName] = useState('');
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<{ sentence: string; link: boolean } | null>(null);
  const go = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setRefused(null);
    try {
      const { boardId, groupId } = await enter(entryKey, (knownAs ?? name) || NO_NAME, as ?? undefined);
      if (boardId) location.replace(`/boards/${encodeURIComponent(boardId)}`);
      else location.replace(groupId ? `/groups/${encodeURIComponent(groupId)}` : '/');
    } catch (thrown) {
      setBusy(false);
      setRefused({
        sentence: sentenceOf(thrown),
        link: thrown instanceof Refused && thrown.code === 'link-not-valid',
      });
    }
  };
  return (
    <form className={`${styles.sheet} ${styles.form}`} onSubmit={go}>
      {knownAs === null && hosts.length > 0 ? <WhoAreYou hosts={hosts} as={as} onChoose={setAs} /> : null}
      {knownAs === null && as === null ? (
        <TextField
          label={words.enter.name}
          hint={words.enter.nameHint}
          name="name"
          autoComplete="nickname"
          maxLength={60}
          required
          autoFocus
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
      ) : null}
      <Button weight="main" type="submit" busy={busy} busyWord={words.enter.entering}>
        {knownAs === null ? words.enter.enter : words.enter.enterAs(knownAs)}
      </Button>
      {refused ? (
        <div>
          <Notice trouble sentence={refused.link ? `${refused.sentence} ${whatToDo}` : refused.sentence} />
        </div>
      ) : null}
    </form>
  );
}

interface WhoAreYouProps {
  hosts: readonly HostBefore[];
  as: string | null;
  onChoose(as: string | null): void;
}

/** A host who lost their way in is not somebody new: their boards and marks are under the id they had. */
function WhoAreYou({ hosts, as, onChoose }: WhoAreYouProps) {
  return (
    <fieldset className={styles.choices}>
      <legend>{words.account.hostsAsk}</legend>
      {[{ id: null, words: words.account.hostNew }, ...hosts].map((host) => (
        <label key={host.id ?? ''}>
          <input type="radio" name="as" checked={as === host.id} onChange={() => onChoose(host.id)} />
          {host.words}
        </label>
      ))}
    </fieldset>
  );
}
