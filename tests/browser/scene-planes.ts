/** The planes of the drawn scene, outlined on its photograph along its own ridges, as if a hand had done it. */
import { randomUUID } from 'node:crypto';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { RIDGES } from './scenes.ts';

export const SCENE_PLANES = [
  { name: 'Sky', kind: 'sky', top: 0 },
  { name: 'Far hills', kind: 'land', top: RIDGES[0] },
  { name: 'Middle ground', kind: 'wood', top: RIDGES[1] },
  { name: 'Foreground', kind: 'land', top: RIDGES[2] },
] as const;

export function outlineScene(
  server: AServer,
  who: Entered,
  boardId: string,
  referenceId: string,
): Promise<void> {
  return writeInto(server.url, who, boardId, 'setup', (doc) => {
    for (const { name, kind, top } of SCENE_PLANES) {
      const id = randomUUID();
      addPlane(doc, { id, name, kind, tilt: null });
      putReferenceOutline(doc, referenceId, id, [
        [0, top],
        [1, top],
        [1, 1],
        [0, 1],
      ]);
    }
  });
}
