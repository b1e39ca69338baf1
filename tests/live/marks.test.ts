/** Marks by their effect: every kind is taken from its author, sketches where they are allowed, nods in one's own name. */
import { beforeAll, describe, expect, test } from 'vitest';
import type * as Y from 'yjs';
import { setAnswer } from '#server/core/live/card-answers.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { type Mark, putMark, readMarks, removeMark, setMarkPlane } from '#server/core/live/marks.ts';
import { readNods, setNod } from '#server/core/live/nods.ts';
import { allowsSketch, readHidden, setAllowsSketch, setHidden } from '#server/core/live/remarks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { cast, server } from './a-live-board.ts';
import { aPainting, eventually, join, type Somebody } from './a-live-server.ts';

const here = () => ({ pictureId: cast.pictureId, text: '', planeId: null, parent: null, at: 1 });
const pin = (id: string, author: string): Mark => ({
  ...{ id, author, ...here(), kind: 'pin' },
  points: [[0.5, 0.5]],
});
const sketch = (id: string, author: string, pictureId = cast.pictureId): Mark => ({
  ...{ id, author, ...here(), pictureId, kind: 'sketch' },
  points: [
    [0.1, 0.2],
    [0.3, 0.4, 0.8],
  ],
  paint: { hex: '#8a8f94', width: 0.02, opacity: 0.6 },
});
const patch = (id: string, author: string): Mark => ({
  ...pin(id, author),
  kind: 'patch',
  patch: { lab: { L: 52.25, a: -3.5, b: 12 }, trust: 'B' },
});

const others = (id: string, author: string): Mark[] => [
  { ...pin(id, author), kind: 'arrow', points: [[0.1, 0.1], [0.4, 0.3]] }, // biome-ignore format: two points
  { ...pin(id, author), kind: 'outline', points: [[0.1, 0.1], [0.4, 0.3], [0.2, 0.6]] }, // biome-ignore format: three points
  { ...pin(id, author), kind: 'text', text: 'rest here' },
  patch(id, author),
];

const painting = () => `painting/${cast.pictureId}` as const;

/** Edits as somebody and gives the close code, or null once the server has taken it. */
async function tried(who: Somebody, room: RoomName, edit: (doc: Y.Doc) => void): Promise<number | null> {
  const client = join(server.port, who, cast.boardId, room);
  await client.synced;
  const before = (await readRoom(cast.boardId, room)).throughId;
  edit(client.doc);
  let code: number | null = null;
  client.closed.then((end) => {
    code = end.code;
  });
  await eventually('it is stored or refused', async () => {
    return code !== null || (await readRoom(cast.boardId, room)).throughId > before;
  });
  if (code !== null) {
    expect(client.refusals[0]).toMatch(/^[A-Z].{20,}\.$/);
    expect((await readRoom(cast.boardId, room)).throughId).toBe(before);
  }
  client.leave();
  return code;
}

const marksNow = () => server.live.read(cast.boardId, 'marks', readMarks);

beforeAll(async () => {
  await server.live.writeAsServer(cast.boardId, 'marks', (doc) => putMark(doc, pin('of-peer', cast.peer.id)));
});

describe('kinds of marks', () => {
  test('each is taken from its author and read again as it was made', async () => {
    for (const mark of others('kind', cast.peer.id)) {
      const named = { ...mark, id: `kind-${mark.kind}` };
      expect(await tried(cast.peer, 'marks', (doc) => putMark(doc, named))).toBeNull();
      expect((await marksNow()).find(({ id }) => id === named.id)).toEqual(named);
    }
  });

  test('its author puts a mark to another plane, somebody else does not', async () => {
    expect(await tried(cast.peer, 'marks', (doc) => setMarkPlane(doc, 'kind-arrow', 'ridge'))).toBeNull();
    const refused = await tried(cast.painter, 'marks', (doc) => setMarkPlane(doc, 'kind-arrow', 'sky'));
    expect(refused).toBe(CLOSE.notAllowed);
    expect((await marksNow()).find(({ id }) => id === 'kind-arrow')?.planeId).toBe('ridge');
  });

  const raw = (id: string, change: Record<string, unknown>) => (doc: Y.Doc) => {
    doc.transact(() => {
      putMark(doc, { ...patch(id, cast.peer.id) });
      const entry = doc.getMap('marks').get(id) as Y.Map<unknown>;
      for (const [key, value] of Object.entries(change)) entry.set(key, value);
    });
  };
  test.each<[string, Record<string, unknown>]>([
    ['a sample with a colour that there is not', { patch: { lab: { L: 140, a: 0, b: 0 }, trust: 'A' } }],
    ['a sample of a grade that there is not', { patch: { lab: { L: 40, a: 0, b: 0 }, trust: 'S' } }],
    ['a sample with a remark in it', { patch: { lab: { L: 40, a: 0, b: 0 }, trust: 'A', note: 'x' } }],
    ['a pin with a sample', { kind: 'pin' }],
    ['an arrow with one end', { kind: 'arrow' }],
    ['a sample beside the picture', { points: [[1.4, 0.2]] }],
    ['a kind that there is not', { kind: 'stamp' }],
  ])('%s is refused', async (what, change) => {
    const id = `bad-${what.length}`;
    expect(await tried(cast.peer, 'marks', raw(id, change))).toBe(CLOSE.notAllowed);
    expect((await marksNow()).some((mark) => mark.id === id)).toBe(false);
  });
});

