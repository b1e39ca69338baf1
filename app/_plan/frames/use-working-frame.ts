'use client';
/**
 * The frame under the hand: one taken from the sheet or drawn, or a kept one that is refined.
 *
 * In the flow: sheet, kept list, hand -> [use-working-frame] -> stage, figures, setup room. A kept frame is written when
 * the hand lets go; one that cannot be painted from is not, and stays on this screen with its sentence.
 */
import { uuidv4 } from 'lib0/random';
import { useMemo, useState } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { changeCrop, type KeptCrop, MOST_CROPS, putCrop, readCrops } from '#server/core/live/plan/crops.ts';
import { cropTrouble } from '#server/core/plan/crops/check-crop.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { refittedFrame, shareRatio } from '#server/core/plan/crops/edit-frame.ts';
import { frameWords } from '#words/plan-frames.ts';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { choiceFor, choiceOf, type FormatChoice } from './frame-formats.ts';

export interface WorkingFrame {
  readonly box: Box;
  readonly format: FormatChoice;
  /** The kept frame it is, or null. */
  readonly kept: KeptCrop | null;
  /** Why it is proposed; none for a frame of one's own. */
  readonly reasons: readonly string[];
}

/** What was taken or changed and is not in the room. */
interface Loose {
  readonly box: Box;
  readonly format: FormatChoice;
  readonly reasons: readonly string[];
  /** The kept frame it changes, or null. */
  readonly keptId: string | null;
}

export interface Working {
  readonly frame: WorkingFrame | null;
  /** What is wrong with it, in one sentence, or null. */
  readonly trouble: string | null;
  /** Whether a pull keeps the format. */
  readonly holds: boolean;
  setHolds(holds: boolean): void;
  /** Proportion in shares of the picture that a pull keeps; null = free. */
  readonly ratio: number | null;
  take(box: Box, format: FormatChoice, reasons: readonly string[]): void;
  /** While the hand pulls. */
  pull(box: Box): void;
  /** When it lets go. */
  settle(box: Box): void;
  setFormat(value: string): void;
  keep(): void;
  putAway(): void;
}

export function useWorkingFrame(picture: PictureView): Working {
  const doc = useRoomDocument('setup');
  const { may } = useBoardLive();
  const { setFrameId } = usePlanChoice();
  const { frames, chosen } = useKeptFrames();
  const [loose, setLoose] = useState<Loose | null>(null);
  const [holds, setHolds] = useState(true);
  const [full, setFull] = useState(false);
  const aspect = picture.width / picture.height;
  const mine = loose && (loose.keptId === (chosen?.id ?? null) ? loose : null);
  const frame = useMemo<WorkingFrame | null>(() => {
    if (mine) return { ...mine, kept: chosen };
    return (
      chosen && {
        box: chosen.box,
        format: choiceFor(chosen.format, chosen.canvas),
        kept: chosen,
        reasons: [],
      }
    );
  }, [mine, chosen]);
  const troubleOf = (box: Box) => cropTrouble(box, picture.width, picture.height);

  const change = (box: Box, format: FormatChoice, settled: boolean) => {
    setFull(false);
    const keptId = chosen?.id ?? null;
    const written = settled && keptId !== null && doc !== null && may.setup && troubleOf(box) === null;
    if (!written) return setLoose({ box, format, reasons: keptId ? [] : (mine?.reasons ?? []), keptId });
    changeCrop(doc, keptId, { box: [...box], format: format.format, canvas: format.canvas });
    setLoose(null);
  };
  /** A pull that does not hold the format leaves it. */
  const formatAfterPull = () => (frame && !holds ? choiceOf('free') : (frame?.format ?? choiceOf('free')));

  return {
    frame,
    trouble: full ? frameWords.kept.full(MOST_CROPS) : frame && troubleOf(frame.box),
    ...{ holds, setHolds },
    ratio: holds && frame?.format.ratio ? shareRatio(frame.format.ratio, aspect) : null,
    take(box, format, reasons) {
      setFull(false);
      setFrameId(null);
      setLoose({ box, format, reasons, keptId: null });
    },
    pull: (box) => change(box, formatAfterPull(), false),
    settle: (box) => change(box, formatAfterPull(), true),
    setFormat(value) {
      if (!frame) return;
      const format = choiceOf(value);
      const box = format.ratio ? refittedFrame(frame.box, shareRatio(format.ratio, aspect)) : frame.box;
      change(box, format, true);
    },
    keep() {
      if (!frame || !doc || troubleOf(frame.box) !== null) return;
      if (readCrops(doc).length >= MOST_CROPS) return setFull(true);
      const id = uuidv4();
      putCrop(doc, id, {
        name: freeName(frames),
        pictureId: picture.id,
        box: [...frame.box],
        format: frame.format.format,
        canvas: frame.format.canvas,
        at: Date.now(),
      });
      setLoose(null);
      setFrameId(id);
    },
    putAway() {
      setLoose(null);
      setFrameId(null);
    },
  };
}

/** The first number that no kept frame bears. */
function freeName(frames: readonly KeptCrop[]): string {
  const names = new Set(frames.map(({ name }) => name));
  let at = frames.length + 1;
  while (names.has(frameWords.kept.nth(at))) at++;
  return frameWords.kept.nth(at);
}
