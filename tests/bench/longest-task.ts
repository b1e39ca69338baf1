/** The longest task of a page's main thread while something is done, from Chromium's own trace. */
import type { Browser, Page } from '@playwright/test';
import { z } from 'zod';

const TraceEvent = z.object({
  name: z.string(),
  ph: z.string(),
  pid: z.number(),
  tid: z.number(),
  dur: z.number().optional(),
  args: z.object({ name: z.string().optional() }).catchall(z.unknown()).optional(),
});
const Trace = z.object({ traceEvents: z.array(TraceEvent) });

/** Names that Chromium's versions gave to one turn of a thread's loop. */
const TURNS = new Set(['RunTask', 'ThreadControllerImpl::RunTask', 'ThreadPool_RunTask']);

/**
 * @param hands What is done to the page meanwhile.
 * @returns Milliseconds, and how many tasks there were.
 */
export async function longestTask(
  browser: Browser,
  page: Page,
  hands: (page: Page) => Promise<void>,
): Promise<{ longestMs: number; tasks: number }> {
  await browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline', '__metadata'] });
  await hands(page);
  const { traceEvents } = Trace.parse(JSON.parse((await browser.stopTracing()).toString()));
  const mainThreads = new Set(
    traceEvents
      .filter((event) => event.name === 'thread_name' && event.args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid}/${tid}`),
  );
  let longestMs = 0;
  let tasks = 0;
  for (const { name, ph, pid, tid, dur } of traceEvents) {
    if (ph !== 'X' || !TURNS.has(name) || !mainThreads.has(`${pid}/${tid}`)) continue;
    tasks++;
    longestMs = Math.max(longestMs, (dur ?? 0) / 1000);
  }
  if (tasks === 0) throw new Error('The trace holds no task of a main thread.');
  return { longestMs, tasks };
}
