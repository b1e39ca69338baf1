'use client';
/** E-mail address and password for oneself, or others in their place. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { setAccount } from '#app/_api/people.ts';
import plain from '#app/_enter/plain.module.css';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#words/shell.ts';

interface AccountFormProps {
  /** The address one has here already, or null. */
  email: string | null;
  onKept(email: string | null): void;
}

export function AccountForm({ email: before, onKept }: AccountFormProps) {
  const [email, setEmail] = useState(before ?? '');
  const [password, setPassword] = useState('');
  const [current, setCurrent] = useState('');
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<{ sentence: string; trouble: boolean } | null>(null);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setSaid(null);
    try {
      const kept = await setAccount({ email, password, ...(before === null ? {} : { current }) });
      setPassword('');
      setCurrent('');
      setSaid({ sentence: words.account.account.kept, trouble: false });
      onKept(kept.email);
    } catch (thrown) {
      setSaid({ sentence: sentenceOf(thrown), trouble: true });
    } finally {
      setBusy(false);
    }
  };
  const label = words.account.account;
  return (
    <form className={`${plain.sheet} ${plain.form}`} onSubmit={keep}>
      <h2>{before === null ? label.add : label.change}</h2>
      <TextField
        label={label.email}
        hint={label.emailHint}
        type="email"
        name="email"
        autoComplete="username"
        required
        value={email}
        onChange={(event) => setEmail(event.target.value)}
      />
      {before === null ? null : (
        <TextField
          label={label.current}
          type="password"
          name="current"
          autoComplete="current-password"
          required
          value={current}
          onChange={(event) => setCurrent(event.target.value)}
        />
      )}
      <TextField
        label={before === null ? label.password : label.newPassword}
        hint={label.passwordHint}
        type="password"
        name="new-password"
        autoComplete="new-password"
        minLength={10}
        maxLength={200}
        required
        value={password}
        onChange={(event) => setPassword(event.target.value)}
      />
      <Button weight="main" type="submit" busy={busy} busyWord={label.keeping}>
        {label.keep}
      </Button>
      {said ? (
        <div>
          <Notice trouble={said.trouble} sentence={said.sentence} />
        </div>
      ) : null}
    </form>
  );
}
