/** For what a class reveals: how somebody tries to read it, through the handler. */
import { GET as seeImpressions } from '#app/api/boards/[boardId]/impressions/[pictureId]/route.ts';
import { nextStep, startClass } from '#server/core/class/run.ts';
import { USUAL_LENGTHS } from '#server/core/class/steps.ts';
import { aPainting, eventually } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

export const CLASS_PROBES = {
  'impressions.see': [
    {
      what: 'reads them',
      relations: ['other'],
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        const pictureId = await aPainting(boardId, whose.id);
        const { live } = stage.server;
        await live.writeAsServer(boardId, 'class', (doc) => {
          startClass(doc, [{ pictureId, painterId: whose.id }], USUAL_LENGTHS);
          nextStep(doc, () => whose.id);
        });
        await eventually(
          'they are revealed',
          async () => (await live.impressionsOf(boardId, pictureId)) !== null,
        );
        return outcomeOf(await call(seeImpressions, who, { boardId, pictureId }));
      },
    },
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
