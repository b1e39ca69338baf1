/** A data folder with one board ready to look at: reference, two pictures as paintings, planes, many marks. */
import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { putMark } from '#server/core/live/marks.ts';
import { PHOTOGRAPH_PATH } from '#server/demo/photograph.ts';
import { seedDemo } from '#server/demo/seed.ts';
import { createLive, type Live } from '#server/live/live.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { removeBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';
import { listPictures } from '#server/store/pictures.ts';
import { aDataFolder } from '#tests/helpers/a-store.ts';

export interface BoardFolder {
  dataFolder: string;
  boardId: string;
}

/**
 * @param marks How many pins and strokes lie on the newest painting, which a board shows first, besides the demo's few.
 * @returns A closed folder; the caller starts a server on it and removes it.
 */
export async function aBoardFolder(marks: number): Promise<BoardFolder> {
  const dataFolder = await aDataFolder();
  process.env.VEILSTEP_DATA = dataFolder;
  await openDatabase({ dataFolder, databaseUrl: null });
  // Stores for tests say that the demo was made; here it is wanted, with the photograph for paintings.
  await database().installation.deleteMany({ where: { key: 'demo-made' } });
  const live: Live = createLive({ onRoomChanged: () => {} });
  const runner: Runner = await createRunner({ onResult: () => {} });
  try {
    const boardId = await seedDemo({
      takeInPicture: (incoming) => runner.takeInPicture(incoming),
      writeAsServer: live.writeAsServer,
      removeBoard,
      now: new Date(),
      paint: () => readFile(PHOTOGRAPH_PATH),
    });
    if (!boardId) throw new Error('The board was not made.');
    const painting = (await listPictures(boardId, 'painting')).at(-1);
    if (!painting) throw new Error('The board has no painting.');
    await live.writeAsServer(boardId, 'marks', (doc) => {
      for (let index = 0; index < marks; index++) {
        putMark(doc, aMark(index, painting.id, painting.painterId));
      }
    });
    return { dataFolder, boardId };
  } finally {
    await runner.stop();
    await live.flush();
    await closeDatabase();
  }
}

/** Every second mark is a stroke of 24 points; places spread evenly by the golden ratio. */
function aMark(index: number, pictureId: string, author: string): Parameters<typeof putMark>[1] {
  const x = (index * 0.618034) % 1;
  const y = (index * 0.414214) % 1;
  const stroke = index % 2 === 1;
  return {
    id: randomUUID(),
    author,
    pictureId,
    kind: stroke ? 'stroke' : 'pin',
    points: stroke
      ? Array.from({ length: 24 }, (_, at): [number, number] => [x + at * 0.002, y + Math.sin(at / 3) * 0.01])
      : [[x, y]],
    text: `Mark ${index + 1}`,
    planeId: null,
    parent: null,
    at: index,
  };
}
