/** For a painter's path over boards: how somebody tries to read it, through the handler. */

import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as seePath } from '#app/api/path/[personId]/route.ts';
import type { PathView } from '#server/core/contract/states.ts';
import { aPainting } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

export const PATH_PROBES = {
  'path.see': [
    {
      what: 'reads it',
      relations: ['own', 'ward', 'other'],
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        const pictureId = await aPainting(boardId, whose.id);
        const answer = await call(seePath, who, { personId: whose.id });
        const board = await call(seeBoard, who, { boardId });
        // A path that is not theirs looks like none, and one's own leaves out boards one is not on; whether the
        // board is there for them the board itself says.
        const { paintings } = answer.ok ? ((await answer.json()) as PathView) : { paintings: [] };
        if (paintings.some((painting) => painting.pictureId === pictureId)) return 'done';
        return board.ok ? 'refused' : outcomeOf(board);
      },
    },
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
