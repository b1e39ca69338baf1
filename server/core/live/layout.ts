/**
 * Names and shapes of the live documents: rooms, root keys, entries. `DEVELOPERS.md` repeats them as a table.
 *
 * What a browser or a stranger writes is parsed with these shapes on every read; what does not parse is left
 * out by readers and refused by the server. Coordinates are 0..1 of the upright original. Pure.
 */
import { z } from 'zod/mini';
import {
  Condition,
  FractionPoint,
  LabColour,
  Outline,
  PhotoCorrection,
  PlaneKind,
  PlaneTilt,
  PlannedPlane,
} from '../contract/setup.ts';
import { Look, Thanks, Wish } from './look.ts';

/** The rooms of a board. `painting` is followed by a picture's id, `silent` by the id of whose first impressions it holds. */
export type RoomName = 'setup' | 'marks' | 'class' | `painting/${string}` | `silent/${string}`;

/** What the address `/live/<boardId>/<room>` may name. */
export function parseRoomName(text: string): RoomName | null {
  if (text === 'setup' || text === 'marks' || text === 'class') return text;
  return /^(painting|silent)\/[0-9a-z-]{1,64}$/.test(text) ? (text as RoomName) : null;
}

/** Root types of each kind of room. Anything else at the root is refused. */
export const ROOT_KEYS = {
  setup: ['planes', 'outlines', 'air', 'conditions', 'unreliable', 'plan', 'answers', 'hidden', 'wall'],
  painting: [
    'outlines',
    'photo',
    'intention',
    'focus',
    'meant',
    'answers',
    'hidden',
    'allows',
    'cards',
    'said',
    'frame',
    'result',
  ],
  marks: ['marks', 'nods'],
  /** Entries: `core/class/shapes.ts`. `kept` is the server's own: the clock, and what is revealed. */
  class: ['class', 'kept'],
  silent: ['notes'],
} as const;

/** Ids of planes, pictures, people, marks: letters, digits and hyphens. */
export const LiveId = z.string().check(z.regex(/^[0-9A-Za-z-]{1,64}$/));

/** A fractional index, compared character by character; see `order.ts`. */
export const LiveOrder = z.string().check(z.regex(/^[0-9A-Za-z]{0,199}[1-9A-Za-z]$/));

/** Which taking a plane came with: how many takings it had seen, and a token that no other taking has. */
export const LivePlaneSet = z.string().check(z.regex(/^[0-9]{6}-[0-9A-Za-z-]{1,64}$/));

/** `setup.planes`: Y.Map id → Y.Map of these keys. Far to near by `order`, then by id. */
export const LivePlane = z.strictObject({
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  kind: PlaneKind,
  tilt: z.nullable(PlaneTilt),
  order: LiveOrder,
  /** Missing on planes that were added one by one to a bare board; see `plane-sets.ts`. */
  set: z.optional(LivePlaneSet),
});
export type LivePlane = z.infer<typeof LivePlane>;

/** `setup.outlines` is keyed by this; `painting.outlines` by the plane id alone. */
export function outlineKey(pictureId: string, planeId: string): string {
  return `${pictureId}/${planeId}`;
}

/** `painting.photo`: Y.Map of these flat keys, each replaced whole and without touching the others. */
export const LivePhoto = PhotoCorrection;
export type LivePhoto = PhotoCorrection;

