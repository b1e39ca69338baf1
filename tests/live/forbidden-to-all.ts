/**
 * What nobody may do, whatever they are, as attempts for the hostile clients: other names, other shapes, other roots.
 *
 * In the flow: [forbidden to all] -> fuzz.
 */
import * as Y from 'yjs';
import type { RoomName } from '#server/core/live/layout.ts';
import { type Mark, putMark } from '#server/core/live/marks.ts';
import { setNod } from '#server/core/live/nods.ts';
import type { Stage } from '#tests/access/cast.ts';
import { aMark } from '#tests/access/room-probes.ts';
import type { Somebody } from './a-live-server.ts';

export interface Attempt {
  what: string;
  who: Somebody;
  room: RoomName;
  edit(doc: Y.Doc, random: () => number): void;
}

/** What nobody may do, whatever they are: other names, other shapes, other roots. */
export function forbiddenToAll(stage: Stage, rooms: readonly RoomName[]): Attempt[] {
  const { people } = stage;
  return (['host', 'teacher', 'owner', 'painter', 'peer'] as const).flatMap((name): Attempt[] => {
    const who = people[name];
    const own = `of-${name}`;
    const marks = (what: string, edit: Attempt['edit']): Attempt => ({
      what: `${name}: ${what}`,
      who,
      room: 'marks',
      edit,
    });
    const mark = (doc: Y.Doc) => doc.getMap('marks').get(own) as Y.Map<unknown>;
    return [
      marks('marks in another’s name', (doc, random) =>
        putMark(doc, aMark(`forged-${Math.floor(random() * 1e9)}`, people.fellow.id)),
      ),
      marks('sketches over what nobody allowed', (doc, random) =>
        putMark(doc, aSketch(`sketch-${Math.floor(random() * 1e9)}`, who.id)),
      ),
      marks('makes a sketch of a pin', (doc) => {
        const { kind, points, paint } = aSketch(own, who.id);
        doc.transact(() => {
          for (const [key, value] of Object.entries({ kind, points, paint })) mark(doc).set(key, value);
        });
      }),
      marks('nods in another’s name', (doc) => setNod(doc, own, people.fellow.id, true)),
      marks('gives a mark away', (doc) => mark(doc).set('author', people.fellow.id)),
      marks('puts theirs in the place of another’s', (doc) => putMark(doc, aMark('of-fellow', who.id))),
      marks('writes to a root that is not there', (doc, random) =>
        doc.getMap('elsewhere').set('a', random()),
      ),
      marks('hides a list', (doc, random) => hideList(doc, 'marks', random)),
      marks('leaves a place out', (doc, random) => mark(doc).set('points', random() < 0.5 ? [] : 'nowhere')),
      marks('writes bold', (doc) => (mark(doc).get('text') as Y.Text).format(0, 3, { bold: true })),
      marks('puts a document into a mark', (doc) => mark(doc).set('planeId', new Y.Doc())),
      {
        what: `${name}: writes a result`,
        who,
        room: rooms.find((room) => room.startsWith('painting/')) ?? 'setup',
        edit: (doc, random) => doc.getMap('result').set('number', Math.floor(random() * 1e6)),
      },
    ];
  });
}

const aSketch = (id: string, author: string): Mark => ({
  ...aMark(id, author),
  kind: 'sketch',
  points: [
    [0.1, 0.1],
    [0.2, 0.3],
  ],
  paint: { hex: '#6b7280', width: 0.02, opacity: 0.7 },
});

/** A list item in a root map: what no reader shows and everybody would carry. */
function hideList(doc: Y.Doc, root: string, random: () => number): void {
  const other = new Y.Doc();
  other.getArray(root).insert(0, [random()]);
  Y.applyUpdate(doc, Y.encodeStateAsUpdate(other));
}
