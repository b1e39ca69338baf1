/**
 * Web Annotations as marks for one board, and a list of what could not be taken and why.
 *
 * In the flow: handler -> [from-annotations] -> the marks room. Whatever is made gets an id of its own and the person
 * who took it in as its author; who said it first stays as a name. Pure.
 */
import type { LeftOutPart } from '../../contract/outward.ts';
import { LiveMark, MARK_KINDS, type MarkKind, MarkPaint, MarkPatch, TEXT_LIMIT } from '../../live/layout.ts';
import { fitsKind } from '../../live/mark-kinds.ts';
import type { Mark } from '../../live/marks.ts';
import { say } from '../../say/say.ts';
import type { OntoBoard } from './onto-board.ts';
import { placeFrom } from './place-from.ts';
import { annotationsIn, type ReadAnnotation, readAnnotation, shown } from './read-annotation.ts';
import { OWN } from './vocabulary.ts';

export interface FromAnnotations {
  marks: Mark[];
  leftOut: LeftOutPart[];
  /** Parts of what was taken that were passed over. */
  passedOver: LeftOutPart[];
}

/** As many as a board can bear at once. */
const MOST = 5000;

/** @param found Parsed JSON, of any shape. */
export function fromAnnotations(found: unknown, board: OntoBoard): FromAnnotations {
  const all = annotationsIn(found);
  const result: FromAnnotations = { marks: [], leftOut: [], passedOver: [] };
  const readable: ReadAnnotation[] = [];
  for (const [at, each] of all.slice(0, MOST).entries()) {
    const read = readAnnotation(each);
    if (typeof read === 'string')
      result.leftOut.push({ what: say`Annotation ${at + 1}`, why: sentence(read) });
    else readable.push(read);
  }
  if (all.length > MOST) {
    result.leftOut.push({
      what: say`Annotations ${MOST + 1} to ${all.length}`,
      why: say`At most ${MOST} are taken in at once.`,
    });
  }
  takeAll(readable, board, result);
  return result;
}

