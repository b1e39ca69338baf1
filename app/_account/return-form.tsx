'use client';
/** Comes back by a link, with a new password if one likes. IO: HTTP. */
import { useState } from 'react';
import { comeBack } from '#app/_api/people.ts';
import { useGoing } from '#app/_api/use-going.ts';
import plain from '#app/_enter/plain.module.css';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#words/shell.ts';

interface ReturnFormProps {
  linkKey: string;
  /** Whom the link lets in, and the address they sign in with, if any. */
  name: string;
  email: string | null;
  /** Name of the session this browser has now, if it is another. */
  knownAs: string | null;
}

export function ReturnForm({ linkKey, name, email, knownAs }: ReturnFormProps) {
  const [password, setPassword] = useState('');
  const { busy, trouble, onSubmit } = useGoing(async () => {
    await comeBack(linkKey, password === '' ? null : password);
    location.replace('/');
  });
  const said = words.account.back;
  return (
    <form className={`${plain.sheet} ${plain.form}`} onSubmit={onSubmit}>
      {knownAs === null ? null : <p className={plain.quiet}>{said.switch(knownAs)}</p>}
      {email === null ? null : (
        <>
          <input type="hidden" name="username" autoComplete="username" value={email} readOnly />
          <TextField
            label={said.password}
            hint={said.passwordHint}
            type="password"
            name="new-password"
            autoComplete="new-password"
            minLength={10}
            maxLength={200}
            value={password}
            onChange={(event) => setPassword(event.target.value)}
          />
        </>
      )}
      <Button weight="main" type="submit" busy={busy} busyWord={said.going}>
        {said.go(name)}
      </Button>
      {trouble ? (
        <div>
          <Notice trouble sentence={trouble} />
        </div>
      ) : null}
    </form>
  );
}
