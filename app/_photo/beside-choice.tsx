'use client';
/**
 * What stands beside the photo while it is put right; on a narrow screen, what is shown of the two.
 *
 * In the flow: bar -> [beside-choice] -> photo desk.
 */
import bar from '#app/_easel/easel-bar.module.css';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useWide } from '#app/_workspace/use-wide.ts';
import { words } from '#words/photo.ts';
import { usePhotoDesk } from './photo-desk.tsx';

export function BesideChoice() {
  const wide = useWide();
  const { beside, setBeside, instead, setInstead } = usePhotoDesk();
  const { referenceId } = useTools();
  if (wide && !referenceId) return null;
  const [righted, set] = wide ? [beside, setBeside] : [instead, setInstead];
  return (
    <fieldset className={bar.choice} aria-label={wide ? words.beside.label : words.beside.labelNarrow}>
      <button type="button" aria-pressed={!righted} onClick={() => set(false)}>
        {wide ? words.beside.reference : words.beside.photo}
      </button>
      <button type="button" aria-pressed={righted} onClick={() => set(true)}>
        {words.beside.righted}
      </button>
    </fieldset>
  );
}
