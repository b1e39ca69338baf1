/** For seeing a board and what belongs to it: how somebody tries it, through the handlers. */
import { GET as seeMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as seePicture } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { GET as seePlan } from '#app/api/boards/[boardId]/plan/[pictureId]/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as seeWork } from '#app/api/boards/[boardId]/wall/[pictureId]/route.ts';
import { GET as seeWall } from '#app/api/boards/[boardId]/wall/route.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

type See = (at: { boardId: string; pictureId: string }, who: Somebody) => Promise<Response>;

/** @param see Looks at a board with a painting of somebody's on it. */
function seeing(what: string, see: See): Probe {
  return {
    what,
    relations: ['other'],
    act: async (stage, who, whose) => {
      const boardId = await aBoard(stage);
      return outcomeOf(await see({ boardId, pictureId: await aPainting(boardId, whose.id) }, who));
    },
  };
}

export const SEEING_PROBES = {
  'board.see': [
    seeing('opens it', ({ boardId }, who) => call(seeBoard, who, { boardId })),
    seeing('reads figures', (at, who) => call(seeMeasures, who, at)),
    seeing('reads the plan of a photograph', (at, who) => call(seePlan, who, at)),
    seeing('sees its wall', ({ boardId }, who) => call(seeWall, who, { boardId })),
    seeing('reads how a painting on its wall lies', (at, who) => call(seeWork, who, at)),
    seeing('reads what is known of a picture', (at, who) => call(seePicture, who, at)),
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
