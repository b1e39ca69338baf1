/**
 * Marks as a collection of W3C Web Annotations: where by standard selectors, what by textual bodies, who and when.
 *
 * In the flow: marks as somebody sees them -> [to-annotations] -> response. Coordinates are pixels of the copy that
 * `source` names. Pure.
 */
import type { Mark } from '../../live/marks.ts';
import { pixelAround } from './media-fragment.ts';
import { pathSvg, pointSvg, type Size } from './svg-shape.ts';
import { MEDIA_FRAGMENTS, motivationOf, OWN, OWN_CONTEXT, STANDARD_CONTEXT } from './vocabulary.ts';

export interface AnnotationSource {
  /** Address of the server, such as https://board.example.org. */
  origin: string;
  boardId: string;
  title: string;
  marks: readonly Mark[];
  /** Person id -> the name by which the asker knows them. */
  names: ReadonlyMap<string, string>;
  /** Picture id -> size of the copy that its address gives. */
  sizes: ReadonlyMap<string, Size>;
  /** Plane id -> its name. */
  planes: ReadonlyMap<string, string>;
}

type Json = Record<string, unknown>;

/** The whole collection with its one page. */
export function toAnnotations(source: AnnotationSource): Json {
  const id = marksAddress(source);
  const items = source.marks
    .filter(({ pictureId }) => source.sizes.has(pictureId))
    .map((mark) => annotationOf(mark, source));
  return {
    '@context': [STANDARD_CONTEXT, OWN_CONTEXT],
    id,
    type: 'AnnotationCollection',
    label: source.title,
    total: items.length,
    first: { id: `${id}?page=1`, type: 'AnnotationPage', partOf: id, startIndex: 0, items },
  };
}

/** Where the marks of a board are asked for. */
function marksAddress({ origin, boardId }: AnnotationSource): string {
  return `${origin}/api/boards/${boardId}/marks`;
}

function annotationOf(mark: Mark, source: AnnotationSource): Json {
  const { kind, text, planeId, author, from, parent, paint, patch } = mark;
  const address = (id: string) => `${marksAddress(source)}/${id}`;
  const bodies = bodiesOf(mark, source.planes);
  const at = new Date(mark.at);
  const name = from ?? source.names.get(author);
  const pressures = mark.points.map(([, , pressure]) => pressure ?? null);
  return {
    id: address(mark.id),
    type: 'Annotation',
    motivation: motivationOf(kind, text),
    ...(name === undefined ? {} : { creator: { type: 'Person', name } }),
    ...(Number.isNaN(at.getTime()) ? {} : { created: at.toISOString() }),
    ...(bodies.length === 0 ? {} : { body: bodies }),
    target: kind === 'reply' && parent !== null ? address(parent) : targetOf(mark, source),
    [OWN.kind]: kind,
    ...(planeId === null ? {} : { [OWN.plane]: planeId }),
    ...(kind !== 'reply' && parent !== null ? { [OWN.layer]: address(parent) } : {}),
    ...(paint === undefined ? {} : { [OWN.paint]: paint }),
    ...(patch === undefined ? {} : { [OWN.sample]: patch }),
    ...(pressures.some((pressure) => pressure !== null) ? { [OWN.pressures]: pressures } : {}),
  };
}

function bodiesOf({ text, planeId, patch }: Mark, planes: ReadonlyMap<string, string>): Json[] {
  const bodies: Json[] = [];
  if (text !== '') bodies.push({ type: 'TextualBody', value: text, format: 'text/plain' });
  const plane = planeId === null ? undefined : planes.get(planeId);
  if (plane !== undefined)
    bodies.push({ type: 'TextualBody', purpose: 'tagging', value: plane, format: 'text/plain' });
  if (patch) {
    const { L, a, b } = patch.lab;
    const value = `L* ${L.toFixed(1)}, a* ${a.toFixed(1)}, b* ${b.toFixed(1)} (CIELAB, D65)`;
    bodies.push({ type: 'TextualBody', purpose: 'describing', value, format: 'text/plain' });
  }
  return bodies;
}

function targetOf({ kind, pictureId, points }: Mark, { origin, boardId, sizes }: AnnotationSource): Json {
  const size = sizes.get(pictureId) ?? { width: 1, height: 1 };
  const pixels = points.map(([x, y]): [number, number] => [x * size.width, y * size.height]);
  return {
    type: 'SpecificResource',
    source: {
      id: `${origin}/api/boards/${boardId}/pictures/${pictureId}/2560`,
      type: 'Image',
      format: 'image/jpeg',
    },
    selector: selectorsOf(pixels, size, kind === 'outline'),
  };
}

/** A point as the pixel around it and, exactly, as a circle; a line or an outline as a path. */
function selectorsOf(pixels: readonly [number, number][], size: Size, closed: boolean): Json | Json[] {
  const [point] = pixels;
  if (point === undefined || pixels.length > 1)
    return { type: 'SvgSelector', value: pathSvg(pixels, size, closed) };
  return [
    { type: 'FragmentSelector', conformsTo: MEDIA_FRAGMENTS, value: pixelAround(point, size) },
    { type: 'SvgSelector', value: pointSvg(point, size) },
  ];
}
