/** Web Annotations from elsewhere: what can be taken is taken, and the rest is named. */
import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromAnnotations } from '#server/core/outward/annotations/from-annotations.ts';
import { STANDARD_CONTEXT } from '#server/core/outward/annotations/vocabulary.ts';
import { FIXTURES, model, onto } from './any-marks.ts';

test('the examples of the Web Annotation Data Model are read: what speaks of an image is taken, the rest is named', async () => {
  const readable: Record<string, string | null> = {
    anno4: null,
    anno5: null,
    anno20: null,
    anno22: 'It points by “XPathSelector”, which is no place on a picture.',
    anno26: 'Its shape lies elsewhere, and nothing is fetched.',
    anno27: 'Its shape is empty.',
    anno28: 'It points by “RangeSelector”, which is no place on a picture.',
    'anno28-refined': 'It narrows its place in a way that is not known here.',
    anno40: 'It points at several things at once.',
    anno41: 'It narrows its place in a way that is not known here.',
    anno43: null,
  };
  const names = readdirSync(`${FIXTURES}model`).map((file) => file.replace('.json', ''));
  expect(names.sort()).toEqual(Object.keys(readable).sort());
  for (const [name, why] of Object.entries(readable)) {
    const { marks, leftOut } = fromAnnotations(model(name), onto({ onto: 'pic-1' }));
    expect([name, leftOut.map((part) => part.why)]).toEqual([name, why === null ? [] : [why]]);
    expect(marks).toHaveLength(why === null ? 1 : 0);
  }
  const [comment] = fromAnnotations(model('anno43'), onto({ onto: 'pic-2' })).marks;
  expect(comment).toMatchObject({
    text: 'Comment text',
    pictureId: 'pic-2',
    kind: 'pin',
    points: [[0.5, 0.5]],
  });
  expect(fromAnnotations(model('anno43'), onto()).leftOut[0]?.why).toMatch(
    /not on this board \(http:\/\/example\.org/,
  );
});

const about = (selector: unknown, body: unknown = { type: 'TextualBody', value: 'Here' }) => ({
  ...{ '@context': STANDARD_CONTEXT, id: 'http://example.org/a', type: 'Annotation', body },
  target: { source: 'http://example.org/photo', selector },
});
const taken = (document: unknown) => fromAnnotations(document, onto({ onto: 'pic-2' }));

test.each([
  [
    'xywh=percent:25,50,50,25',
    'outline',
    [
      [0.25, 0.5],
      [0.75, 0.5],
      [0.75, 0.75],
      [0.25, 0.75],
    ],
  ],
  ['xywh=percent:10.5,20.25,0,0', 'pin', [[0.105, 0.2025]]],
  [
    'xywh=pixel:160,120,320,240',
    'outline',
    [
      [0.25, 0.25],
      [0.75, 0.25],
      [0.75, 0.75],
      [0.25, 0.75],
    ],
  ],
  ['xywh=64,48,1,1', 'pin', [[64.5 / 640, 48.5 / 480]]],
])('a region in media fragments, %s, is a %s', (value, kind, points) => {
  const { marks } = taken(about({ type: 'FragmentSelector', value }));
  expect(marks[0]?.kind).toBe(kind);
  for (const [at, [x, y]] of (points as [number, number][]).entries()) {
    expect(marks[0]?.points[at]?.[0]).toBeCloseTo(x, 9);
    expect(marks[0]?.points[at]?.[1]).toBeCloseTo(y, 9);
  }
});

test.each([
  [
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><polygon points="1,1 9,1 9,9"/></svg>',
    'outline',
    3,
  ],
  ["<svg:svg width='100' height='50'><svg:polyline points='0 0 100 50'/></svg:svg>", 'stroke', 2],
  [
    '<svg viewBox="0 0 8 8"><g><title>a</title><path d="m1 1 h6 v6 l-3,-1.5 z" fill="none"/></g></svg>',
    'outline',
    4,
  ],
  ['<svg viewBox="0 0 100 100"><rect x="10" y="10" width="20" height="30"/></svg>', 'outline', 4],
  ['<svg viewBox="0 0 100 100"><ellipse cx="50" cy="50" rx="20" ry="10"/></svg>', 'outline', 32],
  ['<svg viewBox="0 0 1000 1000"><circle cx="500" cy="500" r="2"/></svg>', 'pin', 1],
])('the shape %s is a mark', (value, kind, points) => {
  const { marks, leftOut } = taken(about({ type: 'SvgSelector', value }));
  expect(leftOut).toEqual([]);
  expect(marks[0]).toMatchObject({ kind });
  expect(marks[0]?.points).toHaveLength(points);
});

test.each([
  ['<svg><path d="M0 0 C 1 1 2 2 3 3"/></svg>', /curves/],
  ['<svg><path d="M0 0 L1 1 M2 2 L3 3"/></svg>', /several parts/],
  ['<svg><circle/><rect/></svg>', /2 shapes/],
  ['<svg><rect transform="rotate(4)" width="4" height="4"/></svg>', /transform/],
  ['<!DOCTYPE svg [<!ENTITY a "b">]><svg>&a;</svg>', /more than a shape/],
  ['<svg><script>alert(1)</script></svg>', /more than a shape/],
  ['<svg><image href="http://example.org/x"/></svg>', /no outline \(image\)/],
  ['<svg viewBox="0 0 10 10"><polygon points="1,1 90,1 9,9"/></svg>', /beside the picture/],
  ['<svg viewBox="0 0 10 10"><polygon points="a,b c"/></svg>', /cannot be read/],
])('the shape %s is left out with its reason', (value, why) => {
  const { marks, leftOut } = taken(about({ type: 'SvgSelector', value }));
  expect(marks).toEqual([]);
  expect(leftOut).toEqual([{ what: '“Here”', why: expect.stringMatching(why) }]);
});

test('of several selectors the one that is understood is taken', () => {
  const selector = [
    { type: 'TextQuoteSelector', exact: 'x' },
    { type: 'FragmentSelector', value: 'xywh=percent:0,0,50,50' },
  ];
  expect(taken(about(selector)).marks[0]).toMatchObject({ kind: 'outline' });
});

test('words that lie elsewhere, marked-up words and strange tags are told, and no markup becomes words', () => {
  const body = [
    'http://example.org/words',
    {
      type: 'TextualBody',
      format: 'text/html',
      value: '<p>Lift &amp; <b onclick="x()">warm</b></p><script>x()</script>',
    },
    { type: 'TextualBody', purpose: 'tagging', value: 'edges' },
  ];
  const { marks, passedOver } = taken(
    about({ type: 'FragmentSelector', value: 'xywh=percent:0,0,50,50' }, body),
  );
  expect(marks[0]?.text).toBe('Lift & warm');
  expect(passedOver.map(({ why }) => why)).toEqual([
    expect.stringMatching(/lie elsewhere/),
    expect.stringMatching(/form of its text/),
    expect.stringMatching(/“edges” names no plane/),
  ]);
});

test('a reply from elsewhere answers what it answered, and is left out with it', () => {
  const page = (selector: unknown) => ({
    type: 'AnnotationPage',
    items: [
      {
        id: 'http://example.org/r',
        type: 'Annotation',
        motivation: 'replying',
        target: 'http://example.org/a',
        bodyValue: 'I agree',
        creator: { name: 'Ann' },
      },
      about(selector),
    ],
  });
  const { marks } = taken(page({ type: 'FragmentSelector', value: 'xywh=percent:0,0,50,50' }));
  expect(marks.map(({ kind, parent, from }) => [kind, parent, from])).toEqual([
    ['outline', null, undefined],
    ['reply', marks[0]?.id, 'Ann'],
  ]);
  const without = taken(page({ type: 'CssSelector', value: 'p' }));
  expect(without.marks).toEqual([]);
  expect(without.leftOut.map(({ why }) => why)).toEqual([
    expect.stringMatching(/CssSelector/),
    expect.stringMatching(/answers something that was left out/),
  ]);
});

test('whatever it is given, it makes marks that fit a board or says why not', () => {
  fc.assert(
    fc.property(
      fc.jsonValue(),
      fc.jsonValue({ maxDepth: 3 }),
      fc.jsonValue({ maxDepth: 3 }),
      (whole, selector, body) => {
        for (const document of [
          whole,
          [about(selector, body)],
          { type: 'Annotation', target: selector, body, 'veilstep:kind': whole },
        ]) {
          const { marks, leftOut } = taken(document);
          for (const mark of marks) expect(mark).toMatchObject({ author: 'taker', pictureId: 'pic-2' });
          for (const { why } of leftOut) expect(why).toMatch(/^[A-Z].*\.$/s);
        }
      },
    ),
    { numRuns: 500 },
  );
});
