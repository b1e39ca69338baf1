/**
 * Hears what changed, has it measured in a worker, and says done or what it waits for.
 *
 * In the flow: rooms and uploads → [runner] → worker → store → rooms (through `onResult`). Main process only.
 *
 * A picture is dirty from the moment one of its inputs changes until a result for exactly those inputs is there.
 * Dirty pictures are measured one after the other; inputs are read when a picture's turn comes, so changes that
 * arrive while it waits are all in, and no superseded job is ever started.
 */
import { setImmediate } from 'node:timers/promises';
import type { IncomingPicture } from '../core/contract/incoming.ts';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { Pending, UploadedPicture } from '../core/contract/responses.ts';
import type { LiveResult } from '../core/live/layout.ts';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import { isProblem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { MEASURE_SECONDS, TAKE_IN_SECONDS } from '../imaging/limits.ts';
import { sweepBlobs } from '../store/blob-sweep.ts';
import { clearHalfWritten } from '../store/blobs.ts';
import { findMeasure, saveMeasure } from '../store/measures.ts';
import { listPictures } from '../store/pictures.ts';
import { addUpload } from './add-upload.ts';
import { type Inputs, readInputs } from './inputs.ts';
import { createOneWorker, type OneWorker } from './one-worker.ts';
import { createPlanner, type Planner } from './planner.ts';
import { FORMULA_VERSION } from './version.ts';

export interface RunnerSettings {
  /** Writes `result` into the painting's room. `number` rises with every call that brings a new result. */
  onResult(boardId: string, pictureId: string, result: LiveResult): void | Promise<void>;
  /** Where a bug met in the background is written down. */
  onError?(thrown: unknown, boardId: string, pictureId: string): void;
  /**
   * How long after a change nothing more may have changed before it is measured, milliseconds. The first change
   * after a rest is measured almost at once: an outline that was let go of comes alone.
   */
  quietMs?: number;
}

export interface Runner {
  /** See `Services.takeInPicture`; the caller announces the new picture. */
  takeInPicture(incoming: IncomingPicture): Promise<UploadedPicture>;
  /** The measures for the inputs as they are now, or what is being done about them. */
  measuresOf(boardId: string, pictureId: string): Promise<MeasureDocument | Pending>;
  /** See `Planner.planOf`. */
  planOf(boardId: string, pictureId: string): Promise<PicturePlan | Pending>;
  /** A live room stored an update. */
  roomChanged(boardId: string, room: string): void;
  /** What is noted of a painting changed. */
  pictureNoted(boardId: string, pictureId: string): void;
  /** The row of a picture went: what was measured against it is measured again. */
  pictureRemoved(boardId: string, pictureId: string): Promise<void>;
  /** The row of a board went: its files go. */
  boardRemoved(boardId: string): Promise<void>;
  healthy(): boolean;
  stop(): Promise<void>;
}

/** What is known of one picture between two changes. */
interface Standing {
  readonly boardId: string;
  readonly pictureId: string;
  /** Runs out when nothing changed for a while. */
  timer: NodeJS.Timeout | null;
  /** When it last changed, and when somebody last asked for its measures, by `performance.now()`. */
  changedAt: number;
  askedAt: number;
  /** What was last told to the room: the hash of a result's inputs, or the sentence it waits with. */
  told: string | null;
  /** Sentences about the newest result: planes left out of it. */
  remarks: { hash: string; sentence: string | null } | null;
  /** Inputs that could not be measured, and why. */
  refused: { hash: string; sentence: string } | null;
}

/** The first change after a rest waits this long, for others of the same moment, milliseconds. */
const AT_ONCE_MS = 15;
/** After this long without a change a picture is at rest, milliseconds. */
const REST_MS = 1000;

/** After this long a measurement is announced as under way, milliseconds. */
const PATIENCE_MS = 400;

/** Starts nothing but the sweep of what a crash left; workers start with their first job. */
export async function createRunner(settings: RunnerSettings): Promise<Runner> {
  await clearHalfWritten();
  await sweepBlobs();
  return new MeasuringRunner(settings);
}

class MeasuringRunner implements Runner {
  private readonly settings: RunnerSettings;
  /** Two threads, so that a large upload never delays a ladder. */
  private readonly reading: OneWorker = createOneWorker();
  private readonly measuring: OneWorker = createOneWorker();
  /** A third, so that a ladder never waits for a plan. */
  private readonly planning: OneWorker = createOneWorker();
  private readonly planner: Planner;
  private readonly standings = new Map<string, Standing>();
  private readonly dirty = new Set<Standing>();
  private pumping: Promise<void> | null = null;
  private lastNumber = 0;
  private stopped = false;

  constructor(settings: RunnerSettings) {
    this.settings = settings;
    this.planner = createPlanner(this.planning, settings.onError);
  }

  async takeInPicture(incoming: IncomingPicture): Promise<UploadedPicture> {
    const added = await addUpload(incoming, (path, name) =>
      this.reading.run({ kind: 'take-in', path, name }, TAKE_IN_SECONDS),
    );
    if (incoming.fields.kind === 'reference') this.boardChanged(incoming.boardId);
    else this.changed(incoming.boardId, added.id);
    return added;
  }

  async measuresOf(boardId: string, pictureId: string): Promise<MeasureDocument | Pending> {
    const inputs = await readInputs(boardId, pictureId);
    if (inputs.kind === 'waiting') return { pending: inputs.sentence };
    const standing = this.standingOf(boardId, pictureId);
    standing.askedAt = performance.now();
    const found = await findMeasure(pictureId, inputs.hash);
    if (found) return found;
    if (standing.refused?.hash === inputs.hash) return { pending: standing.refused.sentence };
    this.measureSoon(standing);
    return { pending: underWay(inputs) };
  }

  planOf(boardId: string, pictureId: string): Promise<PicturePlan | Pending> {
    return this.planner.planOf(boardId, pictureId);
  }

  roomChanged(boardId: string, room: string): void {
    if (room === 'setup') this.boardChanged(boardId);
    else if (room.startsWith('painting/')) this.changed(boardId, room.slice('painting/'.length));
  }

  pictureNoted(boardId: string, pictureId: string): void {
    this.changed(boardId, pictureId);
  }

  async pictureRemoved(boardId: string, pictureId: string): Promise<void> {
    this.forget(this.standingOf(boardId, pictureId));
    this.boardChanged(boardId);
  }

  async boardRemoved(boardId: string): Promise<void> {
    for (const standing of this.standings.values()) if (standing.boardId === boardId) this.forget(standing);
    await sweepBlobs();
  }

  healthy(): boolean {
    return !this.stopped;
  }

  async stop(): Promise<void> {
    this.stopped = true;
    for (const standing of this.standings.values()) this.forget(standing);
    await Promise.all([this.reading.stop(), this.measuring.stop(), this.planning.stop()]);
    await this.pumping;
  }

  /** Every painting of the board may have changed. */
  private boardChanged(boardId: string): void {
    if (this.stopped) return;
    listPictures(boardId, 'painting').then(
      (paintings) => {
        for (const { id } of paintings) this.changed(boardId, id);
      },
      (thrown: unknown) => this.settings.onError?.(thrown, boardId, ''),
    );
  }

  private changed(boardId: string, pictureId: string): void {
    if (this.stopped) return;
    const standing = this.standingOf(boardId, pictureId);
    if (standing.timer) clearTimeout(standing.timer);
    const now = performance.now();
    const atRest = standing.timer === null && now - standing.changedAt > REST_MS;
    standing.changedAt = now;
    const quietMs = this.settings.quietMs ?? 150;
    standing.timer = setTimeout(
      () => this.measureSoon(standing),
      atRest ? Math.min(AT_ONCE_MS, quietMs) : quietMs,
    );
  }

  private measureSoon(standing: Standing): void {
    if (this.stopped) return;
    if (standing.timer) clearTimeout(standing.timer);
    standing.timer = null;
    this.dirty.add(standing);
    this.pumping ??= this.pump().finally(() => {
      this.pumping = null;
      // One may have come in after the last was done and before this line.
      const [left] = this.dirty;
      if (left) this.measureSoon(left);
    });
  }

  private async pump(): Promise<void> {
    // Every painting of a board becomes dirty in one moment, each by its own timer.
    await setImmediate();
    for (let standing = this.next(); standing; standing = this.next()) {
      this.dirty.delete(standing);
      try {
        await this.bringUpToDate(standing);
      } catch (thrown) {
        this.report(standing, thrown);
      }
    }
  }

  /** Of the dirty ones that whose measures were asked for last: it is on somebody's screen. */
  private next(): Standing | undefined {
    let next: Standing | undefined;
    for (const standing of this.dirty) if (!next || standing.askedAt > next.askedAt) next = standing;
    return next;
  }

  private async bringUpToDate(standing: Standing): Promise<void> {
    const { boardId, pictureId } = standing;
    const inputs = await readInputs(boardId, pictureId);
    if (inputs.kind === 'waiting') return this.tell(standing, inputs, inputs.sentence, inputs.sentence);
    const { hash, job } = inputs;
    if (!(await findMeasure(pictureId, hash))) {
      const patience = setTimeout(
        () => void this.tell(standing, inputs, 'under way', underWay(inputs)),
        PATIENCE_MS,
      );
      try {
        const { document, leftOut } = await this.measuring.run(job, MEASURE_SECONDS);
        standing.remarks = { hash, sentence: leftOut.join(' ') || null };
        await saveMeasure(pictureId, hash, FORMULA_VERSION, document);
      } catch (thrown) {
        if (!isProblem(thrown) || thrown.code === 'stopping') throw thrown;
        standing.refused = { hash, sentence: thrown.message };
        return this.tell(standing, inputs, thrown.message, thrown.message);
      } finally {
        clearTimeout(patience);
      }
    }
    const remark = standing.remarks?.hash === hash ? standing.remarks.sentence : null;
    await this.tell(standing, inputs, hash, remark);
  }

  /** @param told What this is about; the same thing is not said twice. References have no room to be told in. */
  private async tell(
    standing: Standing,
    inputs: Inputs,
    told: string,
    pending: string | null,
  ): Promise<void> {
    if (this.stopped || inputs.ofReference || standing.told === told) return;
    standing.told = told;
    // Milliseconds since 1970 go on rising over restarts, with nothing to be remembered.
    this.lastNumber = Math.max(this.lastNumber + 1, Date.now());
    await this.settings.onResult(standing.boardId, standing.pictureId, { number: this.lastNumber, pending });
  }

  private report(standing: Standing, thrown: unknown): void {
    // A picture that went while it waited, or a server that stops, needs no line in the log.
    if (isProblem(thrown) && (thrown.code === 'picture-not-found' || thrown.code === 'stopping')) return;
    this.settings.onError?.(thrown, standing.boardId, standing.pictureId);
  }

  private standingOf(boardId: string, pictureId: string): Standing {
    const known = this.standings.get(pictureId);
    if (known) return known;
    const fresh: Standing = {
      ...{ boardId, pictureId, timer: null, changedAt: Number.NEGATIVE_INFINITY, askedAt: 0 },
      ...{ told: null, remarks: null, refused: null },
    };
    this.standings.set(pictureId, fresh);
    return fresh;
  }

  private forget(standing: Standing): void {
    if (standing.timer) clearTimeout(standing.timer);
    this.dirty.delete(standing);
    this.standings.delete(standing.pictureId);
  }
}

function underWay(inputs: Extract<Inputs, { kind: 'ready' }>): string {
  const planes = inputs.job.setup.planes.length;
  if (inputs.job.reference)
    return planes === 1
      ? say`Measuring one plane in two pictures.`
      : say`Measuring ${planes} planes in two pictures.`;
  return planes === 1
    ? say`Measuring one plane in one picture.`
    : say`Measuring ${planes} planes in one picture.`;
}