function sentence(reason: string): string {
  return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`;
}

/** What stands on a picture first, then replies to what is there by then, until no more find their place. */
function takeAll(readable: readonly ReadAnnotation[], board: OntoBoard, result: FromAnnotations): void {
  const made = new Map<string, Mark>();
  const all = new Set(readable.map(({ id }) => id));
  let waiting = [...readable];
  for (let before = -1; waiting.length !== before; ) {
    before = waiting.length;
    const still: ReadAnnotation[] = [];
    for (const each of waiting) {
      const parent = parentOf(each, board, made, all);
      if (parent === 'waits') still.push(each);
      else take(each, parent, { board, made, result });
    }
    waiting = still;
  }
  for (const each of waiting) {
    result.leftOut.push({
      what: whatOf(each),
      why: say`It answers something that was left out or is not here.`,
    });
  }
}

interface Parent {
  id: string;
  pictureId: string;
}

/** The mark that it answers: null when it answers none, 'waits' when that one is not made yet. */
function parentOf(
  { target, raw }: ReadAnnotation,
  { boardId, marks }: OntoBoard,
  made: ReadonlyMap<string, Mark>,
  all: ReadonlySet<string | null>,
): Parent | null | 'waits' {
  const layer = raw[OWN.layer];
  const address = typeof layer === 'string' ? layer : target.address;
  const mark = made.get(address);
  if (mark) return { id: mark.id, pictureId: mark.pictureId };
  const id = new RegExp(`/boards/${boardId}/marks/([0-9A-Za-z-]{1,64})$`).exec(address)?.[1];
  const pictureId = id === undefined ? undefined : marks.get(id);
  if (all.has(address)) return 'waits';
  if (id !== undefined && pictureId !== undefined) return { id, pictureId };
  return raw[OWN.kind] === 'reply' || /\/boards\/[^/]+\/marks\/[^/]+$/.test(address) ? 'waits' : null;
}

function whatOf({ id, words }: ReadAnnotation): string {
  if (words !== '') return say`“${shown(words)}”`;
  return id === null ? say`An annotation without words` : shown(id);
}

interface Taking {
  board: OntoBoard;
  made: Map<string, Mark>;
  result: FromAnnotations;
}

function take(read: ReadAnnotation, parent: Parent | null, { board, made, result }: Taking): void {
  const mark = markFrom(read, parent, board);
  if (typeof mark === 'string') {
    result.leftOut.push({ what: whatOf(read), why: sentence(mark) });
    return;
  }
  result.marks.push(mark.mark);
  if (read.id !== null) made.set(read.id, mark.mark);
  for (const why of [...read.passedOver, ...mark.passedOver])
    result.passedOver.push({ what: whatOf(read), why: sentence(why) });
}

function markFrom(
  read: ReadAnnotation,
  parent: Parent | null,
  board: OntoBoard,
): { mark: Mark; passedOver: string[] } | string {
  const { raw, words, tags, target, creator, at } = read;
  const said = kindSaid(raw);
  const isSample = raw[OWN.sample] !== undefined;
  const reply = parent !== null && typeof raw[OWN.layer] !== 'string';
  const place = reply
    ? { pictureId: parent.pictureId, kind: 'reply' as const, points: [], note: null }
    : placeFrom(target, said, board);
  if (typeof place === 'string') return place;
  const plane = planeOf(raw, tags, board.planes);
  const text = textOf(isSample ? withoutReading(read) : words, tags, plane);
  if (text.length > TEXT_LIMIT)
    return say`it has ${text.length} characters, and a remark holds ${TEXT_LIMIT}`;
  if (reply && text === '') return say`it answers with nothing that could be taken`;
  const { pictureId, kind } = place;
  const fields = {
    ...{ author: board.authorId, pictureId, kind, text, planeId: plane?.id ?? null },
    points: withPressures(place.points, raw[OWN.pressures]),
    parent: parent?.id ?? null,
    at: at ?? board.nowMs,
    ...(creator === null ? {} : { from: creator }),
    ...ownParts(kind, raw),
  };
  const parsed = LiveMark.safeParse(fields);
  if (!parsed.success || !fitsKind(parsed.data)) return say`it does not fit any mark of a board`;
  const lost = tags
    .filter((tag) => tag !== plane?.name && tag !== text)
    .map((tag) => say`its tag “${shown(tag)}” names no plane here`);
  return {
    mark: { id: board.newId(), ...parsed.data },
    passedOver: [...(place.note ? [place.note] : []), ...lost],
  };
}

function kindSaid(raw: Record<string, unknown>): MarkKind | null {
  return MARK_KINDS.find((kind) => kind === raw[OWN.kind]) ?? null;
}

/** The reading of a sample is told again as words; ours is not taken for what somebody said. */
function withoutReading({ raw }: ReadAnnotation): string {
  const bodies = Array.isArray(raw.body) ? raw.body : [raw.body];
  const said = bodies.filter((body): body is { value: string; purpose?: unknown } => {
    return typeof body?.value === 'string' && body.purpose === undefined;
  });
  return said.map(({ value }) => value).join('\n\n');
}

function planeOf(raw: Record<string, unknown>, tags: readonly string[], planes: ReadonlyMap<string, string>) {
  const said = raw[OWN.plane];
  if (typeof said === 'string' && planes.has(said)) return { id: said, name: planes.get(said) ?? '' };
  const found = [...planes].find(([, name]) => tags.includes(name));
  return found ? { id: found[0], name: found[1] } : null;
}

/** A tag alone is a word like any other. */
function textOf(words: string, tags: readonly string[], plane: { name: string } | null): string {
  if (words !== '') return words;
  return tags.filter((tag) => tag !== plane?.name).join(', ');
}

function withPressures(points: readonly (readonly [number, number])[], found: unknown): LiveMark['points'] {
  const pressures = Array.isArray(found) && found.length === points.length ? found : [];
  return points.map(([x, y], at): LiveMark['points'][number] => {
    const pressure: unknown = pressures[at];
    return typeof pressure === 'number' && pressure >= 0 && pressure <= 1 ? [x, y, pressure] : [x, y];
  });
}

function ownParts(kind: MarkKind, raw: Record<string, unknown>): Pick<LiveMark, 'paint' | 'patch'> {
  const [paint, patch] = [MarkPaint.safeParse(raw[OWN.paint]), MarkPatch.safeParse(raw[OWN.sample])];
  if (kind === 'sketch' && paint.success) return { paint: paint.data };
  return kind === 'patch' && patch.success ? { patch: patch.data } : {};
}
