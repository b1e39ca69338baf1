/**
 * The server whose screens are photographed: the demo board of a first start, and beside it a few boards in states that
 * the demo is not in. Everybody here is invented.
 *
 * In the flow: screens -> [made] -> a server of its own in a temporary data folder. IO: that server, over HTTP.
 */

import { nextStep, startClass } from '#server/core/class/run.ts';
import { readClass } from '#server/core/class/state.ts';
import { type Step, USUAL_LENGTHS } from '#server/core/class/steps.ts';
import type { BoardListItem, BoardView, PictureView } from '#server/core/contract/responses.ts';
import { aFirstStart } from '#tests/helpers/a-first-start.ts';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';

export interface Made {
  server: AServer;
  host: Entered;
  painter: Entered;
  viewer: Entered;
  /** Boards by what they show. */
  boards: Record<'demo' | 'empty' | 'bare' | 'silent' | 'priorities', string>;
  demo: BoardView;
  /** A painting with a later state. */
  statesOf: { boardId: string; pictureId: string };
  groupId: string;
  inviteToken: string;
  returnUrl: string;
}

export async function makeAll(): Promise<Made> {
  const server = await startAServer({ dataFolder: await aFirstStart() });
  try {
    return await makeOn(server);
  } catch (thrown) {
    await server.stop();
    throw thrown;
  }
}

async function makeOn(server: AServer): Promise<Made> {
  const host = await server.enter('Hedda');
  const demoId = (await server.json<BoardListItem[]>(host, '/api/boards')).find((board) => board.demo)?.id;
  if (!demoId) throw new Error('The server has no demo board.');
  const demo = await server.json<BoardView>(host, `/api/boards/${demoId}`);
  const [reference, painting] = ['reference', 'painting'].map((kind) => newestOf(demo, kind));
  if (!reference || !painting) throw new Error('The demo board lacks a reference or a painting.');
  const board = async (title: string) =>
    (await server.json<{ id: string }>(host, '/api/boards', 'POST', { title })).id;
  const copies = {
    [reference.id]: await bytesOf(server, host, demoId, reference.id),
    [painting.id]: await bytesOf(server, host, demoId, painting.id),
  };
  const post = (who: Entered, boardId: string, picture: PictureView, fields: Record<string, string>) =>
    posted(server, who, boardId, copies[picture.id] ?? new ArrayBuffer(0), fields);

  const bare = await board('Heath before rain');
  const invited = async (boardId: string, role: string) =>
    (
      await server.json<{ token: string }>(host, `/api/boards/${boardId}/invites`, 'POST', {
        role,
        hours: 24,
      })
    ).token;
  const painter = await server.enter('Liv', await invited(bare, 'painter'));
  const viewer = await server.enter('Viggo', await invited(demoId, 'viewer'));
  await post(host, bare, reference, { kind: 'reference', rights: 'mine' });
  const first = await post(painter, bare, painting, { kind: 'painting', caption: 'Two evenings' });
  await post(painter, bare, painting, { kind: 'painting', caption: 'Two evenings', follows: first });
  await server.json(painter, `/api/boards/${bare}/asks`, 'POST', {
    ...{ picture: first, of: null, words: 'Does the massif sit far enough back?' },
  });
  await server.json(painter, `/api/boards/${bare}/homework`, 'POST', {
    ...{
      picture: first,
      card: null,
      words: 'Five small studies of one sky, values alone.',
      check: 'Squint: three values are left.',
    },
    ...{ dueOn: inAWeek(), answerAs: 'exercise' },
  });

  const inClass = async (title: string, step: Step) => {
    const boardId = await board(title);
    await post(host, boardId, reference, { kind: 'reference', rights: 'mine' });
    const pictureId = await post(host, boardId, painting, { kind: 'painting' });
    await writeInto(server.url, host, boardId, 'class', (doc) => {
      startClass(doc, [{ pictureId, painterId: host.id }], USUAL_LENGTHS);
      while (readClass(doc).now?.step !== step) nextStep(doc, () => host.id);
    });
    return boardId;
  };
  const { id: groupId } = await server.json<{ id: string }>(host, '/api/groups', 'POST', {
    name: 'Thursday circle',
  });
  const { url: returnUrl } = await server.json<{ url: string }>(
    host,
    `/api/people/${painter.id}/return-link`,
    'POST',
    {},
  );
  return {
    ...{ server, host, painter, viewer, demo, groupId, returnUrl },
    statesOf: { boardId: bare, pictureId: first },
    inviteToken: await invited(demoId, 'painter'),
    boards: {
      ...{ demo: demoId, bare, empty: await board('Nothing posted yet') },
      silent: await inClass('A class in its silent look', 'silent'),
      priorities: await inClass('A class at its priorities', 'priorities'),
    },
  };
}

const inAWeek = () => new Date(Date.now() + 7 * 24 * 3_600_000).toISOString().slice(0, 10);

const newestOf = ({ pictures }: BoardView, kind: string) =>
  pictures.filter((picture) => picture.kind === kind).at(-1);

async function bytesOf(
  server: AServer,
  who: Entered,
  boardId: string,
  pictureId: string,
): Promise<ArrayBuffer> {
  return (await server.call(who, `/api/boards/${boardId}/pictures/${pictureId}/1280`)).arrayBuffer();
}

async function posted(
  server: AServer,
  who: Entered,
  boardId: string,
  bytes: ArrayBuffer,
  fields: Record<string, string>,
): Promise<string> {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  form.set('file', new Blob([bytes]), 'picture.jpg');
  const answer = await server.call(who, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  if (answer.status !== 201) throw new Error(`Posting was refused: ${await answer.text()}`);
  return ((await answer.json()) as { id: string }).id;
}
