/**
 * What one Web Annotation says, read leniently: its words, where it points, who made it. Nothing is fetched, nothing is
 * trusted; what cannot be taken is told with its reason.
 *
 * In the flow: JSON-LD as it came -> [read-annotation] -> from-annotations. Both spellings are read, `id` and `@id`,
 * `Annotation` and `oa:Annotation`. Pure.
 */
import { say } from '../../say/say.ts';

type Json = Record<string, unknown>;

/** An annotation as far as a board can understand it. */
export interface ReadAnnotation {
  id: string | null;
  words: string;
  /** Bodies that name something instead of saying something. */
  tags: string[];
  /** Parts that were passed over though the annotation is taken. */
  passedOver: string[];
  /** Address of what it is about, and the parts of it that it selects, best understood first. */
  target: { address: string; selectors: Json[] };
  creator: string | null;
  /** Milliseconds since 1970, or null. */
  at: number | null;
  motivation: string | null;
  /** The annotation itself, for terms of our own. */
  raw: Json;
}

const LONGEST_NAME = 80;

/** All annotations in a document: one, a list, a page, or a collection with its pages inside. */
export function annotationsIn(found: unknown, depth = 0): unknown[] {
  if (depth > 4) return [];
  if (Array.isArray(found)) return found.flatMap((each) => annotationsIn(each, depth + 1));
  if (!isJson(found)) return [];
  if (typesOf(found).includes('Annotation')) return [found];
  const inside = found.items ?? found['@graph'] ?? found.first;
  return inside === undefined ? [] : annotationsIn(inside, depth + 1);
}

/** @returns What it says, or the end of a sentence that says why it cannot be taken. */
export function readAnnotation(found: unknown): ReadAnnotation | string {
  if (!isJson(found)) return say`it is no annotation`;
  const target = readTarget(found.target ?? found['oa:hasTarget']);
  if (typeof target === 'string') return target;
  const said = readBodies(found);
  return {
    id: idOf(found),
    ...said,
    target,
    creator: creatorIn(found.creator ?? found['dcterms:creator']),
    at: momentIn(found.created ?? found['dcterms:created']),
    motivation: firstText(found.motivation ?? found['oa:motivatedBy'])?.replace(/^oa:/, '') ?? null,
    raw: found,
  };
}

export function isJson(found: unknown): found is Json {
  return found !== null && typeof found === 'object' && !Array.isArray(found);
}

/** The types of a thing without the standard's prefix. */
export function typesOf(found: Json): string[] {
  const types = found.type ?? found['@type'];
  return listOf(types).flatMap((type) => (typeof type === 'string' ? [type.replace(/^oa:/, '')] : []));
}

export function idOf(found: Json): string | null {
  const id = found.id ?? found['@id'];
  return typeof id === 'string' ? id : null;
}

function listOf(found: unknown): unknown[] {
  if (found === undefined || found === null) return [];
  return Array.isArray(found) ? found : [found];
}

function firstText(found: unknown): string | undefined {
  return listOf(found).find((each): each is string => typeof each === 'string');
}

function readTarget(found: unknown): ReadAnnotation['target'] | string {
  const targets = listOf(found);
  if (targets.length === 0) return say`it points at nothing`;
  if (targets.length > 1) return say`it points at ${targets.length} things at once`;
  const [target] = targets;
  if (typeof target === 'string') return addressed(target, []);
  if (!isJson(target)) return say`it points at nothing`;
  if (typesOf(target).some((type) => ['List', 'Composite', 'Independents', 'Choice'].includes(type))) {
    return say`it points at several things at once`;
  }
  const source = target.source ?? target['oa:hasSource'];
  const address = typeof source === 'string' ? source : isJson(source) ? idOf(source) : idOf(target);
  if (address === null) return say`it does not say what it points at`;
  return addressed(address, listOf(target.selector ?? target['oa:hasSelector']).filter(isJson));
}

/** A region may also stand at the end of the address itself. */
function addressed(address: string, selectors: Json[]): ReadAnnotation['target'] {
  const cut = address.indexOf('#');
  if (cut < 0) return { address, selectors };
  const fragment = { type: 'FragmentSelector', value: address.slice(cut + 1) };
  return { address: address.slice(0, cut), selectors: selectors.length > 0 ? selectors : [fragment] };
}

function readBodies(found: Json): Pick<ReadAnnotation, 'words' | 'tags' | 'passedOver'> {
  const words: string[] = [];
  const tags: string[] = [];
  const passedOver: string[] = [];
  if (typeof found.bodyValue === 'string') words.push(found.bodyValue);
  for (const body of listOf(found.body ?? found['oa:hasBody'])) {
    const read = readBody(body);
    if ('words' in read) words.push(read.words);
    else if ('tag' in read) tags.push(read.tag);
    else passedOver.push(read.why);
    if ('note' in read && read.note) passedOver.push(read.note);
  }
  return { words: words.join('\n\n'), tags, passedOver };
}

type ReadBody = { words: string; note?: string } | { tag: string } | { why: string };

function readBody(body: unknown): ReadBody {
  if (typeof body === 'string') return elsewhere(body);
  if (!isJson(body)) return { why: say`a part of it is no words` };
  if (typesOf(body).includes('Choice')) return readBody(listOf(body.items)[0]);
  const value = body.value ?? body['rdf:value'];
  if (typeof value !== 'string') {
    const { source } = body;
    return elsewhere(typeof source === 'string' ? source : idOf(isJson(source) ? source : body));
  }
  if (firstText(body.purpose)?.replace(/^oa:/, '') === 'tagging') return { tag: value };
  if (firstText(body.format ?? body['dc:format']) !== 'text/html') return { words: value };
  return { words: plainOf(value), note: say`the form of its text was left out, the words are kept` };
}

function elsewhere(address: string | null): ReadBody {
  if (address === null) return { why: say`a part of it is no words` };
  return { why: say`its words lie elsewhere (${shown(address)}), and nothing is fetched` };
}

/** Words of a marked-up text. What comes out is text like any other, never markup. */
function plainOf(html: string): string {
  const named: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };
  return html
    .replace(/<(script|style)\b[\s\S]*?<\/\1\s*>/gi, '')
    .replace(/<(?:br|\/p|\/div|\/li)\b[^>]*>/gi, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&(\w+);/g, (whole, name: string) => named[name] ?? whole)
    .trim();
}

function creatorIn(found: unknown): string | null {
  const [first] = listOf(found);
  const name = isJson(first) ? firstText(first.name ?? first['foaf:name'] ?? first.nickname) : undefined;
  const cut = name?.trim().slice(0, LONGEST_NAME);
  return cut ? cut : null;
}

function momentIn(found: unknown): number | null {
  const text = firstText(found);
  const at = text === undefined ? Number.NaN : Date.parse(text);
  return Number.isNaN(at) ? null : at;
}

/** An address, short enough for a sentence. */
export function shown(address: string): string {
  return address.length > 60 ? `${address.slice(0, 59)}…` : address;
}
