/**
 * The server's own formulas on small copies of two pictures, quick enough to follow a drag.
 *
 * In the flow: use-preview -> [preview-measuring] -> measures for the ladder. Loaded with the outline tool. IO: fetches
 * two pictures once.
 */
import type { PlaneView } from '#app/_live/board-live-types.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import { isProblem } from '#server/core/problem.ts';
import { WHOLE_PICTURE } from './outline-edit.ts';
import { type PreviewSource, previewSetup } from './preview-setup.ts';
import { smallCopy } from './small-copy.ts';

/** The measures of what the source says, or null while its outlines cannot be measured. */
export type PreviewMeasuring = (source: PreviewSource) => MeasureDocument | null;

/** @param referenceId Null when painted from life. @throws Error when a picture cannot be fetched. */
export async function previewMeasuring(
  boardId: string,
  referenceId: string | null,
  paintingId: string,
): Promise<PreviewMeasuring> {
  const [reference, painting] = await Promise.all([
    referenceId ? smallCopy(boardId, referenceId) : null,
    smallCopy(boardId, paintingId),
  ]);
  const measure: PreviewMeasuring = (source) => {
    try {
      const setup = previewSetup(source);
      return setup && measurePrepared(reference, painting, setup);
    } catch (thrown) {
      if (isProblem(thrown)) return null;
      throw thrown;
    }
  };
  warmUp(measure, referenceId !== null);
  return measure;
}

/** Measures once for nothing: the first run of fresh code takes ten times as long as those in a drag. */
function warmUp(measure: PreviewMeasuring, hasReference: boolean): void {
  const plane: PlaneView = { id: 'x', name: 'x', kind: 'land', tilt: null, number: 1, unreliable: null };
  const everywhere = new Map([[plane.id, WHOLE_PICTURE]]);
  measure({
    planes: [plane],
    onReference: hasReference ? everywhere : null,
    onPainting: everywhere,
    photo: {},
    moving: { kind: 'painting', planeId: plane.id, outline: WHOLE_PICTURE },
  });
}
