/**
 * A group with one person of every role, boards of it, the real handlers called as Next calls them, and the real
 * rooms on a port. Only the workers are left out: what they would measure has nothing to do with permission.
 */
import { BOARD_ROLES, type BoardRole, type MemberRole } from '#server/core/contract/roles.ts';
import { setAnswer } from '#server/core/live/card-answers.ts';
import { putPaintingOutline } from '#server/core/live/outlines.ts';
import { offerServices, type Services } from '#server/http/services.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { addGroup } from '#server/store/groups.ts';
import { newGuardianship } from '#server/store/guardians.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { aPainting, type LiveServer, type Somebody, somebody, startLive } from '#tests/live/a-live-server.ts';

/** Everybody who is tried: each role, and somebody who belongs nowhere. */
export const TRIED = [...BOARD_ROLES, 'stranger'] as const;
export type Tried = (typeof TRIED)[number];

/** One person of each role, a minor whom the guardian guards, and one more painter whose things are others'. */
export type People = Record<Tried | 'ward' | 'fellow', Somebody>;

export interface Stage {
  store: AStore;
  server: LiveServer;
  people: People;
  groupId: string;
}

export async function openStage(): Promise<Stage> {
  const store = await openAStore();
  const server = await startLive();
  offerServices({
    takeInPicture: async ({ boardId, painterId }) => ({
      id: await aPainting(boardId, painterId),
      width: 1,
      height: 1,
    }),
    measuresOf: async () => ({ pending: 'Not measured in this test' }),
    planOf: async () => ({ pending: 'Not planned in this test' }),
    drawSheet: async () => new Uint8Array([37]),
    plannedJpeg: async () => ({ hash: 'planned', bytes: new Uint8Array([255]) }),
    statesCompared: async () => ({ pending: 'Not compared in this test' }),
    statePicture: async () => new Uint8Array([255]),
    answerMade: ({ boardId, pictureId }, writer, key, answer) =>
      server.live.writeAs(boardId, `painting/${pictureId}`, writer, (doc) => setAnswer(doc, key, answer)),
    outlinesMade: ({ boardId, pictureId }, writer, outlines) =>
      server.live.writeAs(boardId, `painting/${pictureId}`, writer, (doc) => {
        for (const [planeId, outline] of outlines) putPaintingOutline(doc, planeId, outline);
      }),
    isVeiled: (board) => server.live.isVeiled(board),
    impressionsOf: (board, picture) => server.live.impressionsOf(board, picture),
    pictureNoted: () => undefined,
    pictureRemoved: (board, picture) => server.live.closePicture(board, picture),
    markMade: (board, writer, mark) => server.live.addMark(board, writer, mark),
    markRemoved: (board, mark) => server.live.removeMark(board, mark),
    blocksChanged: (people) => server.live.blocksChanged(people),
    boardRemoved: (board) => server.live.closeBoard(board),
    async accessChanged(boards) {
      for (const board of boards) await server.live.recheck(board);
    },
    sessionsEnded: (ids) => server.live.closeSessions(ids),
    boardChanged: () => undefined,
    marksTakenIn: async () => undefined,
    personForgotten: async () => 0,
    takeInBoard: async () => ({ id: '', title: '', pictures: 0, leftOut: [] }),
    healthy: async () => true,
  } satisfies Services);
  const people = {} as People;
  for (const name of [...TRIED, 'ward', 'fellow'] as const)
    people[name] = await somebody(name, name === 'host');
  return { store, server, people, groupId: await aGroup(people) };
}

export async function closeStage({ server, store }: Stage): Promise<void> {
  await server.stop();
  await store.close();
}

const ROLE_OF: Partial<Record<keyof People, MemberRole>> = {
  teacher: 'teacher',
  painter: 'painter',
  peer: 'peer',
  viewer: 'viewer',
  ward: 'painter',
  fellow: 'painter',
};

/** A group of these people, each with the role they are named for. */
export async function aGroup(people: People): Promise<string> {
  const groupId = await addGroup(people.owner.id, 'Thursday class');
  await database().groupMember.createMany({
    data: Object.entries(ROLE_OF).map(([name, role]) => {
      return { groupId, personId: people[name as keyof People].id, role };
    }),
  });
  await database().guardianship.create({
    data: newGuardianship({ groupId }, people.guardian.id, people.ward.id, null),
  });
  return groupId;
}

/** A new board of the group: everybody has their role there through the group. */
export function aBoard({ people, groupId }: Pick<Stage, 'people' | 'groupId'>): Promise<string> {
  return addBoard(people.owner.id, 'Reeds at the weir', groupId);
}

/** A painting by somebody, without pixels. */
export const aPaintingOn = (boardId: string, painter: Somebody): Promise<string> =>
  aPainting(boardId, painter.id);

// Every handler takes a request and the parts of its address; which parts differs.
type Handler = (request: Request, context: { params: Promise<never> }) => Promise<Response>;

/** Calls a handler as Next does. A body that is no form goes as JSON. */
export function call(
  handler: Handler,
  who: Somebody | null,
  params: Record<string, string>,
  { method = 'GET', body, query = '' }: { method?: string; body?: unknown; query?: string } = {},
): Promise<Response> {
  const headers: Record<string, string> = who ? { cookie: who.cookie } : {};
  const isForm = body instanceof FormData;
  if (body !== undefined && !isForm) headers['content-type'] = 'application/json';
  const sent = body === undefined ? {} : { body: isForm ? body : JSON.stringify(body) };
  // Node asks for `duplex` with a body; the type of the browser's own fetch does not know it.
  const init = { method, headers, ...sent, duplex: 'half' };
  const request = new Request(`http://localhost:4300/${query}`, init as RequestInit);
  return handler(request, { params: Promise.resolve(params) as Promise<never> });
}

/** What became of something that was tried. */
export type Outcome = 'done' | 'refused' | 'hidden' | 'not entered';

const OUTCOMES: Record<string, Outcome> = {
  'not-allowed': 'refused',
  'board-not-found': 'hidden',
  'group-not-found': 'hidden',
  'not-entered': 'not entered',
};

/** @param alsoDone Codes that say: allowed, but there was nothing to do. @throws Error for any other answer. */
export async function outcomeOf(response: Response, alsoDone: readonly string[] = []): Promise<Outcome> {
  if (response.ok) return 'done';
  const { error } = (await response.json()) as { error: { code: string; message: string } };
  const outcome = OUTCOMES[error.code] ?? (alsoDone.includes(error.code) ? 'done' : null);
  if (outcome === null) throw new Error(`Answered with ${response.status} ${error.code}: ${error.message}`);
  return outcome;
}

/** A role's own person, as the table has it. */
export function isRole(tried: Tried): tried is BoardRole {
  return tried !== 'stranger';
}
