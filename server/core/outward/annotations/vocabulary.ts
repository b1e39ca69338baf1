/**
 * Words of the marks' interchange format: the Web Annotation Data Model's, and a few of our own for what it cannot say.
 *
 * Source: W3C Recommendation "Web Annotation Data Model", 23 February 2017; "Media Fragments URI 1.0 (basic)", W3C
 * Recommendation, 25 September 2012. Pure.
 */
import type { MarkKind } from '../../live/layout.ts';

export const STANDARD_CONTEXT = 'http://www.w3.org/ns/anno.jsonld';
export const MEDIA_FRAGMENTS = 'http://www.w3.org/TR/media-frags/';
export const ANNOTATION_TYPE = `application/ld+json;profile="${STANDARD_CONTEXT}"`;

/** Our own terms; a reader that does not know them loses nothing of where a mark is and what it says. */
export const OWN = {
  /** Which of our kinds of mark it is. */
  kind: 'veilstep:kind',
  /** Id of the plane it is about. */
  plane: 'veilstep:plane',
  /** The first stroke of the sketch that a stroke belongs to. */
  layer: 'veilstep:layer',
  /** Colour, width as a share of the picture's, and opacity of a sketch's stroke. */
  paint: 'veilstep:paint',
  /** CIELAB (D65) of a sample of colour, and how far its light was to be trusted. */
  sample: 'veilstep:sample',
  /** Pen pressure 0..1 of each point of a line; null where the pen told none. */
  pressures: 'veilstep:pressures',
} as const;

/** What stands beside the standard's context: JSON-LD 1.1, values of ours kept as they are. */
export const OWN_CONTEXT = {
  '@version': 1.1,
  veilstep: 'urn:veilstep:terms:',
  [OWN.layer]: { '@type': '@id' },
  [OWN.paint]: { '@type': '@json' },
  [OWN.sample]: { '@type': '@json' },
  [OWN.pressures]: { '@type': '@json' },
} as const;

/** Why a mark was made, in the standard's words. A sketch proposes a change; a sample describes what is there. */
export function motivationOf(kind: MarkKind, text: string): string {
  if (kind === 'reply') return 'replying';
  if (kind === 'sketch') return 'editing';
  if (kind === 'patch') return 'describing';
  return text === '' ? 'highlighting' : 'commenting';
}
