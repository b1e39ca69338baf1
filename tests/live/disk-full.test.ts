import { expect, test } from 'vitest';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { database, offerDatabase } from '#server/store/database.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { cast, server } from './a-live-board.ts';
import { eventually, join } from './a-live-server.ts';

function pin(id: string, author: string): Mark {
  const place = { pictureId: 'p', planeId: null, parent: null, at: 1 };
  return { id, author, kind: 'pin', points: [[0.5, 0.5]], text: 'Warmer', ...place };
}

/** The database refuses to append, in PostgreSQL's own words for a full disk, until the returned call. */
function fillDisk(): () => void {
  const client = database();
  const full = () => {
    const words = 'could not extend file "base/5/16408": No space left on device';
    return Promise.reject(Object.assign(new Error(words), { code: '53100' }));
  };
  offerDatabase(
    new Proxy(client, { get: (target, key) => (key === '$executeRaw' ? full : Reflect.get(target, key)) }),
  );
  return () => offerDatabase(client);
}

test('on a full disk a writer is told, nobody is shown what is not stored, and nothing is lost in the end', async () => {
  const writer = join(server.port, cast.painter, cast.boardId, 'marks');
  const reader = join(server.port, cast.viewer, cast.boardId, 'marks');
  await Promise.all([writer.synced, reader.synced]);
  const emptyDisk = fillDisk();
  putMark(writer.doc, pin('one', cast.painter.id));
  const { code } = await writer.closed;
  expect(code).toBe(CLOSE.diskFull);
  expect(writer.refusals[0]).toContain('disk is full');
  expect(await server.live.healthy()).toBe(false);
  // The writer's browser keeps the mark and comes back by itself; it is refused again and again.
  await eventually('it was sent again', () => writer.refusals.length > 1);
  expect(readMarks(reader.doc)).toEqual([]);
  expect((await readRoom(cast.boardId, 'marks')).updates).toEqual([]);
  expect(reader.provider.wsconnected).toBe(true);

  emptyDisk();
  await eventually('the mark is seen once there is space', () => readMarks(reader.doc).length === 1);
  expect(await server.live.healthy()).toBe(true);
  expect((await readRoom(cast.boardId, 'marks')).updates).toHaveLength(1);
  writer.leave();
  reader.leave();
});