describe('sketching over a painting', () => {
  const leave = (allowed: boolean) => tried(cast.painter, painting(), (doc) => setAllowsSketch(doc, allowed));

  test('is refused with a sentence until its painter allows it, to everybody', async () => {
    for (const who of [cast.peer, cast.teacher, cast.host, cast.painter]) {
      const edit = (doc: Y.Doc) => putMark(doc, sketch(`early-${who.name}`, who.id));
      expect(await tried(who, 'marks', edit)).toBe(CLOSE.notAllowed);
    }
    expect((await marksNow()).some(({ kind }) => kind === 'sketch')).toBe(false);
  });

  test('nobody but its painter allows it', async () => {
    for (const who of [cast.peer, cast.teacher, cast.host, cast.owner, cast.viewer]) {
      expect(await tried(who, painting(), (doc) => setAllowsSketch(doc, true))).toBe(CLOSE.notAllowed);
    }
    expect(await server.live.read(cast.boardId, painting(), allowsSketch)).toBe(false);
  });

  test('is taken while it is allowed, on that painting alone', async () => {
    const other = await aPainting(cast.boardId, cast.painter.id);
    expect(await leave(true)).toBeNull();
    expect(await tried(cast.peer, 'marks', (doc) => putMark(doc, sketch('lift', cast.peer.id)))).toBeNull();
    const elsewhere = (doc: Y.Doc) => putMark(doc, sketch('elsewhere', cast.peer.id, other));
    expect(await tried(cast.peer, 'marks', elsewhere)).toBe(CLOSE.notAllowed);
    const bad = { ...sketch('bad-paint', cast.peer.id), paint: undefined };
    const unpainted = (doc: Y.Doc) => {
      putMark(doc, { ...bad, kind: 'stroke' });
      (doc.getMap('marks').get('bad-paint') as Y.Map<unknown>).set('kind', 'sketch');
    };
    expect(await tried(cast.peer, 'marks', (doc) => doc.transact(() => unpainted(doc)))).toBe(
      CLOSE.notAllowed,
    );
  });

  test('once the leave is taken back a sketch is kept, changes no more, and can be removed', async () => {
    expect(await leave(false)).toBeNull();
    expect((await marksNow()).some(({ id }) => id === 'lift')).toBe(true);
    const move = (doc: Y.Doc) =>
      (doc.getMap('marks').get('lift') as Y.Map<unknown>).set('points', [[0, 0], [1, 1]]); // biome-ignore format: two points
    expect(await tried(cast.peer, 'marks', move)).toBe(CLOSE.notAllowed);
    const writer = { personId: cast.peer.id, role: 'peer', paints: false } as const;
    expect(await tried(cast.peer, 'marks', (doc) => removeMark(doc, 'lift', writer))).toBeNull();
  });

  test('what was allowed before the marks were opened counts too', async () => {
    const early = await aPainting(cast.boardId, cast.painter.id);
    await server.live.writeAsServer(cast.boardId, `painting/${early}`, (doc) => setAllowsSketch(doc, true));
    expect(
      await tried(cast.peer, 'marks', (doc) => putMark(doc, sketch('on-early', cast.peer.id, early))),
    ).toBeNull();
  });
});

describe('nods', () => {
  test('are given and taken back in one’s own name, seen by others, and never in another’s', async () => {
    const witness = join(server.port, cast.viewer, cast.boardId, 'marks');
    await witness.synced;
    const nod = (who: Somebody, as: Somebody, nods: boolean) =>
      tried(who, 'marks', (doc) => setNod(doc, 'of-peer', as.id, nods));
    expect(await nod(cast.teacher, cast.teacher, true)).toBeNull();
    await eventually('it is seen', () => readNods(witness.doc).get('of-peer')?.[0] === cast.teacher.id);
    expect(await nod(cast.host, cast.painter, true)).toBe(CLOSE.notAllowed);
    expect(await nod(cast.host, cast.teacher, false)).toBe(CLOSE.notAllowed);
    expect(await nod(cast.viewer, cast.viewer, true)).toBe(CLOSE.notAllowed);
    expect(await nod(cast.teacher, cast.teacher, false)).toBeNull();
    await eventually('it is gone', () => readNods(witness.doc).size === 0);
    witness.leave();
  });
});

describe('what is said of remarks on a painting', () => {
  test('its painter hides one and says what became of it; a peer does neither', async () => {
    expect(await tried(cast.painter, painting(), (doc) => setHidden(doc, 'of-peer', true))).toBeNull();
    expect(await server.live.read(cast.boardId, painting(), readHidden)).toEqual(new Set(['of-peer']));
    const tell = { state: 'done', words: '', about: [] } as const;
    const say = (doc: Y.Doc) => setAnswer(doc, 'of-peer', { ...tell, about: [] });
    expect(await tried(cast.painter, painting(), say)).toBeNull();
    expect(await tried(cast.peer, painting(), (doc) => setHidden(doc, 'of-peer', false))).toBe(
      CLOSE.notAllowed,
    );
    expect(await tried(cast.teacher, painting(), (doc) => setHidden(doc, 'of-peer', false))).toBeNull();
  });

  test('a hidden entry is true and nothing else', async () => {
    const edit = (doc: Y.Doc) => doc.getMap('hidden').set('of-peer', 'because');
    expect(await tried(cast.painter, painting(), edit)).toBe(CLOSE.notAllowed);
  });
});
