/**
 * The whole measurement of a pair, in one call: what the headless command, the server and the preview use.
 *
 * In the flow: two plates + setup -> [measure-pair] -> document. Pure. A caller that measures again after an
 * outline moved keeps the two `Prepared` and calls `measurePrepared`.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { Setup } from '../contract/setup.ts';
import { comparePictures } from '../gaps/compare.ts';
import { measurePlanes } from './measure-planes.ts';
import type { PairInput } from './pair-input.ts';
import { type Prepared, prepareMeasurable } from './prepare.ts';

/**
 * Measures again from plates prepared before.
 * @param reference null when painted from life. @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePrepared(
  reference: Prepared | null,
  painting: Prepared,
  setup: Setup,
): MeasureDocument {
  const onReference = setup.planes.map(({ name, kind, reference: outline }) => ({ name, kind, outline }));
  const onPainting = setup.planes.map((plane) => ({
    name: plane.name,
    kind: plane.kind,
    outline: plane.painting ?? plane.reference,
  }));
  return comparePictures(
    reference && measurePlanes(reference, onReference, setup.air?.reference ?? null),
    measurePlanes(painting, onPainting, setup.air?.painting ?? null),
    setup,
  );
}

/**
 * Measures a reference and a painting, plane by plane.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePair({ reference, painting, setup }: PairInput): MeasureDocument {
  return measurePrepared(reference && prepareMeasurable(reference), prepareMeasurable(painting), setup);
}