/** `painting.focus`: Y.Map 'point' → point of the upright original. */
export const LiveFocus = FractionPoint;
/** Key of `painting.meant`: `V4` for every plane, `V4-<planeId>` for one. */
export const LiveReadingId = z.string().check(z.regex(/^[0-9A-Za-z-]{1,72}$/));
/** `painting.meant`: Y.Map of those → the painter's reason, or true where none was given. */
export const LiveMeant = z.union([z.literal(true), z.string().check(z.maxLength(400))]);
/** What a painter says of an adjustment card or a mark. */
/** `carried`: it goes along to the next state. */
export const ANSWER_STATES = ['open', 'accepted', 'adapted', 'declined', 'tried', 'done', 'carried'] as const;
export type AnswerState = (typeof ANSWER_STATES)[number];
/** `painting.answers`: Y.Map key of a card or id of a mark → what became of it. */
export const LiveAnswer = z.strictObject({
  state: z.enum(ANSWER_STATES),
  /** The painter's own words: another way, or why not; may be empty. */
  words: z.string().check(z.maxLength(1000)),
  /** Readings that stood on the card when it was answered: a card about others is open again. */
  about: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(20)),
});
export type LiveAnswer = z.infer<typeof LiveAnswer>;
/** Longest `painting.intention` and longest text of a mark, in characters. */
export const TEXT_LIMIT = 4000;

/**
 * `painting.cards`: what a teacher changed on adjustment cards or added, as flat keys `<card>.<part>`, so that two
 * teachers who change different parts of one card keep both. A measured card is named by its place: `plane-<id>`,
 * `picture` or `photo`; a card of a teacher's own is `own-<id>`.
 */
export const LiveCardKey = z
  .string()
  .check(z.regex(/^(plane-[0-9A-Za-z-]{1,64}|own-[0-9A-Za-z-]{1,64}|picture|photo)\.[a-zA-Z]{1,16}$/));
/** The parts of a card: a missing one is as it was measured. */
export const LiveCard = z.strictObject({
  /** Plane that a card of a teacher's own is about; missing = the whole picture. */
  planeId: z.optional(LiveId),
  /** What to do, for example `darks: lift about half a step`. */
  what: z.optional(z.string().check(z.minLength(1), z.maxLength(400))),
  how: z.optional(z.string().check(z.maxLength(1000))),
  why: z.optional(z.string().check(z.maxLength(1000))),
  check: z.optional(z.string().check(z.maxLength(1000))),
  /** Place among the cards; missing = by rank, after those that have one. */
  order: z.optional(LiveOrder),
  /** True: the teacher left it out. */
  dropped: z.optional(z.literal(true)),
});
export type LiveCard = z.infer<typeof LiveCard>;

/** `setup.air`: Y.Map pictureId → colour picked by a person. */
export const LiveAir = LabColour;
/** `setup.conditions`: Y.Map condition → true. */
export const LiveCondition = Condition;
/** `setup.unreliable`: Y.Map planeId → reason. */
export const LiveUnreliable = z.string().check(z.maxLength(400));
/** A rung of a plan that was taken, with the plane it was planned for. */
export const LiveRung = z.extend(PlannedPlane, { planeId: z.optional(LiveId) });
export type LiveRung = z.infer<typeof LiveRung>;
/** `setup.plan`: Y.Map 'ladder' → list of these; its other flat keys: `live/plan/`. */
export const LivePlan = z.array(LiveRung).check(z.maxLength(12));
export { Outline as LiveOutline };

/**
 * `painting.hidden`, and `setup.hidden` for marks on references: Y.Map id of a mark → true. `setup.answers` is to marks
 * on references what `painting.answers` is to those on a painting.
 */
export const LiveHidden = z.literal(true);
/** `painting.allows`: Y.Map of these → true. `sketch` = others may sketch over this painting. */
export const LiveLeave = z.enum(['sketch']);
/** `marks.nods`: Y.Map "`markId`/`personId`" → true; everybody writes their own. */
export const LiveNodKey = z.string().check(z.regex(/^[0-9A-Za-z-]{1,64}\/[0-9A-Za-z-]{1,64}$/));

/** What became of a mark: a missing answer is `open`. */
export const MARK_STATES = ['open', 'tried', 'done', 'declined'] as const;
export type MarkState = (typeof MARK_STATES)[number];

/**
 * outline = a line closed on itself; text = words that stand on the picture; patch = a sample of colour with its
 * reading; sketch = one stroke of paint on a layer over a painting; see `mark-kinds.ts`.
 */
