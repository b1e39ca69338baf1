'use client';
/**
 * The slot through which homework is posted: a file or the camera, one picture, straight to its place.
 *
 * In the flow: one-homework -> [answer-slot] -> app/api/boards/…/pictures. The server knows which state it follows. IO: HTTP.
 */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { FileChooser } from '#app/_post/file-chooser.tsx';
import { sendPicture } from '#app/_post/send-picture.ts';
import { percent } from '#app/_words/figures.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { HomeworkView } from '#server/core/contract/homework.ts';
import { homeworkWords as words } from '#words/homework.ts';
import styles from './homework.module.css';

interface AnswerSlotProps {
  boardId: string;
  homework: HomeworkView;
  changed(): Promise<void>;
}

export function AnswerSlot({ boardId, homework, changed }: AnswerSlotProps) {
  const { setPaintingId, setSide } = useTools();
  /** Share that has been sent, 0..1; null = nothing is on its way. */
  const [sent, setSent] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const send = async ([file]: File[]) => {
    if (!file) return;
    setTrouble(null);
    setSent(0);
    try {
      const { id } = await sendPicture(boardId, file, { kind: 'painting', homework: homework.id }, setSent)
        .done;
      await changed();
      setPaintingId(id);
      setSide('painting');
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    setSent(null);
  };
  if (sent !== null) {
    return (
      <p className={styles.quiet} role="status">
        {sent < 1 ? words.sending(percent(sent)) : words.working}
      </p>
    );
  }
  return (
    <div>
      <FileChooser
        label={homework.answer ? words.again : words.post[homework.answerAs]}
        weight="quiet"
        onFiles={(files) => void send(files)}
      />
      <p className={styles.trouble} role="alert">
        {trouble}
      </p>
    </div>
  );
}
