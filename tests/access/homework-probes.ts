/** For homework: how somebody sets, sees, changes and answers it, through the handlers. */
import {
  PATCH as change,
  DELETE as takeBack,
} from '#app/api/boards/[boardId]/homework/[homeworkId]/route.ts';
import { GET as see, POST as set } from '#app/api/boards/[boardId]/homework/route.ts';
import { POST as postPicture } from '#app/api/boards/[boardId]/pictures/route.ts';
import type { HomeworkView } from '#server/core/contract/homework.ts';
import type { Relation } from '#server/core/permissions/may.ts';
import { addHomework } from '#server/store/homework.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf, type Stage } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

const OWN_OR_NOT = ['own', 'other'] as const;

const nextWeek = () => new Date(Date.now() + 7 * 24 * 3_600_000).toISOString().slice(0, 10);

/** Homework that `whose` set for a painting of their own. */
async function someHomework(stage: Stage, whose: Somebody) {
  const boardId = await aBoard(stage);
  const pictureId = await aPainting(boardId, whose.id);
  const homeworkId = await addHomework({
    ...{ boardId, pictureId, painterId: whose.id, setById: whose.id, cardKey: null },
    ...{ words: 'Three values, with a large brush', check: '', dueOn: nextWeek(), answerAs: 'exercise' },
  });
  return { boardId, pictureId, homeworkId };
}

type Homework = Awaited<ReturnType<typeof someHomework>>;

function onHomework(
  what: string,
  relations: readonly Relation[],
  act: (homework: Homework, who: Somebody) => Promise<Response>,
): Probe {
  return {
    what,
    relations,
    act: async (stage, who, whose) => {
      const answer = await act(await someHomework(stage, whose), who);
      // Whoever may not see it is told that there is none; whether the board is there for them was asked before.
      if (answer.status !== 404) return outcomeOf(answer);
      return outcomeOf(answer).catch(() => 'refused' as const);
    },
  };
}

const changing = (what: string, body: unknown) =>
  onHomework(what, OWN_OR_NOT, ({ boardId, homeworkId }, who) => {
    return call(change, who, { boardId, homeworkId }, { method: 'PATCH', body });
  });

export const HOMEWORK_PROBES = {
  'homework.set': [
    {
      what: 'sets it',
      relations: OWN_OR_NOT,
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        const picture = await aPainting(boardId, whose.id);
        const body = {
          ...{ picture, card: 'picture', words: 'Join the lights', check: '' },
          ...{ dueOn: nextWeek(), answerAs: 'state' },
        };
        return outcomeOf(await call(set, who, { boardId }, { method: 'POST', body }));
      },
    },
  ],
  'homework.see': [
    {
      what: 'reads what was set on the board',
      relations: ['own', 'ward', 'other'],
      act: async (stage, who, whose) => {
        const { boardId, homeworkId } = await someHomework(stage, whose);
        const answer = await call(see, who, { boardId });
        if (!answer.ok) return outcomeOf(answer);
        const seen = (await answer.json()) as HomeworkView[];
        return seen.some(({ id }) => id === homeworkId) ? 'done' : 'refused';
      },
    },
  ],
  'homework.change': [
    changing('sets another day', { dueOn: nextWeek() }),
    changing('closes it', { closed: true }),
    onHomework('takes it back', OWN_OR_NOT, ({ boardId, homeworkId }, who) => {
      return call(takeBack, who, { boardId, homeworkId }, { method: 'DELETE' });
    }),
  ],
  'homework.answer': [
    onHomework('posts a picture for it', OWN_OR_NOT, ({ boardId, homeworkId }, who) => {
      const body = new FormData();
      body.set('kind', 'painting');
      body.set('homework', homeworkId);
      body.set('file', new File(['no pixels are looked at'], 'study.jpg', { type: 'image/jpeg' }));
      return call(postPicture, who, { boardId }, { method: 'POST', body });
    }),
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