export const MARK_KINDS = ['pin', 'stroke', 'arrow', 'outline', 'text', 'patch', 'sketch', 'reply'] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

/** A point of a mark; the third number is pen pressure 0..1 where the pen tells it. */
export const MarkPoint = z.union([
  FractionPoint,
  z.tuple([z.number(), z.number(), z.number().check(z.minimum(0), z.maximum(1))]),
]);

/** What a stroke of a sketch is painted with. */
export const MarkPaint = z.strictObject({
  /** sRGB. */
  hex: z.string().check(z.regex(/^#[0-9a-f]{6}$/)),
  /** Share of the picture's width. */
  width: z.number().check(z.minimum(0.001), z.maximum(0.2)),
  opacity: z.number().check(z.minimum(0.05), z.maximum(1)),
});
export type MarkPaint = z.infer<typeof MarkPaint>;

/** The mean colour of a small disc when the sample was taken, and how far its light could be trusted then. */
export const MarkPatch = z.strictObject({
  /** CIELAB, D65. */
  lab: z.strictObject({
    L: z.number().check(z.minimum(0), z.maximum(100)),
    a: z.number().check(z.minimum(-200), z.maximum(200)),
    b: z.number().check(z.minimum(-200), z.maximum(200)),
  }),
  /** `exact` on a reference, else the grade of the painting's photo. */
  trust: z.enum(['exact', 'A', 'B', 'C']),
});
export type MarkPatch = z.infer<typeof MarkPatch>;

/** `marks.marks`: Y.Map id → Y.Map of these keys; `text` is a Y.Text and appears here as its string. */
export const LiveMark = z.strictObject({
  /** Person id of who made it; set once. */
  author: LiveId,
  pictureId: LiveId,
  kind: z.enum(MARK_KINDS),
  /** As many as `mark-kinds.ts` says: one for a pin, the path of a stroke, none for a reply. */
  points: z.array(MarkPoint).check(z.maxLength(4000)),
  text: z.string().check(z.maxLength(TEXT_LIMIT)),
  planeId: z.nullable(LiveId),
  /** Id of the mark this one answers, for a sketch that of the layer's first stroke; or null. */
  parent: z.nullable(LiveId),
  /** Milliseconds since 1970, by its author's clock. */
  at: z.number(),
  /** Who said it, as the file named them that it came from; its author is who took it in. */
  from: z.optional(z.string().check(z.minLength(1), z.maxLength(80))),
  /** Of a sketch alone. */
  paint: z.optional(MarkPaint),
  /** Of a patch alone. */
  patch: z.optional(MarkPatch),
});
export type LiveMark = z.infer<typeof LiveMark>;

/** `painting.result`: Y.Map, written by the server alone. `number` rises with every new result. */
export const LiveResult = z.strictObject({
  number: z.int(),
  pending: z.nullable(z.string().check(z.maxLength(400))),
});
export type LiveResult = z.infer<typeof LiveResult>;

/**
 * Awareness state of one browser tab. The server overwrites `person` with whom the session says it is.
 * `hold` names what is being dragged (for example `outline/<pictureId>/<planeId>` or `photo/<pictureId>`).
 */
export const Presence = z.object({
  person: z.object({ id: z.string(), name: z.string(), role: z.string() }),
  pointer: z.optional(z.nullable(z.object({ pictureId: z.string(), x: z.number(), y: z.number() }))),
  hold: z.optional(z.nullable(z.object({ what: z.string().check(z.maxLength(200)), since: z.number() }))),
  /** What they look at; told only while somebody looks with them. */
  look: z.optional(z.nullable(Look)),
  /** Id of the person they look with. */
  with: z.optional(z.nullable(LiveId)),
  wish: z.optional(z.nullable(Wish)),
  /** Counts only from who runs the class. */
  thanks: z.optional(Thanks),
});
export type Presence = z.infer<typeof Presence>;
