'use client';
/** E-mail address and password, and in. IO: HTTP. */
import { useState } from 'react';
import { signIn } from '#app/_api/people.ts';
import { useGoing } from '#app/_api/use-going.ts';
import plain from '#app/_enter/plain.module.css';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#words/shell.ts';

/** @param knownAs Name of the session this browser has already, or null. */
export function SignInForm({ knownAs }: { knownAs: string | null }) {
  const [email, setEmail] = useState('');
  const [password, setPassword] = useState('');
  const { busy, trouble, onSubmit } = useGoing(async () => {
    await signIn(email, password);
    location.replace('/');
  });
  const said = words.account.signIn;
  return (
    <form className={`${plain.sheet} ${plain.form}`} onSubmit={onSubmit}>
      {knownAs === null ? null : <p className={plain.quiet}>{said.switch(knownAs)}</p>}
      <TextField
        label={said.email}
        type="email"
        name="email"
        autoComplete="username"
        required
        autoFocus
        value={email}
        onChange={(event) => setEmail(event.target.value)}
      />
      <TextField
        label={said.password}
        type="password"
        name="password"
        autoComplete="current-password"
        required
        value={password}
        onChange={(event) => setPassword(event.target.value)}
      />
      <Button weight="main" type="submit" busy={busy} busyWord={said.going}>
        {said.go}
      </Button>
      {trouble ? (
        <div>
          <Notice trouble sentence={trouble} />
        </div>
      ) : null}
      <p className={plain.quiet}>{said.lost}</p>
    </form>
  );
}
