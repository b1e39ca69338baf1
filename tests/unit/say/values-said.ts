/** Closed sets of short texts that serve as values and are said where they are shown, by `sayValue`. */
import { CAPTURE_REASONS } from '#server/core/capture/reasons.ts';
import { FORMATS } from '#server/core/plan/crops/formats.ts';

const plainFormats = FORMATS.map(({ name }) => name).filter((name) => !/\d/.test(name));

export const VALUES_SAID: readonly string[] = [...CAPTURE_REASONS, ...plainFormats];
