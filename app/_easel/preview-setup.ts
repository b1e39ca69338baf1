/**
 * The setup of the instant preview, from what the screen knows and the outlines under the hand.
 *
 * In the flow: live outlines + moving outlines -> [preview-setup] -> core measuring on small copies. Pure.
 */
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { type Outline, Setup, type SetupInput } from '#server/core/contract/setup.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { outlineInto } from '#server/core/plan/crops/into-frame.ts';
import { fractionMapper } from '#server/core/rectify/fraction-mapper.ts';

export interface PreviewSource {
  planes: readonly PlaneView[];
  /** By plane id; null when the board has no reference. */
  onReference: ReadonlyMap<string, Outline> | null;
  /** By plane id, 0..1 of the upright photo. */
  onPainting: ReadonlyMap<string, Outline>;
  photo: LivePhoto;
  /** Of the reference that the painting is made after; left out = the whole of it. */
  frame?: Box | undefined;
  /** Outlines under the hand, by plane id. */
  moving: { kind: 'reference' | 'painting'; outlines: ReadonlyMap<string, Outline> };
}

/** The setup, outlines of the painting on its photo, or null when no plane can be measured on both. @throws Problem `corners-invalid`. */
export function previewSetup({
  planes,
  onReference,
  onPainting,
  photo,
  frame,
  moving,
}: PreviewSource): Setup | null {
  const { toOriginal } = fractionMapper(photo);
  const moved = (kind: 'reference' | 'painting', planeId: string) =>
    moving.kind === kind ? moving.outlines.get(planeId) : undefined;
  const measured = planes.flatMap(({ id, name, kind, tilt, unreliable }): SetupInput['planes'] => {
    const own = moved('painting', id) ?? onPainting.get(id);
    const whole = onReference ? (moved('reference', id) ?? onReference.get(id)) : own;
    const reference = whole && frame && onReference ? outlineInto(frame, whole) : whole;
    if (!reference || reference.length < 3) return [];
    const painting = own ?? reference.map(toOriginal);
    return [{ name, kind, tilt, unreliable: unreliable !== null, reference, painting }];
  });
  return measured.length === 0 ? null : (Setup.safeParse({ planes: measured, photo }).data ?? null);
}
