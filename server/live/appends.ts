/**
 * One queue in front of the store for all rooms: whatever arrives while a write is under way goes into the
 * next one together.
 *
 * In the flow: guard → [appends] → store/live-updates. IO: the database.
 */
import { appendUpdates, type StoredUpdate } from '../store/live-updates.ts';

/** Most rows and bytes of one statement. */
const BATCH_ROWS = 500;
const BATCH_BYTES = 4_000_000;
const STUCK_MS = 5000;

interface Waiting {
  update: StoredUpdate;
  stored: () => void;
  failed: (thrown: unknown) => void;
}

export class Appends {
  #waiting: Waiting[] = [];
  #writing: Promise<void> | null = null;
  #sinceMs: number | null = null;
  #failing = false;

  /**
   * Stores an update; the calls come back in the order in which they were made.
   *
   * When a write fails, everything queued behind it fails too: it may build on what was lost.
   */
  append(update: StoredUpdate, stored: () => void, failed: (thrown: unknown) => void): void {
    this.#waiting.push({ update, stored, failed });
    this.#writing ??= this.#write();
  }

  /** Resolves when nothing waits any more. Never rejects. */
  async settled(): Promise<void> {
    while (this.#writing) await this.#writing;
  }

  /** False while the last write failed, or one has been under way for five seconds. */
  healthy(nowMs: number): boolean {
    return !this.#failing && (this.#sinceMs === null || nowMs - this.#sinceMs < STUCK_MS);
  }

  async #write(): Promise<void> {
    // Whatever else arrives in this turn of the event loop joins the first batch.
    await new Promise<void>((next) => setImmediate(next));
    while (this.#waiting.length > 0) {
      const batch = this.#nextBatch();
      this.#sinceMs = performance.now();
      try {
        await appendUpdates(batch.map(({ update }) => update));
        this.#failing = false;
      } catch (thrown) {
        this.#failing = true;
        for (const each of [...batch, ...this.#waiting.splice(0)]) each.failed(thrown);
        continue;
      }
      for (const each of batch) each.stored();
    }
    this.#sinceMs = null;
    this.#writing = null;
  }

  #nextBatch(): Waiting[] {
    let sizeBytes = 0;
    let count = 0;
    for (const { update } of this.#waiting.slice(0, BATCH_ROWS)) {
      sizeBytes += update.bytes.length;
      if (count > 0 && sizeBytes > BATCH_BYTES) break;
      count++;
    }
    return this.#waiting.splice(0, count);
  }
}
