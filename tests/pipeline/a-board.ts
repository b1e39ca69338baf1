/** A board with a painter and live documents written straight into the store, for tests of the pipeline. */
import { randomUUID } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as Y from 'yjs';
import type { IncomingPicture } from '#server/core/contract/incoming.ts';
import type { PictureFields } from '#server/core/contract/requests.ts';
import { declareRoots } from '#server/core/live/document.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { incomingFolder } from '#server/store/blobs.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { appendUpdates } from '#server/store/live-updates.ts';

export interface ABoard {
  readonly boardId: string;
  readonly painterId: string;
  /** Puts bytes where an upload would, ready for `takeInPicture`. */
  upload(bytes: Uint8Array, fields: PictureFields, fileName?: string): Promise<IncomingPicture>;
  /** Edits a live document and stores what that changed, as a room does. */
  write(room: RoomName, change: (doc: Y.Doc) => void): Promise<void>;
}

export async function aBoard(): Promise<ABoard> {
  const painterId = randomUUID();
  await database().person.create({ data: { id: painterId, name: 'Ottoline' } });
  const boardId = await addBoard(painterId, 'The valley in October');
  const docs = new Map<RoomName, Y.Doc>();
  return {
    boardId,
    painterId,
    async upload(bytes, fields, fileName = 'picture.jpg') {
      await mkdir(incomingFolder(), { recursive: true });
      const temporaryPath = join(incomingFolder(), randomUUID());
      await writeFile(temporaryPath, bytes);
      return { boardId, painterId, fields, temporaryPath, fileName, sizeBytes: bytes.length };
    },
    async write(room, change) {
      const doc = docs.get(room) ?? declareRoots(new Y.Doc(), room);
      docs.set(room, doc);
      const before = Y.encodeStateVector(doc);
      change(doc);
      await appendUpdates([{ boardId, room, bytes: Y.encodeStateAsUpdate(doc, before) }]);
    },
  };
}
