import { AskChange } from '#server/core/contract/own-time-requests.ts';
import { dayAfter, dayOf } from '#server/core/own-time/days.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { askFor, refuseSettled } from '#server/http/asks.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay } from '#server/http/visitor.ts';
import { answerAsk, promiseDay, withdrawAsk } from '#server/store/asks.ts';

type Params = { boardId: string; askId: string };

const MOST_DAYS = 366;

/** Promises a day for the look, takes the promise back, or says that the look was given. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { boardId, askId } = await params;
  const { visitor, role, ask, relation } = await askFor(request, boardId, askId);
  const change = await readJson(request, AskChange);
  const doing = say`Only those who teach on the board or run it may do this.`;
  if ('answered' in change) {
    refuseUnlessMay(role, 'ask.answer', doing, relation);
    refuseSettled(await answerAsk(ask.id, visitor.personId));
  } else {
    refuseUnlessMay(role, 'ask.promise', doing, relation);
    if (change.promisedFor !== null) refusePast(change.promisedFor, dayOf(new Date()));
    refuseSettled(await promiseDay(ask.id, visitor.personId, change.promisedFor));
  }
  services().boardChanged(boardId);
});

/** Withdraws an asking of one's own. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, askId } = await params;
  const { role, ask, relation } = await askFor(request, boardId, askId);
  refuseUnlessMay(role, 'ask.make', say`Only the painter who asked may withdraw it.`, relation);
  refuseSettled(await withdrawAsk(ask.id));
  services().boardChanged(boardId);
});

/** The server's day may be ahead of the teacher's by one, so yesterday passes. */
function refusePast(day: string, today: string): void {
  if (day >= dayAfter(today, -1) && day <= dayAfter(today, MOST_DAYS)) return;
  throw new Problem(
    'bad-request',
    say`A look is promised for a day between today and a year from now, and ${day} is not. Choose another day.`,
  );
}
