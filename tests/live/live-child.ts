/**
 * A server of its own with the live part alone, to be killed or measured from outside.
 *
 * `node --import tsx live-child.ts <data folder> <port> <boards> <marks>`: at the first start it makes twelve
 * painters on that many boards and puts that many marks on the first. Prints one line of JSON when it listens.
 * Tells its memory when asked. TERM stops it cleanly, which compacts its rooms.
 */
import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { putMark } from '#server/core/live/marks.ts';
import { addBoard } from '#server/store/boards.ts';
import { putMember } from '#server/store/members.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';
import { type Somebody, somebody, startLive } from './a-live-server.ts';
import { tellMemory } from './child-process.ts';

export interface ChildCast {
  people: Somebody[];
  boards: string[];
}

const PEOPLE = 12;
const [, , dataFolder = '', port = '0', boards = '1', marks = '0'] = process.argv;

await openDatabase({ dataFolder, databaseUrl: null });
const castFile = join(dataFolder, 'live-cast.json');
const fresh = !existsSync(castFile);
const cast: ChildCast = fresh ? await makeCast(Number(boards)) : JSON.parse(await readFile(castFile, 'utf8'));
const server = await startLive(Number(port));
if (fresh) {
  await putMarks(Number(marks));
  await writeFile(castFile, JSON.stringify(cast));
}
tellMemory();
process.once('SIGTERM', async () => {
  await server.stop();
  await closeDatabase();
  process.exit(0);
});
process.stdout.write(`${JSON.stringify({ port: server.port, cast })}\n`);

async function makeCast(count: number): Promise<ChildCast> {
  const people = await Promise.all(
    Array.from({ length: PEOPLE }, (_, index) => somebody(`Painter ${index + 1}`)),
  );
  const made: string[] = [];
  for (let index = 0; index < count; index++) {
    const boardId = await addBoard(people[0]?.id ?? '', `Board ${index + 1}`);
    for (const person of people.slice(1)) await putMember(boardId, person.id, 'painter', null);
    made.push(boardId);
  }
  return { people, boards: made };
}

/** Marks by all in turn: mostly pins with a line of text, one in ten a stroke of forty points. */
async function putMarks(count: number): Promise<void> {
  const first = cast.boards[0];
  if (first === undefined || count === 0) return;
  await server.live.writeAsServer(first, 'marks', (doc) => {
    for (let index = 0; index < count; index++) {
      const author = cast.people[index % PEOPLE]?.id ?? '';
      const points: [number, number][] = Array.from({ length: index % 10 === 0 ? 40 : 1 }, (_, at) => {
        return [((index + at) % 997) / 997, (index % 601) / 601];
      });
      const kind = points.length > 1 ? 'stroke' : 'pin';
      const place = { pictureId: `picture-${index % 12}`, planeId: null, parent: null };
      const text = 'The far ridge wants to be a little lighter.';
      putMark(doc, { id: `mark-${index}`, author, kind, points, text, at: index, ...place });
    }
  });
}
