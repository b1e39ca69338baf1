'use client';
/** Ends the session of this browser; who has no e-mail address is asked twice. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { signOut } from '#app/_api/people.ts';
import plain from '#app/_enter/plain.module.css';
import { forgetDrafts } from '#app/_live/drafts.ts';
import { dropCopies } from '#app/_live/room-copies.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#words/shell.ts';

/** @param guest Whether this browser alone knows the person. */
export function SignOut({ guest }: { guest: boolean }) {
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const label = words.account.account;
  const go = async () => {
    if (guest && !asked) {
      setAsked(true);
      return;
    }
    setBusy(true);
    try {
      await signOut();
      // Whoever uses this device next has no business with unsent words, nor with what was kept of boards.
      forgetDrafts();
      dropCopies(() => true);
      location.replace('/');
    } catch (thrown) {
      setBusy(false);
      setTrouble(sentenceOf(thrown));
    }
  };
  return (
    <section className={`${plain.sheet} ${plain.form}`}>
      <h2>{label.leaveTitle}</h2>
      <p>{guest ? label.leaveGuest : label.leaveKnown}</p>
      <div className={plain.acts}>
        <Button busy={busy} busyWord={label.leaving} onClick={go}>
          {asked ? label.leaveSure : label.leave}
        </Button>
        {asked ? (
          <Button weight="word" onClick={() => setAsked(false)}>
            {words.cancel}
          </Button>
        ) : null}
      </div>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
