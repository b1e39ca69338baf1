/**
 * Formats that a frame can be put into, as a person chooses them: plain ones, and canvases as they are sold.
 *
 * In the flow: core formats -> [frame-formats] -> chooser, frame under the hand. Pure.
 */
import { canvasChoices, FORMATS } from '#server/core/plan/crops/formats.ts';

export const FREE = 'free';

export interface FormatChoice {
  /** What the chooser holds. */
  readonly value: string;
  readonly format: string;
  readonly canvas: string | null;
  /** Width / height in pixels; null = free. */
  readonly ratio: number | null;
}

const PLAIN: readonly FormatChoice[] = FORMATS.filter(({ frames }) => frames > 1).map(({ name, ratio }) => ({
  ...{ value: name, format: name, canvas: null, ratio },
}));

/** Every canvas, lying and standing: its format is a plain one where it has that proportion. */
const CANVASES: readonly FormatChoice[] = canvasChoices().map(({ name, ratio, format }) => ({
  ...{ value: `canvas ${name}`, format, canvas: name, ratio },
}));

export const FORMAT_GROUPS = { plain: PLAIN, canvases: CANVASES } as const;

const ALL = [...PLAIN, ...CANVASES];

/** The choice of that value; free where there is none. */
export function choiceOf(value: string): FormatChoice {
  return (
    ALL.find((choice) => choice.value === value) ?? { value: FREE, format: FREE, canvas: null, ratio: null }
  );
}

/** The choice that a frame's format and canvas stand for. */
export function choiceFor(format: string, canvas: string | null): FormatChoice {
  if (canvas) return choiceOf(`canvas ${canvas}`);
  const plain = ALL.find((choice) => choice.canvas === null && choice.format === format);
  return plain ?? CANVASES.find((choice) => choice.canvas === format) ?? choiceOf(FREE);
}
