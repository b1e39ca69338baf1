/** For sheets to take along: how somebody tries it, through the handler. */
import { GET as takeSheet } from '#app/api/boards/[boardId]/pictures/[pictureId]/sheet/route.ts';
import { sayConsent } from '#server/store/consents.ts';
import { database } from '#server/store/database.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf, type Stage } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

/** A painting with a plate to be drawn, which may be shown on its board. */
async function aDrawnPainting(stage: Stage, { id: personId }: Somebody) {
  const boardId = await aBoard(stage);
  const pictureId = await aPainting(boardId, personId);
  const file = { hash: 'ab'.repeat(32), mediaType: 'image/png', widthPx: 4, heightPx: 3, sizeBytes: 1 };
  await database().rendition.create({ data: { pictureId, name: 'plate', ...file } });
  await sayConsent({ boardId, personId, use: 'class', given: true, saidById: personId });
  return { boardId, pictureId };
}

export const SHEET_PROBES = {
  'sheet.take': [
    {
      what: 'takes it',
      relations: ['own', 'ward', 'other'],
      act: async (stage, who, whose) => {
        return outcomeOf(await call(takeSheet, who, await aDrawnPainting(stage, whose)));
      },
    },
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
