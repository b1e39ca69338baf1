'use client';
/** Oneself: how one signs in, and signing out. */
import { useState } from 'react';
import { words } from '#words/shell.ts';
import { AccountForm } from './account-form.tsx';
import { SignOut } from './sign-out.tsx';

/** @param email The address one has here already, or null. */
export function Account({ email: before }: { email: string | null }) {
  const [email, setEmail] = useState(before);
  return (
    <>
      <p>{email === null ? words.account.account.guest : words.account.account.known(email)}</p>
      <AccountForm key={email === null ? 'none' : 'some'} email={email} onKept={setEmail} />
      <SignOut guest={email === null} />
    </>
  );
}
