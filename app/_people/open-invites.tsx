'use client';
/** The invitations that still work, each with a way to take it back. IO: HTTP. */
import { useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { type At, fetchInvites, revokeInvite } from '#app/_api/people.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { dateTime } from '#app/_words/figures.ts';
import type { OpenInvite } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './people.module.css';

/** @param round Rises when the list should be fetched again. */
export function OpenInvites({ at, round }: { at: At; round: number }) {
  const [invites, setInvites] = useState<OpenInvite[] | null>(null);
  const [busy, setBusy] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round is the reason to fetch again; the place stays.
  useEffect(() => {
    const controller = new AbortController();
    fetchInvites(at, controller.signal)
      .then(setInvites)
      .catch((thrown: unknown) => {
        if (!controller.signal.aborted) setTrouble(sentenceOf(thrown));
      });
    return () => controller.abort();
  }, [round]);

  const takeBack = async (id: string) => {
    setBusy(id);
    setTrouble(null);
    try {
      await revokeInvite(at, id);
      setInvites((before) => before?.filter((invite) => invite.id !== id) ?? null);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(null);
    }
  };
  return (
    <section className={styles.part}>
      <h3>{words.people.open}</h3>
      {invites?.length === 0 ? <p className={styles.quiet}>{words.people.noneOpen}</p> : null}
      <ul className={styles.list}>
        {invites?.map((invite) => (
          <li key={invite.id} className={styles.acts}>
            <span>
              {words.people.inviteRole[invite.role].name}
              {invite.ward ? ` ${words.people.guardianOf(invite.ward.name)}` : ''},{' '}
              {words.people.until(dateTime(invite.expiresAt))}
              <small className={styles.quiet}>, {words.people.came(invite.used, invite.uses)}</small>
            </span>
            <Button
              weight="word"
              busy={busy === invite.id}
              busyWord={words.people.takingBack}
              onClick={() => takeBack(invite.id)}
            >
              {words.people.takeBack}
            </Button>
          </li>
        ))}
      </ul>
      {invites && invites.length > 0 ? <p className={styles.quiet}>{words.people.takeBackHint}</p> : null}
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
