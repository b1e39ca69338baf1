/** For every action in a room: an edit that a browser's own client makes on the board's document. */
import type * as Y from 'yjs';
import type { RoomName } from '#server/core/live/layout.ts';
import { editMarkText, putMark, readMarks } from '#server/core/live/marks.ts';
import { setNod } from '#server/core/live/nods.ts';
import { addPlane } from '#server/core/live/planes.ts';
import type { Relation } from '#server/core/permissions/may.ts';
import type { Action } from '#server/core/permissions/table.ts';

/** What an edit is made with. */
export interface Given {
  /** Who edits. */
  meId: string;
  /** Whose the things are. */
  ownerId: string;
  /** A mark of theirs. */
  markId: string;
}

export interface RoomProbe {
  what: string;
  /** `silent` is the room of whose things it is tried on. */
  room: 'setup' | 'marks' | 'painting' | 'class' | 'silent';
  relations: readonly Relation[];
  edit(doc: Y.Doc, given: Given): void;
}

export type RoomAction = Extract<Action, `room.${string}`>;

const TRIANGLE = [
  [0, 0],
  [1, 0],
  [0.5, 1],
];
const CORNERS = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** One entry of one root map. */
function entry(
  room: RoomProbe['room'],
  relations: readonly Relation[],
  root: string,
  key: string,
  value: unknown,
): RoomProbe {
  return { what: `writes ${root}`, room, relations, edit: (doc) => doc.getMap(root).set(key, value) };
}

const setup = (root: string, key: string, value: unknown) => entry('setup', ['other'], root, key, value);
const painting = (root: string, key: string, value: unknown) =>
  entry('painting', ['own', 'other'], root, key, value);

export const aMark = (id: string, author: string) => ({
  ...{ id, author, at: 1, pictureId: 'p', kind: 'pin' as const, text: 'Softer here', planeId: null },
  ...{ parent: null, points: [[0.5, 0.5] as [number, number]] },
});

export const ROOM_PROBES: Record<RoomAction, RoomProbe[]> = {
  'room.setup': [
    {
      what: 'writes planes',
      room: 'setup',
      relations: ['other'],
      edit: (doc) => addPlane(doc, { id: 'ridge', name: 'ridge', kind: 'land', tilt: null }),
    },
    setup('outlines', 'picture/ridge', TRIANGLE),
    setup('air', 'picture', { L: 70, a: -2, b: -8 }),
    setup('conditions', 'against-light', true),
    setup('unreliable', 'ridge', 'branches in front'),
    setup('plan', 'ladder', []),
    setup('plan', 'wish.strength', 1.5),
    setup('plan', 'target', 'reference'),
    setup('answers', 'theirs', { state: 'tried', words: '', about: [] }),
    setup('hidden', 'theirs', true),
    setup('wall', 'named', true),
    setup('wall', 'question', 'How did each of us say far?'),
  ],
  'room.painting': [
    painting('outlines', 'ridge', TRIANGLE),
    painting('photo', 'corners', CORNERS),
    {
      what: 'writes intention',
      room: 'painting',
      relations: ['own', 'other'],
      edit: (doc) => doc.getText('intention').insert(0, 'The light after rain'),
    },
    painting('focus', 'point', [0.4, 0.6]),
    painting('frame', 'crop', 'the-lake'),
    painting('meant', 'V4', true),
    painting('answers', 'plane-ridge', { state: 'tried', words: '', about: [] }),
  ],
  'room.cards': [painting('cards', 'picture.what', 'lift the darks')],
  'room.hide': [painting('hidden', 'theirs', true)],
  'room.sketch': [painting('allows', 'sketch', true)],
  'room.said': [painting('said', 'first', 'I lift the far hills')],
  'room.class': [
    entry('class', ['other'], 'class', 'order', ['one', 'two']),
    entry('class', ['other'], 'class', 'closed', true),
    entry('class', ['other'], 'class', 'look', { personId: 'somebody', since: 1 }),
  ],
  'room.kept': [entry('class', ['other'], 'kept', 'shown-p', 1)],
  'room.silent': [entry('silent', ['own', 'other'], 'notes', 'p', 'The light behind the reeds')],
  'room.result': [painting('result', 'number', 99)],
  'room.mark': [
    {
      what: 'makes one in their own name',
      room: 'marks',
      relations: ['own'],
      edit: (doc, { meId }) => putMark(doc, aMark('new-mark', meId)),
    },
    {
      what: 'rewrites it',
      room: 'marks',
      relations: ['own', 'other'],
      edit: (doc, { markId }) => editMarkText(doc, markId, 'Softer here, and cooler'),
    },
    {
      what: 'moves it',
      room: 'marks',
      relations: ['own', 'other'],
      edit: (doc, { markId }) =>
        (doc.getMap('marks').get(markId) as Y.Map<unknown>).set('points', [[0.1, 0.2]]),
    },
    {
      what: 'removes it',
      room: 'marks',
      relations: ['own', 'other'],
      edit: (doc, { markId }) => doc.getMap('marks').delete(markId),
    },
  ],
  'room.nod': [
    {
      what: 'nods in the name of',
      room: 'marks',
      relations: ['own', 'other'],
      edit: (doc, { ownerId }) => setNod(doc, 'theirs', ownerId, true),
    },
  ],
};

/** What a document says, as one text that two documents can be compared by. */
export function saidBy(doc: Y.Doc, room: RoomName): string {
  if (room === 'marks') return JSON.stringify([readMarks(doc), doc.getMap('nods').toJSON()]);
  return JSON.stringify(Object.fromEntries([...doc.share].map(([key, type]) => [key, type.toJSON()]).sort()));
}
