import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { stateOf } from '#server/core/outward/room-state.ts';
import { environment } from '#server/env.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { readDocument } from '#server/store/live-documents.ts';
import { roomsOf } from '#server/store/live-updates.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { type Archived, fullBoard } from './an-archived-board.ts';

export interface ArchiveStage {
  store: AStore;
  runner: Runner;
  folder: string;
  made: Archived;
  /** Stops the server and takes its data folder away. */
  close(): Promise<void>;
  /** The same process, with nothing of what was there before. */
  openEmpty(): Promise<void>;
}

/** Opens one before each test of the file that calls this, and closes it afterwards. */
export function archiveStage(): ArchiveStage {
  const openEmpty = async () => {
    stage.store = await openAStore();
    stage.runner = await createRunner({ onResult: () => undefined });
  };
  const close = async () => {
    await stage.runner.stop();
    await stage.store.close();
    await rm(environment().dataFolder, { recursive: true, force: true });
  };
  const stage = { close, openEmpty } as ArchiveStage;
  beforeAll(async () => {
    stage.folder = await mkdtemp(join(tmpdir(), 'veilstep-archive-'));
  });
  beforeEach(async () => {
    await openEmpty();
    stage.made = await fullBoard(stage.runner);
  });
  afterEach(close);
  afterAll(() => rm(stage.folder, { recursive: true, force: true }));
  return stage;
}

/** What every room of a board holds, by its name. */
export async function statesOn(boardId: string) {
  const states: Record<string, unknown> = {};
  for (const room of await roomsOf(boardId)) states[room] = stateOf(await readDocument(boardId, room), room);
  return states;
}
