/** Names of everything that can be wrong with a photograph, as the document lists them. Pure. */

export const CAPTURE_REASONS = [
  'no neutral',
  'clipping',
  'glare',
  'uneven light',
  'crooked',
  'too small or soft',
  'mixed light',
  'wet',
  'reference looks tone-mapped',
  'one cast over everything',
] as const;
export type CaptureReason = (typeof CAPTURE_REASONS)[number];
