'use client';
/** Takes the thumbnails away as one PNG. In the flow: values-panel -> [take-sheet] -> file. IO: a download. */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { ValuePicture } from '#server/core/look/value-plan.ts';
import { valueWords } from '#words/plan-values.ts';
import type { ValuePlans } from './use-value-plans.ts';
import { drawValueSheet } from './value-sheet.ts';

const { sheet: words } = valueWords;

interface TakeSheetProps {
  picture: ValuePicture;
  plans: ValuePlans;
  /** Of the frame. */
  name: string;
}

export function TakeSheet({ picture, plans, name }: TakeSheetProps) {
  const { board } = useBoardLive();
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState(false);
  const take = async () => {
    if (!plans.byNumber) return;
    setBusy(true);
    setFailed(false);
    try {
      const { byNumber, settled } = plans;
      const title = `${board.title} · ${name}`;
      save(await drawValueSheet({ title, picture, plans: byNumber, settled }), words.file(plain(name)));
    } catch {
      setFailed(true);
    } finally {
      setBusy(false);
    }
  };
  return (
    <div>
      <Button busy={busy} busyWord={words.busy} onClick={() => void take()}>
        {words.take}
      </Button>
      <p role="alert">{failed ? words.failed : null}</p>
    </div>
  );
}

/** A name that every file system takes. */
function plain(name: string): string {
  return (
    name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-+|-+$/g, '') || words.unnamed
  );
}

function save(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
