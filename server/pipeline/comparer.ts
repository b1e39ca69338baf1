/**
 * States of a painting laid on one another when somebody asks, and kept by everything that went into it.
 *
 * In the flow: services -> [comparer] -> worker -> store. A thread of its own, so that no ladder waits. The figures are
 * stored; the pictures to look at are made anew after a restart. Main process only. IO: the database, a worker thread.
 */
import type { Pending } from '../core/contract/responses.ts';
import type { ComparedFacts, StatePair } from '../core/contract/states.ts';
import { readPhoto } from '../core/live/painting.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { AS_SQUARED } from '../core/states/align/first-place.ts';
import { COMPARE_SECONDS } from '../imaging/limits.ts';
import { findCompared, saveCompared } from '../store/measures.ts';
import { findPicture } from '../store/pictures.ts';
import { essence, pictureNotFound, readDocument, sourceOf } from './inputs.ts';
import { hashOfInputs } from './inputs-hash.ts';
import type { Compared, CompareJob } from './jobs.ts';
import { createOneWorker, type OneWorker } from './one-worker.ts';
import { FORMULA_VERSION } from './version.ts';

export type StatePicture = 'before' | 'after' | 'change';

export interface Comparer {
  /** How the later state lies on the earlier one, or what is being done about it. @throws Problem `picture-not-found`. */
  compared(pair: StatePair): Promise<ComparedFacts | Pending>;
  /**
   * One of the pictures to look at, on the earlier state's squared frame.
   * @throws Problem `picture-not-found`, `states-apart` where the two are not compared; what measuring throws.
   */
  picture(pair: StatePair, which: StatePicture): Promise<Uint8Array>;
  stop(): Promise<void>;
}

const UNDER_WAY = say`Laying the two photos on one another.`;
/** Pairs whose pictures are kept in memory, about a megabyte each. */
const KEPT = 24;

interface Inputs {
  readonly hash: string;
  readonly job: CompareJob;
}

async function readPairInputs({ boardId, earlierId, laterId }: StatePair): Promise<Inputs> {
  const read = async (id: string) => {
    const picture = await findPicture(boardId, id);
    if (picture?.kind !== 'painting') throw pictureNotFound();
    const photo = readPhoto(await readDocument(boardId, `painting/${id}`));
    return { source: { picture: await sourceOf(picture), photo }, parts: [essence(picture), photo] };
  };
  const [earlier, later] = await Promise.all([read(earlierId), read(laterId)]);
  const parts = ['states', FORMULA_VERSION, earlier.parts, later.parts];
  return {
    hash: hashOfInputs(parts),
    job: { kind: 'compare', earlier: earlier.source, later: later.source },
  };
}

function factsOf({ alignment, pictures }: Compared): ComparedFacts {
  if (pictures === null) return { ...alignment, shown: null };
  const { widthPx, heightPx, doubtL, lighter, darker } = pictures;
  return { ...alignment, shown: { widthPx, heightPx, doubtL, lighter, darker } };
}

const notCompared = (trouble: string): ComparedFacts => ({
  ...{ toLater: AS_SQUARED, agreement: 0, movedBy: 0, trouble, shown: null },
});

/** A server that was busy is tried again after a minute; corners that cannot be used stay so until they change. */
function refusal({ code, message }: Problem): { sentence: string; untilMs: number } {
  if (code !== 'picture-too-slow') return { sentence: message, untilMs: Number.POSITIVE_INFINITY };
  const sentence = say`Laying the two photos on one another took longer than ${COMPARE_SECONDS} seconds, so it was stopped. It is tried again in a minute.`;
  return { sentence, untilMs: performance.now() + 60_000 };
}

/** @param onError Where a bug met in the background is written down. */
export function createComparer(
  onError: (thrown: unknown, boardId: string, pictureId: string) => void,
  worker: OneWorker = createOneWorker(),
): Comparer {
  const running = new Map<string, Promise<Compared>>();
  const kept = new Map<string, NonNullable<Compared['pictures']>>();
  /** Why inputs could not be compared, by their hash, and until when nobody tries again. */
  const refused = new Map<string, { sentence: string; untilMs: number }>();

  function keep(hash: string, pictures: NonNullable<Compared['pictures']>): void {
    kept.set(hash, pictures);
    const [oldest] = kept.keys();
    if (kept.size > KEPT && oldest !== undefined) kept.delete(oldest);
  }

  async function workOut({ hash, job }: Inputs, laterId: string): Promise<Compared> {
    const compared = await worker.run(job, COMPARE_SECONDS);
    if (compared.pictures) keep(hash, compared.pictures);
    await saveCompared(laterId, hash, FORMULA_VERSION, factsOf(compared));
    return compared;
  }

  function start(inputs: Inputs, laterId: string): Promise<Compared> {
    const known = running.get(inputs.hash);
    if (known) return known;
    const work = workOut(inputs, laterId).finally(() => running.delete(inputs.hash));
    running.set(inputs.hash, work);
    return work;
  }

  function startAside(inputs: Inputs, { boardId, laterId }: StatePair): void {
    start(inputs, laterId).catch((thrown: unknown) => {
      if (!isProblem(thrown)) onError(thrown, boardId, laterId);
      else if (thrown.code !== 'stopping') refused.set(inputs.hash, refusal(thrown));
    });
  }

  return {
    async compared(pair) {
      const inputs = await readPairInputs(pair);
      const found = await findCompared(pair.laterId, inputs.hash);
      if (found) return found;
      const known = refused.get(inputs.hash);
      if (known && performance.now() < known.untilMs) return notCompared(known.sentence);
      startAside(inputs, pair);
      return { pending: UNDER_WAY };
    },
    async picture(pair, which) {
      const inputs = await readPairInputs(pair);
      const pictures = kept.get(inputs.hash) ?? (await start(inputs, pair.laterId)).pictures;
      if (pictures) return pictures[which];
      throw new Problem(
        'states-apart',
        say`These two photos do not belong to one painting, so there is nothing to lay on one another.`,
      );
    },
    stop: () => worker.stop(),
  };
}
