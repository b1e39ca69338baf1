'use client';
/** A button that asks for one file of this device. IO: the browser's file picker. */
import { type ChangeEvent, useRef } from 'react';
import { Button, type ButtonWeight } from '#app/_ui/button.tsx';

interface OneFileProps {
  label: string;
  /** What the picker offers first; anything may be chosen. */
  accept: string;
  weight?: ButtonWeight;
  busy: boolean;
  busyWord: string;
  onFile(file: File): void;
}

export function OneFile({ label, accept, weight = 'quiet', busy, busyWord, onFile }: OneFileProps) {
  const input = useRef<HTMLInputElement>(null);
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    const [file] = [...(event.target.files ?? [])];
    // Emptied, so that choosing the same file again is a change again.
    event.target.value = '';
    if (file) onFile(file);
  };
  return (
    <span>
      <Button weight={weight} busy={busy} busyWord={busyWord} onClick={() => input.current?.click()}>
        {label}
      </Button>
      <input ref={input} hidden type="file" accept={accept} aria-label={label} onChange={take} />
    </span>
  );
}
