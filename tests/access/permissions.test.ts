/**
 * Every cell of the permission table, tried for real: over HTTP through the handlers, in the rooms through a
 * y-websocket client. What may be done is done, what may not leaves everything as it was.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startClass } from '#server/core/class/run.ts';
import { USUAL_LENGTHS } from '#server/core/class/steps.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { putMark } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { may, type Relation } from '#server/core/permissions/may.ts';
import { type Action, PERMISSIONS } from '#server/core/permissions/table.ts';
import { aPainting, eventually, join, type Somebody } from '#tests/live/a-live-server.ts';
import {
  aBoard,
  closeStage,
  isRole,
  type Outcome,
  openStage,
  type Stage,
  TRIED,
  type Tried,
} from './cast.ts';
import { HTTP_PROBES } from './http-probes.ts';
import { aMark, ROOM_PROBES, type RoomProbe, saidBy } from './room-probes.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => closeStage(stage));

/** Whose things are acted on. To everybody but the guardian the ward's are simply somebody else's. */
function whose(tried: Tried, relation: Relation): { person: Somebody; relation: Relation } {
  const { people } = stage;
  if (relation === 'own') return { person: people[tried], relation };
  if (relation === 'other') return { person: people.fellow, relation };
  return { person: people.ward, relation: tried === 'guardian' ? 'ward' : 'other' };
}

/** Asked of the server itself: there is no board or group whose being there could be kept from a stranger. */
const OF_THE_SERVER: readonly Action[] = ['return.link', 'house.record', 'house.school'];

function expected(tried: Tried, action: Action, relation: Relation): Outcome {
  if (!isRole(tried)) return OF_THE_SERVER.includes(action) ? 'refused' : 'hidden';
  return may(tried, action, relation) ? 'done' : 'refused';
}

function cells<P extends { what: string; relations: readonly Relation[] }>(probes: Record<string, P[]>) {
  return Object.entries(probes).flatMap(([action, list]) =>
    list.flatMap((probe) =>
      probe.relations.flatMap((relation) =>
        TRIED.map((tried) => {
          const cell = { action: action as Action, probe, relation, tried };
          return { ...cell, name: `${tried}, ${PERMISSIONS[cell.action].says}, ${relation}: ${probe.what}` };
        }),
      ),
    ),
  );
}

test('every action of the table is tried, over HTTP or in a room', () => {
  const tried = [...Object.keys(HTTP_PROBES), ...Object.keys(ROOM_PROBES)];
  expect(tried.sort()).toEqual(Object.keys(PERMISSIONS).sort());
});

describe('over HTTP', () => {
  test.each(cells(HTTP_PROBES))('$name', async ({ action, probe, relation, tried }) => {
    const { person, relation: real } = whose(tried, relation);
    const outcome = await probe.act(stage, stage.people[tried], person);
    expect(outcome).toBe(expected(tried, action, real));
  });

  test.each(Object.values(HTTP_PROBES).flat())('without a session: $what', async (probe) => {
    const nobody = { ...stage.people.stranger, cookie: '' };
    expect(await probe.act(stage, nobody, stage.people.fellow)).toBe('not entered');
  });
});

describe('in the rooms', () => {
  test.each(cells(ROOM_PROBES))('$name', async ({ action, probe, relation, tried }) => {
    const { person, relation: real } = whose(tried, relation);
    expect(await editIn(probe, stage.people[tried], person)).toBe(expected(tried, action, real));
  });
});

/** The room that the probe is about; first impressions are tried in the silent look of a class. */
async function roomFor(probe: RoomProbe, boardId: string, person: Somebody): Promise<RoomName> {
  if (probe.room === 'painting') return `painting/${await aPainting(boardId, person.id)}`;
  if (probe.room !== 'silent') return probe.room;
  await stage.server.live.writeAsServer(boardId, 'class', (doc) => {
    startClass(doc, [{ pictureId: 'p', painterId: person.id }], USUAL_LENGTHS);
  });
  return `silent/${person.id}`;
}

/** Edits as `who` in a room with things of `person`, and looks at what the server then has. */
async function editIn(probe: RoomProbe, who: Somebody, person: Somebody): Promise<Outcome> {
  const { server } = stage;
  const boardId = await aBoard(stage);
  const room = await roomFor(probe, boardId, person);
  if (room === 'marks') {
    await server.live.writeAsServer(boardId, room, (doc) => putMark(doc, aMark('theirs', person.id)));
  }
  const before = await server.live.read(boardId, room, (doc) => saidBy(doc, room));
  const client = join(server.port, who, boardId, room);
  try {
    const code = await Promise.race([client.synced.then(() => null), client.closed.then((end) => end.code)]);
    if (code === CLOSE.notAllowed) return 'refused';
    if (code !== null) return code === CLOSE.noSuchRoom ? 'hidden' : 'not entered';
    probe.edit(client.doc, { meId: who.id, ownerId: person.id, markId: 'theirs' });
    const stored = eventually('the edit is taken', async () => {
      return (await server.live.read(boardId, room, (doc) => saidBy(doc, room))) !== before;
    });
    const outcome = await Promise.race([
      stored.then((): Outcome => 'done'),
      client.closed.then(({ code: refusal }): Outcome => {
        expect(refusal).toBe(CLOSE.notAllowed);
        return 'refused';
      }),
    ]);
    if (outcome === 'refused') {
      stored.catch(() => undefined); // it never comes about
      expect(await server.live.read(boardId, room, (doc) => saidBy(doc, room))).toBe(before);
    }
    return outcome;
  } finally {
    client.leave();
  }
}
