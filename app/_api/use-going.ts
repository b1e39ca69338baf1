'use client';
/**
 * A form that sends once and then leaves the page: it stays busy until the next page is there, or says why not.
 *
 * In the flow: form -> [use-going] -> client. IO: whatever `go` does.
 */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from './client.ts';

/** @param go Sends and opens the next page. Its refusal is told in `trouble`; a bug is thrown on. */
export function useGoing(go: () => Promise<void>) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setTrouble(null);
    try {
      await go();
    } catch (thrown) {
      setBusy(false);
      setTrouble(sentenceOf(thrown));
    }
  };
  return { busy, trouble, onSubmit };
}
