/**
 * Marks and figures over HTTP, with the real rooms: everybody takes away what they see, and what is brought in goes past
 * the same guard as a mark made by hand; nothing that is there is touched.
 */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { POST as bringMarks, GET as takeMarks } from '#app/api/boards/[boardId]/marks/route.ts';
import { GET as takeTable } from '#app/api/boards/[boardId]/measures.csv/route.ts';
import { GET as takeFigures } from '#app/api/boards/[boardId]/measures.json/route.ts';
import type { MarksTaken } from '#server/core/contract/outward.ts';
import { type Mark, putMark, putMarks, readMarks } from '#server/core/live/marks.ts';
import { setAllowsSketch, setHidden } from '#server/core/live/remarks.ts';
import { offerServices, type Services } from '#server/http/services.ts';
import { addBlock } from '#server/store/blocks.ts';
import { database } from '#server/store/database.ts';
import { readDocument } from '#server/store/live-documents.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { aBoardWithPeople, type Cast, type LiveServer, startLive } from '#tests/live/a-live-server.ts';

let store: AStore;
let server: LiveServer;
let cast: Cast;
let veiled = false;
beforeAll(async () => {
  store = await openAStore();
  server = await startLive();
  const some: Partial<Services> = {
    isVeiled: async () => veiled,
    measuresOf: async () => ({ pending: 'Waiting for planes: outline at least one on the reference.' }),
    marksTakenIn: (board, writer, marks) =>
      server.live.writeAs(board, 'marks', writer, (doc) => putMarks(doc, marks)),
  };
  // What is left out has nothing to do with marks and figures.
  offerServices(some as Services);
});
afterAll(async () => {
  await server.stop();
  await store.close();
});
beforeEach(async () => {
  veiled = false;
  cast = await aBoardWithPeople();
  await database().rendition.create({
    data: {
      pictureId: cast.pictureId,
      name: '2560',
      hash: 'a'.repeat(64),
      mediaType: 'image/jpeg',
      widthPx: 2000,
      heightPx: 1000,
      sizeBytes: 9,
    },
  });
  await server.live.writeAsServer(cast.boardId, 'marks', (doc) => {
    putMark(doc, mark('m-1', cast.peer.id, 'Too dark'));
    putMark(doc, mark('m-2', cast.painter.id, 'Hidden one'));
    putMark(doc, { ...mark('m-3', cast.teacher.id, 'It is not'), kind: 'reply', points: [], parent: 'm-1' });
  });
});

const mark = (id: string, author: string, text: string): Mark => ({
  ...{
    id,
    author,
    text,
    pictureId: cast.pictureId,
    kind: 'pin',
    points: [[0.25, 0.5]],
    planeId: null,
    parent: null,
    at: 7,
  },
});

const params = () => ({ params: Promise.resolve({ boardId: cast.boardId }) });
const asked = (who: { cookie: string }, init: RequestInit = {}, query = '') =>
  new Request(`http://localhost:4300/api/boards/${cast.boardId}/marks${query}`, {
    ...init,
    headers: { cookie: who.cookie, host: 'localhost:4300' },
  });

async function wordsFor(who: { cookie: string }): Promise<string[]> {
  const answer = await takeMarks(asked(who), params());
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toMatch(
    /^application\/ld\+json;profile="http:\/\/www\.w3\.org\/ns\/anno\.jsonld"$/,
  );
  const { first } = (await answer.json()) as {
    first: { items: { body?: { value: string }[]; creator: { name: string } }[] };
  };
  return first.items.map(({ body, creator }) => `${creator.name}: ${body?.[0]?.value ?? ''}`);
}

async function bring(who: { cookie: string }, document: unknown, query = ''): Promise<MarksTaken> {
  const answer = await bringMarks(
    asked(who, { method: 'POST', body: JSON.stringify(document) }, query),
    params(),
  );
  const body = await answer.json();
  expect(answer.status, JSON.stringify(body)).toBe(200);
  return body as MarksTaken;
}

const stored = async () => readMarks(await readDocument(cast.boardId, 'marks'));

test('everybody takes away the marks that they see: nothing hidden from them, nothing of whom they block', async () => {
  await server.live.writeAsServer(cast.boardId, `painting/${cast.pictureId}`, (doc) =>
    setHidden(doc, 'm-2', true),
  );
  expect((await wordsFor(cast.teacher)).sort()).toEqual([
    'Pelle: Hidden one',
    'Petra: Too dark',
    'Tove: It is not',
  ]);
  expect((await wordsFor(cast.peer)).join()).not.toContain('Hidden one');
  await addBlock(cast.painter.id, cast.peer.id, 'peer');
  expect((await wordsFor(cast.painter)).join()).not.toContain('Too dark');
  veiled = true;
  expect((await takeMarks(asked(cast.viewer), params())).status).toBe(403);
  expect((await takeMarks(asked(cast.stranger), params())).status).toBe(404);
});

