'use client';
/** Two ways to pictures on this device: its files, and on a phone its camera. IO: the browser's file picker. */
import { type ChangeEvent, type RefObject, useRef } from 'react';
import { Button, type ButtonWeight } from '#app/_ui/button.tsx';
import { words } from '#words/shell.ts';
import styles from './post.module.css';

/** The kinds the server takes; .heic by name too, since some systems give it no type. */
const ACCEPT =
  'image/jpeg,image/png,image/webp,image/tiff,image/avif,image/heic,image/heif,.jpg,.jpeg,.png,.webp,.tif,.tiff,.avif,.heic,.heif';

interface FileChooserProps {
  onFiles(files: File[]): void;
  label?: string;
  weight?: ButtonWeight;
}

export function FileChooser({ onFiles, label = words.post.choose, weight = 'main' }: FileChooserProps) {
  const files = useRef<HTMLInputElement>(null);
  const camera = useRef<HTMLInputElement>(null);
  return (
    <span className={styles.chooser}>
      <Button weight={weight} onClick={() => files.current?.click()}>
        {label}
      </Button>
      <span className={styles.camera}>
        <Button weight="quiet" onClick={() => camera.current?.click()}>
          {words.post.camera}
        </Button>
      </span>
      <FileInput input={files} label={label} onFiles={onFiles} />
      <FileInput input={camera} label={words.post.camera} camera onFiles={onFiles} />
    </span>
  );
}

interface FileInputProps {
  input: RefObject<HTMLInputElement | null>;
  label: string;
  /** One picture from the camera, instead of files. */
  camera?: boolean;
  onFiles(files: File[]): void;
}

/** The browser's own file picker, unseen; opened by whatever holds `input`. */
export function FileInput({ input, label, camera = false, onFiles }: FileInputProps) {
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = [...(event.target.files ?? [])];
    // Emptied, so that choosing the same file again is a change again.
    event.target.value = '';
    if (chosen.length > 0) onFiles(chosen);
  };
  const kind = camera
    ? { accept: 'image/*', capture: 'environment' as const }
    : { accept: ACCEPT, multiple: true };
  return <input ref={input} hidden type="file" {...kind} aria-label={label} onChange={take} />;
}
