/** What becomes of plans that cannot be made: a busy machine is tried again, what stays as it is is not. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Problem } from '#server/core/problem.ts';
import type { OneWorker } from '#server/pipeline/one-worker.ts';
import { readPlanInputs } from '#server/pipeline/plan-inputs.ts';
import { createPlanner } from '#server/pipeline/planner.ts';
import { findPlan } from '#server/store/measures.ts';

vi.mock('#server/pipeline/plan-inputs.ts', () => ({ readPlanInputs: vi.fn() }));
vi.mock('#server/store/measures.ts', () => ({ findPlan: vi.fn(), savePlan: vi.fn() }));

type Failing = OneWorker & { run: ReturnType<typeof vi.fn> };

/** A worker that throws this at every job. */
function throwing(thrown: Error): Failing {
  return {
    run: vi.fn(async () => {
      throw thrown;
    }),
    stop: async () => undefined,
  };
}

const refusing = (code: 'picture-too-slow' | 'outline-invalid'): Failing =>
  throwing(new Problem(code, 'The outline of the ridge crosses itself.'));

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance'] });
  vi.mocked(readPlanInputs).mockResolvedValue({ hash: 'the same', job: {} as never });
  vi.mocked(findPlan).mockResolvedValue(null);
});
afterEach(() => void vi.useRealTimers());

describe('a plan that could not be made', () => {
  it('in time is said in its own words, and tried again after a minute', async () => {
    const worker = refusing('picture-too-slow');
    const planner = createPlanner(worker);
    const asked = async () => (await planner.planOf('board', 'picture')) as { pending: string };
    await asked();
    await vi.waitFor(async () =>
      expect((await asked()).pending).toMatch(/^Planning from this photograph took longer/),
    );
    expect(worker.run).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(61_000);
    expect((await asked()).pending).toMatch(/^Looking for frames/);
    expect(worker.run).toHaveBeenCalledTimes(2);
  });

  it('through a fault of the server is said, written down once, and tried again after a minute', async () => {
    const fault = new Error('The worker thread ended with status 1.');
    const worker = throwing(fault);
    const written = vi.fn();
    const planner = createPlanner(worker, written);
    const asked = async () => (await planner.planOf('board', 'picture')) as { pending: string };
    await asked();
    await vi.waitFor(async () => expect((await asked()).pending).toMatch(/fault of the server/));
    for (let round = 0; round < 5; round++) await asked();
    expect(worker.run).toHaveBeenCalledTimes(1);
    expect(written.mock.calls).toEqual([[fault, 'board', 'picture']]);
    vi.advanceTimersByTime(61_000);
    expect((await asked()).pending).toMatch(/^Looking for frames/);
    expect(worker.run).toHaveBeenCalledTimes(2);
  });

  it('for what it was made from is refused, and not tried again until that changes', async () => {
    const worker = refusing('outline-invalid');
    const planner = createPlanner(worker);
    const asked = async () => (await planner.planOf('board', 'picture')) as { pending: string };
    await asked();
    const refusal = { code: 'outline-invalid', message: expect.stringMatching(/crosses itself/) };
    await vi.waitFor(() => expect(asked()).rejects.toMatchObject(refusal));
    vi.advanceTimersByTime(600_000);
    await expect(asked()).rejects.toMatchObject(refusal);
    expect(worker.run).toHaveBeenCalledTimes(1);
    vi.mocked(readPlanInputs).mockResolvedValue({ hash: 'another', job: {} as never });
    expect((await asked()).pending).toMatch(/^Looking for frames/);
    expect(worker.run).toHaveBeenCalledTimes(2);
  });
});