test('a file that was taken away comes back as marks of who brings it in, beside what is there', async () => {
  const file = await (await takeMarks(asked(cast.peer), params())).json();
  const before = await stored();
  const outcome = await bring(cast.teacher, file);
  expect(outcome).toEqual({ taken: 3, leftOut: [], passedOver: [] });
  const now = await stored();
  expect(now.filter(({ id }) => id.startsWith('m-'))).toEqual(before);
  const came = now.filter(({ id }) => !id.startsWith('m-'));
  expect(came.map(({ author, from, text }) => [author, from, text].join(' ')).sort()).toEqual(
    ['Pelle Hidden one', 'Petra Too dark', 'Tove It is not'].map((said) => `${cast.teacher.id} ${said}`),
  );
  const [parent, reply] = [
    came.find(({ text }) => text === 'Too dark'),
    came.find(({ text }) => text === 'It is not'),
  ];
  expect(reply?.parent).toBe(parent?.id);
});

test('what cannot be taken is listed with its reason, and the rest is taken', async () => {
  const example = (name: string) =>
    JSON.parse(
      readFileSync(
        fileURLToPath(new URL(`../fixtures/annotations/model/${name}.json`, import.meta.url)),
        'utf8',
      ),
    );
  const { taken, leftOut } = await bring(
    cast.peer,
    ['anno43', 'anno22', 'anno27', 'anno40'].map(example),
    `?picture=${cast.pictureId}`,
  );
  expect(taken).toBe(1);
  expect(leftOut).toHaveLength(3);
  expect((await stored()).filter(({ text }) => text === 'Comment text')).toMatchObject([
    { author: cast.peer.id, kind: 'pin' },
  ]);
});

test('sketches come in only where the painter lets others sketch', async () => {
  const sketch: Mark = {
    ...mark(randomUUID(), cast.peer.id, ''),
    kind: 'sketch',
    points: [
      [0.1, 0.1],
      [0.2, 0.2],
    ],
    paint: { hex: '#112233', width: 0.01, opacity: 1 },
  };
  const room = `painting/${cast.pictureId}` as const;
  await server.live.writeAsServer(cast.boardId, room, (doc) => setAllowsSketch(doc, true));
  await server.live.writeAsServer(cast.boardId, 'marks', (doc) => putMark(doc, sketch));
  const file = await (await takeMarks(asked(cast.peer), params())).json();
  expect(await bring(cast.peer, file)).toMatchObject({ taken: 4, leftOut: [] });
  await server.live.writeAsServer(cast.boardId, room, (doc) => setAllowsSketch(doc, false));
  const refused = await bring(cast.teacher, file);
  expect(refused).toMatchObject({
    taken: 3,
    leftOut: [{ why: expect.stringMatching(/does not let others sketch/) }],
  });
});

test('who may not mark brings nothing in, and what is no JSON is refused in one sentence', async () => {
  const post = (who: { cookie: string }, body: string) =>
    bringMarks(asked(who, { method: 'POST', body }), params());
  expect((await post(cast.viewer, '{}')).status).toBe(403);
  expect((await post(cast.stranger, '{}')).status).toBe(404);
  const mangled = await post(cast.peer, '{"items": [');
  expect(mangled.status).toBe(400);
  expect(await mangled.json()).toMatchObject({ error: { message: expect.stringMatching(/not JSON/) } });
  const before = await stored();
  expect(await bring(cast.peer, { hello: 'there' })).toEqual({ taken: 0, leftOut: [], passedOver: [] });
  expect(await stored()).toEqual(before);
});

test('figures go out as a table and as JSON, and not while a class looks at a painting alone', async () => {
  const table = await takeTable(asked(cast.viewer), params());
  expect(table.headers.get('content-type')).toMatch(/^text\/csv; charset=utf-8/);
  expect(table.headers.get('content-disposition')).toMatch(/^attachment; filename=".*figures\.csv"/);
  expect(await table.text()).toMatch(/Waiting for planes/);
  const figures = (await (await takeFigures(asked(cast.viewer), params())).json()) as {
    pictures: { pending: string }[];
  };
  expect(figures.pictures[0]?.pending).toMatch(/Waiting for planes/);
  veiled = true;
  for (const take of [takeTable, takeFigures])
    expect((await take(asked(cast.viewer), params())).status).toBe(403);
});
