'use client';
/** A sample of colour and its reading, as far as its photo can be trusted. In the flow: remark -> [patch-words]. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import { useTrust } from '#app/_look/use-trust.ts';
import { figure } from '#app/_words/figures.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { hexFromLinear } from '#server/core/colour/hex.ts';
import { rgbFromLab } from '#server/core/colour/lab.ts';
import type { MarkPatch } from '#server/core/live/layout.ts';
import { patchReading, type ReadFigure, trustNow } from '#server/core/look/patch-reading.ts';
import type { Trust } from '#server/core/look/trust.ts';
import { markWords } from '#words/marks.ts';
import styles from './talk.module.css';

const { patch: words } = markWords;

export function PatchWords({ mark, patch }: { mark: MarkView; patch: MarkPatch }) {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const trustOf = useTrust();
  const kind = board.pictures.find(({ id }) => id === mark.pictureId)?.kind;
  const known = kind === 'reference' || mark.pictureId === paintingId;
  const said = readingWords(patch, trustNow(patch.trust, known ? trustOf(mark.pictureId) : null));
  return (
    <p className={styles.patch}>
      <span className={styles.sample} style={{ background: hexOf(patch) }} aria-hidden="true" />
      <span>{said}</span>
    </p>
  );
}

function hexOf({ lab }: MarkPatch): string {
  return hexFromLinear(...rgbFromLab(lab));
}

/** For example `value 5.2 ± 0.3, L* 52 ± 3, C* 12 ± 5, hue 100° ± 25° · photo of grade A`. */
export function readingWords({ lab }: Pick<MarkPatch, 'lab'>, trust: Trust): string {
  const reading = patchReading(lab, trust);
  if (!reading || trust === 'C') return words.withheld;
  const { value, lightness, chroma, hueDeg } = reading;
  const said = [
    words.value(withDoubt(value, 1)),
    words.lightness(withDoubt(lightness, 0)),
    words.chroma(withDoubt(chroma, 0)),
    hueDeg ? words.hue(withDoubt(hueDeg, 0, '°')) : words.noHue,
  ].join(', ');
  return `${said} · ${trust === 'exact' ? words.exact : words.grade(trust)}`;
}

function withDoubt({ amount, off }: ReadFigure, digits: number, unit = ''): string {
  const doubt = off > 0 ? ` ± ${figure(off, digits)}${unit}` : '';
  return `${figure(amount, digits)}${unit}${doubt}`;
}
