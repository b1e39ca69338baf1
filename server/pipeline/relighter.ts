/**
 * Planned pictures at full plate size, made when somebody asks and kept by everything that went into them.
 *
 * In the flow: services -> [relighter] -> worker. A thread of its own, so that no ladder waits for it; the newest pictures
 * are kept in memory and made anew after a restart. Main process only. IO: the database, a worker thread.
 */
import { createOneWorker, type OneWorker } from './one-worker.ts';
import { type RelightInputs, readRelightInputs } from './relight-inputs.ts';

export interface PlannedJpeg {
  /** Of everything that went into it. */
  readonly hash: string;
  readonly bytes: Uint8Array;
}

export interface Relighter {
  /**
   * @param lit in the planned light, or rearranged alone.
   * @throws Problem of `readRelightInputs` and of planning; `picture-too-slow`, `stopping`.
   */
  pictureOf(boardId: string, pictureId: string, lit: boolean): Promise<PlannedJpeg>;
  stop(): Promise<void>;
}

/** Seconds that one picture may take: twenty times what a plate with twelve planes took on two slow cores. */
const RELIGHT_SECONDS = 120;
/** Pictures kept in memory, a megabyte or two each. */
const KEPT = 12;

export function createRelighter(worker: OneWorker = createOneWorker()): Relighter {
  const kept = new Map<string, Promise<Uint8Array>>();

  /** Two who ask for one picture share its making; what failed is tried again. */
  function make({ hash, job }: RelightInputs): Promise<Uint8Array> {
    const making = kept.get(hash) ?? worker.run(job, RELIGHT_SECONDS);
    kept.delete(hash);
    kept.set(hash, making);
    making.catch(() => kept.delete(hash));
    for (const old of [...kept.keys()].slice(0, -KEPT)) kept.delete(old);
    return making;
  }

  return {
    async pictureOf(boardId, pictureId, lit) {
      const inputs = await readRelightInputs(boardId, pictureId, lit);
      return { hash: inputs.hash, bytes: await make(inputs) };
    },
    stop: () => worker.stop(),
  };
}
