/**
 * K2: the marked focus in the dead middle or against the edge.
 *
 * In the flow: shape scene -> [focus] -> suggestions. Sources: Poore 1903 (avoid the exact centre); Harrison 1909, p. 97
 * (crowding the frame). Pure.
 */
import { say } from '../../say/say.ts';
import type { ShapeScene } from './shape-scene.ts';
import { type Seen, severityOf } from './suggestion.ts';

/** Of the picture's sides, from both centre lines. */
export const CENTRED = 0.06;
/** Of the picture's sides, from any edge. */
export const AT_EDGE = 0.08;

/** K2; nothing where no focus is marked. */
export function focusPlace({ focus }: ShapeScene): Seen[] {
  if (!focus) return [];
  const [x, y] = focus;
  const off = Math.max(Math.abs(x - 0.5), Math.abs(y - 0.5));
  const edge = Math.min(x, 1 - x, y, 1 - y);
  const common = { id: 'K2' as const, planes: [], at: [focus] };
  if (off < CENTRED) {
    return [
      {
        ...common,
        kind: 'focus-centred',
        severity: severityOf(1 - off / CENTRED),
        sentence: say`Look at your focus: it sits in the exact middle. Try a shift or another crop.`,
        why: say`From the exact middle every side pulls alike, and the eye has nowhere to go.`,
        source: say`Poore 1903 (the natural axis)`,
      },
    ];
  }
  if (edge >= AT_EDGE) return [];
  return [
    {
      ...common,
      kind: 'focus-at-edge',
      severity: severityOf(1 - edge / AT_EDGE),
      sentence: say`Look at your focus: it sits against the edge. Try a shift or another crop.`,
      why: say`What stands close to the frame leads the eye out of the picture.`,
      source: say`Harrison 1909, p. 97`,
    },
  ];
}
