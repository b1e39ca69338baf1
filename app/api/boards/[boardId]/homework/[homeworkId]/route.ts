import { settingRelation } from '#server/access/homework.ts';
import { HomeworkChange } from '#server/core/contract/homework-requests.ts';
import { say } from '#server/core/say/say.ts';
import { homeworkFor, refuseClosed, refuseFarDay } from '#server/http/homework.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { closeHomework, type Homework, moveHomework, withdrawHomework } from '#server/store/homework.ts';

type Params = { boardId: string; homeworkId: string };

/** Sets another day, closes it or opens it again (`HomeworkChange`). */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { boardId, homeworkId } = await params;
  const homework = await changeable(request, boardId, homeworkId);
  const change = await readJson(request, HomeworkChange);
  if ('dueOn' in change) {
    refuseFarDay(change.dueOn);
    refuseClosed(await moveHomework(homework.id, change.dueOn));
  } else {
    refuseClosed(await closeHomework(homework.id, change.closed ? new Date() : null));
  }
  services().boardChanged(boardId);
});

/** Takes homework back; what was posted for it stays. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, homeworkId } = await params;
  const homework = await changeable(request, boardId, homeworkId);
  refuseClosed(await withdrawHomework(homework.id));
  services().boardChanged(boardId);
});

/** @throws Problem 'homework-not-found', 'not-allowed'. */
async function changeable(request: Request, boardId: string, homeworkId: string): Promise<Homework> {
  const by = await visitorOnBoard(request, boardId);
  const { homework } = await homeworkFor(by, boardId, homeworkId);
  refuseUnlessMay(
    by.role,
    'homework.change',
    say`Only teachers and the host change homework; painters what they set for themselves.`,
    settingRelation(by.visitor.personId, homework),
  );
  return homework;
}
