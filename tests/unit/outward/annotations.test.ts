import fc from 'fast-check';
import jsonld from 'jsonld';
import { expect, test } from 'vitest';
import type { Mark } from '#server/core/live/marks.ts';
import { fromAnnotations } from '#server/core/outward/annotations/from-annotations.ts';
import { documentLoader, onto, sent, someMarks } from './any-marks.ts';

test('a round trip loses nothing: kind, place, words, plane, paint, sample, pressure, moment, thread, and who said it', () => {
  fc.assert(
    fc.property(someMarks, (marks) => {
      const {
        marks: back,
        leftOut,
        passedOver,
      } = fromAnnotations(JSON.parse(JSON.stringify(sent(marks))), onto());
      expect({ leftOut, passedOver }).toEqual({ leftOut: [], passedOver: [] });
      expect(back).toHaveLength(marks.length);
      // In the order in which they were sent: replies follow what they answer.
      const newIds = new Map(marks.map(({ id }, at) => [id, back[at]?.id]));
      for (const [at, mark] of marks.entries()) {
        const came = back[at] as Mark;
        const { points, parent, author, id: _, ...rest } = mark;
        expect(came).toMatchObject(JSON.parse(JSON.stringify(rest)));
        expect(came).toMatchObject({ author: 'taker', from: author === 'pelle' ? 'Pelle' : 'Odile' });
        expect(came.parent).toBe(parent === null ? null : newIds.get(parent));
        expect(came.points).toHaveLength(points.length);
        for (const [place, [x, y, pressure]] of points.entries()) {
          const found = came.points[place];
          // A share is written in pixels: a billionth of the picture is beyond any eye.
          expect(Math.abs((found?.[0] ?? 9) - x)).toBeLessThan(1e-9);
          expect(Math.abs((found?.[1] ?? 9) - y)).toBeLessThan(1e-9);
          expect(found?.[2]).toBe(pressure);
        }
      }
    }),
    { numRuns: 150 },
  );
});

test('a name from a file stays that name on the next way', () => {
  const mark = {
    id: 'm',
    author: 'taker',
    from: 'Ottoline',
    pictureId: 'pic-1',
    kind: 'pin',
    points: [[0.5, 0.5]],
    text: 'Lift it',
    planeId: null,
    parent: null,
    at: 1,
  } as Mark;
  const [back] = fromAnnotations(sent([mark]), onto()).marks;
  expect(back).toMatchObject({ from: 'Ottoline', text: 'Lift it' });
});

test('strokes of one sketch stay one sketch', () => {
  const stroke = (id: string, parent: string | null): Mark => ({
    ...{ id, parent, author: 'pelle', pictureId: 'pic-1', kind: 'sketch', text: '', planeId: null, at: 1 },
    points: [
      [0.1, 0.1],
      [0.2, 0.3],
    ],
    paint: { hex: '#102030', width: 0.01, opacity: 0.5 },
  });
  const back = fromAnnotations(sent([stroke('one', null), stroke('two', 'one')]), onto()).marks;
  expect(back.map(({ kind, parent }) => [kind, parent])).toEqual([
    ['sketch', null],
    ['sketch', back[0]?.id],
  ]);
});

test('an independent processor expands every term of it by the standard’s context, and fetches nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(someMarks, async (marks) => {
      const document = sent(marks);
      // Safe mode fails on any term or address that no context defines.
      const [collection] = (await jsonld.expand(
        document as never,
        { documentLoader, safe: true } as never,
      )) as unknown as Record<string, never>[];
      const oa = 'http://www.w3.org/ns/oa#';
      const as = 'http://www.w3.org/ns/activitystreams#';
      expect(collection?.['@type']).toEqual([`${as}OrderedCollection`]);
      const [page] = (collection?.[`${as}first`] ?? []) as unknown as Record<
        string,
        { '@list': Record<string, never>[] }[]
      >[];
      const items = page?.[`${as}items`]?.[0]?.['@list'] ?? [];
      expect(items).toHaveLength(marks.length);
      for (const [at, item] of items.entries()) {
        const mark = marks[at] as Mark;
        expect(item['@type']).toEqual([`${oa}Annotation`]);
        // Section 3.1: one or more targets; each is an address or a resource with one.
        const targets = item[`${oa}hasTarget`] as unknown as Record<string, never>[];
        expect(targets).toHaveLength(1);
        const [motivation] = item[`${oa}motivatedBy`] as unknown as { '@id': string }[];
        expect(motivation?.['@id']).toMatch(/#(commenting|highlighting|replying|editing|describing)$/);
        if (mark.kind === 'reply') {
          expect(targets[0]?.['@id']).toBe(`https://board.example.org/api/boards/b-1/marks/${mark.parent}`);
          continue;
        }
        const [source] = (targets[0]?.[`${oa}hasSource`] ?? []) as unknown as Record<string, never>[];
        expect(source?.['@id']).toContain(`/pictures/${mark.pictureId}/`);
        const selectors = (targets[0]?.[`${oa}hasSelector`] ?? []) as unknown as Record<string, never>[];
        const kinds = selectors.flatMap((selector) => selector['@type'] as unknown as string);
        const isPoint = mark.points.length === 1;
        expect(kinds).toEqual(isPoint ? [`${oa}FragmentSelector`, `${oa}SvgSelector`] : [`${oa}SvgSelector`]);
      }
    }),
    { numRuns: 25 },
  );
});

test('Media Fragments URI 1.0, section 4.2.2: a point’s region is whole numbers and has an extent', () => {
  const pin = {
    id: 'm',
    author: 'pelle',
    pictureId: 'pic-1',
    kind: 'pin',
    points: [[1, 0.3333]],
    text: '',
    planeId: null,
    parent: null,
    at: 1,
  } as Mark;
  expect(JSON.stringify(sent([pin]))).toMatch(/xywh=pixel:2559,568,1,1"/);
});
