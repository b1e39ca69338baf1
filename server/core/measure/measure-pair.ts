/**
 * The whole measurement of a pair, in one call: what the headless command, the server and the preview use.
 *
 * In the flow: two plates + setup -> [measure-pair] -> document. Pure. A caller that measures again after an
 * outline moved keeps the two `Prepared` and calls `measurePrepared`.
 */
import { hasOneCast } from '../capture/cast.ts';
import { gradeCapture } from '../capture/grade.ts';
import { overlayOf } from '../capture/overlay.ts';
import type { MeasureDocument } from '../contract/measures.ts';
import type { Setup } from '../contract/setup.ts';
import { addDoubt } from '../doubt/document-doubt.ts';
import { comparePictures } from '../gaps/compare.ts';
import { withReadings } from '../readings/with-readings.ts';
import { measurePlanes, type PictureMeasures } from './measure-planes.ts';
import type { MeasurePlanes } from './measured-before.ts';
import type { PairInput } from './pair-input.ts';
import { type Prepared, prepareMeasurable } from './prepare.ts';

export interface PairOptions {
  /** False leaves out doubt and readings, where a moving outline has no time for them. Default true. */
  readonly doubt?: boolean;
  /** True where the "painting" is a reference looked at alone: taken as exact, without a grade. Default false. */
  readonly exact?: boolean;
  /** Measures one picture; one that remembers (`measuredBefore`) gives the same figures sooner. */
  readonly measure?: MeasurePlanes;
}

function captureOf(document: MeasureDocument, prepared: Prepared, painting: PictureMeasures) {
  const { facts } = prepared;
  const seen = { cast: hasOneCast(document.planes), toneMapped: false };
  const { grade, reasons } = gradeCapture(facts, painting.capture, seen);
  return {
    grade,
    reasons: [...reasons],
    notes: [...(facts?.notes ?? [])],
    glareShare: facts?.glareShare ?? 0,
    unevenness: facts?.unevenness ?? null,
    overlay: overlayOf(prepared),
  };
}

/**
 * Measures again from plates prepared before.
 * @param reference null when painted from life. @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePrepared(
  reference: Prepared | null,
  painting: Prepared,
  setup: Setup,
  { doubt = true, exact = false, measure = measurePlanes }: PairOptions = {},
): MeasureDocument {
  const onReference = setup.planes.map(({ name, kind, reference: outline }) => ({ name, kind, outline }));
  const onPainting = setup.planes.map((plane) => ({
    name: plane.name,
    kind: plane.kind,
    outline: plane.painting ?? plane.reference,
  }));
  const options = { sampling: doubt };
  const measured = reference && measure(reference, onReference, setup.air?.reference ?? null, options);
  const painted = measure(painting, onPainting, setup.air?.painting ?? null, options);
  const compared = comparePictures(measured, painted, setup);
  const capture = exact ? compared.capture : captureOf(compared, painting, painted);
  const document = { ...compared, capture };
  if (!doubt) return document;
  const doubted = addDoubt(document, measured, painted, capture.grade);
  if (exact) return doubted;
  const sides = {
    reference: reference && measured && { prepared: reference, measures: measured },
    painting: { prepared: painting, measures: painted },
  };
  return withReadings(doubted, setup, sides);
}

/**
 * Measures a reference and a painting, plane by plane.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePair(
  { reference, painting, setup }: PairInput,
  options?: PairOptions,
): MeasureDocument {
  return measurePrepared(
    reference && prepareMeasurable(reference),
    prepareMeasurable(painting),
    setup,
    options,
  );
}
