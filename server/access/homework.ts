/**
 * Homework as one person may see it, and whose it is to them.
 *
 * In the flow: handlers, home page -> [homework] -> store. IO: the database.
 */
import type { HomeView, HomeworkAtHome, HomeworkView } from '../core/contract/homework.ts';
import type { BoardListItem, BoardView } from '../core/contract/responses.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { type Homework, homeworkOn, openHomeworkOf } from '../store/homework.ts';
import { namesOf } from '../store/people.ts';
import { consentRelation } from './consent.ts';
import { type IsVeiled, SeenBoards } from './seen-boards.ts';
import type { Visitor } from './session.ts';

/** Everything on a board that is this person's to see, by day. @param board As they see it. */
export async function homeworkSeen(board: BoardView): Promise<HomeworkView[]> {
  const all = await homeworkOn(board.id);
  const names = await namesOf(all.flatMap(({ painterId, setById }) => [painterId, setById]));
  const seen: HomeworkView[] = [];
  for (const homework of all) {
    const relation = await homeworkRelation(board.id, board.me.id, homework);
    if (!may(board.role, 'homework.see', relation)) continue;
    const view = viewOf(homework, board, names);
    if (view) seen.push(view);
  }
  return seen;
}

/** Whose painting it is for, as seen by who acts. */
export async function homeworkRelation(
  boardId: string,
  personId: string,
  { painterId }: Pick<Homework, 'painterId'>,
): Promise<Relation> {
  if (painterId === personId) return 'own';
  return (await consentRelation(boardId, personId, painterId)) === 'ward' ? 'ward' : 'other';
}

/** To change it: one's own is what one set oneself, for oneself. */
export function settingRelation(
  personId: string,
  { painterId, setById }: Pick<Homework, 'painterId' | 'setById'>,
): Relation {
  return painterId === personId && setById === personId ? 'own' : 'other';
}

/** Null when its painting is not for them. */
function viewOf(
  homework: Homework,
  board: BoardView,
  names: ReadonlyMap<string, string>,
): HomeworkView | null {
  const newest = statesOf(board.pictures, homework.pictureId).at(-1);
  if (!newest) return null;
  const here = [...board.pictures.map(({ painter }) => painter), ...board.members, board.owner, board.me];
  const person = (id: string) => ({
    id,
    name: here.find((each) => each.id === id)?.name ?? names.get(id) ?? '',
  });
  const { id, cardKey, words, check, dueOn, answerId, answeredAt } = homework;
  const answered = board.pictures.some((picture) => picture.id === answerId);
  return {
    ...{ id, pictureId: newest.id, cardKey, words, check, dueOn },
    painter: person(homework.painterId),
    setBy: person(homework.setById),
    setAt: homework.setAt.toISOString(),
    answerAs: homework.answerAs === 'exercise' ? 'exercise' : 'state',
    answer:
      answered && answerId !== null && answeredAt !== null
        ? { pictureId: answerId, at: answeredAt.toISOString() }
        : null,
    closedAt: homework.closedAt?.toISOString() ?? null,
  };
}

/** What there is to try, and what came in, over all boards: for the page of boards. @param boards All of the person's. */
export async function homeworkAtHome(
  visitor: Visitor,
  boards: readonly BoardListItem[],
  isVeiled: IsVeiled,
): Promise<HomeView> {
  const all = await openHomeworkOf(visitor.personId);
  const names = await namesOf(all.flatMap(({ painterId, setById }) => [painterId, setById]));
  const seen = new SeenBoards(visitor, boards, isVeiled);
  const home: HomeView = { toTry: [], isIn: [] };
  for (const homework of all) {
    const on = await seen.board(homework.boardId);
    const view = on && !on.veiled ? viewOf(homework, on.board, names) : null;
    if (!on || !view) continue;
    const each: HomeworkAtHome = { homework: view, board: { id: on.board.id, title: on.board.title } };
    if (view.painter.id === visitor.personId) home.toTry.push(each);
    else if (view.answer) home.isIn.push(each);
  }
  return home;
}
