'use client';
/** A link that was just made, selected, with a way to copy it. IO: the clipboard. */
import { useEffect, useId, useRef, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { copyText } from '#app/_ui/copy-text.ts';
import { words } from '#words/shell.ts';
import styles from './people.module.css';

interface MadeLinkProps {
  url: string;
  label: string;
  /** Said beside the button until it is pressed. */
  hint: string;
}

/** Names under which a computer knows itself alone (RFC 6761, section 6.3; RFC 1122, 3.2.1.3; RFC 4291, 2.5.3). */
function isOfThisComputer(url: string): boolean {
  const { hostname } = new URL(url, location.href);
  return hostname === 'localhost' || hostname.startsWith('127.') || hostname === '[::1]';
}

export function MadeLink({ url, label, hint }: MadeLinkProps) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState<boolean | null>(null);
  useEffect(() => field.current?.select(), []);
  const copy = async () => {
    const worked = await copyText(url);
    setCopied(worked);
    if (!worked) field.current?.select();
  };
  const said = copied === null ? hint : copied ? words.people.copied : words.people.copyFailed;
  return (
    <div className={styles.made}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        ref={field}
        className={styles.link}
        readOnly
        value={url}
        onFocus={(event) => event.target.select()}
      />
      {isOfThisComputer(url) ? <p>{words.people.linkHere}</p> : null}
      <div className={styles.acts}>
        <Button onClick={copy}>{words.people.copy}</Button>
        <span role="status" className={styles.quiet}>
          {said}
        </span>
      </div>
    </div>
  );
}
