/**
 * What a painting is compared with, as it stands in a sentence: the photo it was painted from, or the plan.
 *
 * In the flow: scene -> [target-words] -> sentences. Whole phrases, since an article hangs on the noun in some languages.
 * Pure.
 */
import { say } from '../say/say.ts';
import type { Scene } from './scene.ts';

type Phrases = Record<Scene['targetWord'], string>;

const INSIDE: Phrases = { photo: say`in the photo`, plan: say`in the plan` };
const AT_START: Phrases = { photo: say`In the photo`, plan: say`In the plan` };
const THAN: Phrases = { photo: say`than the photo`, plan: say`than the plan` };
const AS_DOES: Phrases = { photo: say`as the photo does`, plan: say`as the plan does` };
const IN_BOTH: Phrases = { photo: say`In picture and photo alike`, plan: say`In picture and plan alike` };

type Compared = Pick<Scene, 'targetWord'>;

/** `in the photo`. */
export const inTarget = ({ targetWord }: Compared): string => INSIDE[targetWord];
/** The same at the start of a sentence. */
export const inTargetFirst = ({ targetWord }: Compared): string => AT_START[targetWord];
/** `than the photo`. */
export const thanTarget = ({ targetWord }: Compared): string => THAN[targetWord];
/** `as the photo does`. */
export const asTargetDoes = ({ targetWord }: Compared): string => AS_DOES[targetWord];
/** `In picture and photo alike`, at the start of a sentence. */
export const inBoth = ({ targetWord }: Compared): string => IN_BOTH[targetWord];
