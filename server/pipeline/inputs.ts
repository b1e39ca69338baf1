/**
 * Everything one measurement depends on, read from the store: two pictures and the agreed setup.
 *
 * In the flow: store → [inputs] → runner. IO: the database.
 *
 * Which reference a painting is measured against: of the board's references in the order they were posted, the
 * first on which a plane is outlined; when none has an outline, the first. A board without references measures
 * each painting alone, and so is a reference itself (its own ladder). A painting made after a kept frame is measured
 * against that frame of its reference alone.
 */
import type * as Y from 'yjs';
import type { Setup } from '../core/contract/setup.ts';
import { documentFrom } from '../core/live/document.ts';
import type { RoomName } from '../core/live/layout.ts';
import { readOutlinesOf } from '../core/live/outlines.ts';
import { type KeptCrop, readCrop } from '../core/live/plan/crops.ts';
import { readFrameId } from '../core/live/plan/frame-of-painting.ts';
import { setupFrom } from '../core/live/setup-from.ts';
import type { Box } from '../core/plan/crops/crop-scene.ts';
import { setupInto } from '../core/plan/crops/into-frame.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { blobPath } from '../store/blobs.ts';
import { readRoom } from '../store/live-updates.ts';
import { findPicture, listPictures, type Picture } from '../store/pictures.ts';
import { findRendition } from '../store/renditions.ts';
import { hashOfInputs } from './inputs-hash.ts';
import type { MeasureJob, PictureSource } from './jobs.ts';
import { FORMULA_VERSION } from './version.ts';

/** What is to be measured, or the fact it waits for, as a sentence. */
export type Inputs = (
  | { readonly kind: 'ready'; readonly hash: string; readonly job: MeasureJob }
  | { readonly kind: 'waiting'; readonly sentence: string }
) & { readonly ofReference: boolean };

/** @throws Problem `picture-not-found` when that board has no such picture. */
export async function readInputs(boardId: string, pictureId: string): Promise<Inputs> {
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  const setupDoc = await readDocument(boardId, 'setup');
  const ownDoc = await readDocument(boardId, `painting/${pictureId}`);
  const ofReference = picture.kind === 'reference';
  const references = ofReference ? [] : await listPictures(boardId, 'reference');
  const { reference, frame } = chosenFor(references, setupDoc, ownDoc);
  try {
    const setup = setupFrom({
      setup: setupDoc,
      painting: ownDoc,
      paintingId: pictureId,
      referenceId: ofReference ? pictureId : (reference?.id ?? null),
    });
    const framed = frame ? setupInto(frame.box, setup) : setup;
    if (frame && framed.planes.length === 0) return { ...waitingInFrame(frame.name), ofReference };
    const pair = { picture, reference, frame: frame?.box ?? null };
    return { ...(await ready(pair, ofReference ? asItStands(framed) : framed)), ofReference };
  } catch (thrown) {
    if (isProblem(thrown) && thrown.code === 'planes-missing')
      return { ...waitingForPlanes(ofReference || reference !== null), ofReference };
    throw thrown;
  }
}

/** The sentence for a picture that is not on the board. */
export function pictureNotFound(): Problem {
  return new Problem(
    'picture-not-found',
    say`There is no such picture on this board; it may have been taken back.`,
  );
}

function chooseReference(references: readonly Picture[], setupDoc: Y.Doc): Picture | null {
  const outlined = references.find(({ id }) => readOutlinesOf(setupDoc, id).size > 0);
  return outlined ?? references[0] ?? null;
}

/** A reference is no photo of a painting: nothing of it is put right. */
export function asItStands({ photo: _, ...setup }: Setup): Setup {
  return setup;
}

function waitingForPlanes(hasReference: boolean) {
  const sentence = hasReference
    ? say`Waiting for planes: outline at least one on the reference.`
    : say`Waiting for planes: outline at least one on the painting.`;
  return { kind: 'waiting' as const, sentence };
}

/** The kept frame which the painting is made after, with its reference; one that went counts as none. */
function chosenFor(
  references: readonly Picture[],
  setup: Y.Doc,
  painting: Y.Doc,
): { reference: Picture | null; frame: KeptCrop | null } {
  const id = readFrameId(painting);
  const frame = id === null ? null : readCrop(setup, id);
  const reference = references.find((each) => each.id === frame?.pictureId);
  return reference ? { reference, frame } : { reference: chooseReference(references, setup), frame: null };
}

function waitingInFrame(name: string) {
  const sentence = say`No outlined plane shows in the frame ‘${name}’. Move the frame, or choose the whole photograph.`;
  return { kind: 'waiting' as const, sentence };
}

interface Pair {
  picture: Picture;
  reference: Picture | null;
  /** Of the reference. */
  frame: Box | null;
}

async function ready({ picture, reference, frame }: Pair, setup: Setup) {
  const job: MeasureJob = {
    kind: 'measure',
    reference: reference && (await sourceOf(reference)),
    painting: await sourceOf(picture),
    frame,
    ofReference: picture.kind === 'reference',
    wet: wetOf(picture),
    setup,
  };
  const noted = { wet: job.wet };
  const parts = [
    FORMULA_VERSION,
    reference && essence(reference),
    picture.kind,
    essence(picture),
    noted,
    setup,
    ...(frame ? [frame] : []),
  ];
  return {
    kind: 'ready' as const,
    hash: hashOfInputs(parts),
    job,
  };
}

/** Whether the paint was wet when it was photographed; null where its painter noted nothing. */
function wetOf({ drying }: Picture): boolean | null {
  return drying === null ? null : drying === 'wet';
}

/** What of a stored picture its pixels follow from. */
export function essence({ originalHash, orientation }: Picture): unknown {
  return { originalHash, orientation };
}

/** Where a worker finds it. @throws Problem `picture-not-found` when it went meanwhile. */
export async function sourceOf(picture: Picture): Promise<PictureSource> {
  const [plate, clipMap] = await Promise.all(
    ['plate', 'clip-map'].map((name) => findRendition(picture.boardId, picture.id, name)),
  );
  if (!plate || !clipMap) throw pictureNotFound();
  return {
    pictureId: picture.id,
    originalPath: blobPath(picture.originalHash),
    originalHash: picture.originalHash,
    mediaType: mediaTypeOf(picture.originalType),
    orientation: picture.orientation,
    longSidePx: Math.max(picture.widthPx, picture.heightPx),
    platePath: blobPath(plate.hash),
    clipMapPath: blobPath(clipMap.hash),
  };
}

function mediaTypeOf(stored: string): PictureSource['mediaType'] {
  const known = (['image/jpeg', 'image/png', 'image/webp'] as const).find((type) => type === stored);
  if (!known) throw new Error(`A stored original has the type ${stored}.`);
  return known;
}

export async function readDocument(boardId: string, room: RoomName): Promise<Y.Doc> {
  return documentFrom(room, (await readRoom(boardId, room)).updates);
}
