/**
 * Words that are not sent yet, kept in this browser so that a closed tab or a lost line costs nothing.
 *
 * IO: the browser's own storage; where that is switched off, drafts last as long as the page.
 */
import { useCallback, useEffect, useState } from 'react';

const PREFIX = 'veilstep-draft/';

export function keptDraft(key: string): string {
  try {
    return localStorage.getItem(PREFIX + key) ?? '';
  } catch {
    return '';
  }
}

export function keepDraft(key: string, text: string): void {
  try {
    if (text) localStorage.setItem(PREFIX + key, text);
    else localStorage.removeItem(PREFIX + key);
  } catch {
    // Storage may be full or switched off; the words then stay on the page alone.
  }
}

/** Forgets every draft kept in this browser, for instance when its person signs out. */
export function forgetDrafts(): void {
  try {
    const kept = Array.from({ length: localStorage.length }, (_, at) => localStorage.key(at));
    for (const key of kept) if (key?.startsWith(PREFIX)) localStorage.removeItem(key);
  } catch {
    // Where nothing can be kept there is nothing to forget.
  }
}

/** The text of one field that is kept until it is sent; an empty text forgets it. */
export function useDraft(key: string): [string, (text: string) => void] {
  const [text, setText] = useState('');
  useEffect(() => setText(keptDraft(key)), [key]);
  const change = useCallback(
    (next: string) => {
      setText(next);
      keepDraft(key, next);
    },
    [key],
  );
  return [text, change];
}
