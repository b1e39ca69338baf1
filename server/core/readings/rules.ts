/**
 * Every reading there is, in the order of the trade's list. Composition readings come with the plan.
 *
 * In the flow: scene -> [each rule] -> findings. Pure.
 */
import type { Rule } from './rule.ts';
import { G1, G2, G3, G4, G5, G6, G7, G8, G9 } from './rules/capture.ts';
import { G10 } from './rules/cast.ts';
import { C3, C4 } from './rules/colour-air.ts';
import { C5 } from './rules/colour-green.ts';
import { C6, C7, C8 } from './rules/colour-shade.ts';
import { D1, D2, D3 } from './rules/detail.ts';
import { C1, C2, V4, V7 } from './rules/recession.ts';
import { V5, V6 } from './rules/value-depth.ts';
import { V10, V11 } from './rules/value-light.ts';
import { V2 } from './rules/value-merged.ts';
import { V1, V3 } from './rules/value-order.ts';
import { V8, V9 } from './rules/value-range.ts';
import { V12, V13 } from './rules/value-shapes.ts';

const VALUE = [V1, V2, V3, V4, V5, V6, V7, V8, V9, V10, V11, V12, V13];
const COLOUR = [C1, C2, C3, C4, C5, C6, C7, C8];
const DETAIL = [D1, D2, D3];
const CAPTURE = [G1, G2, G3, G4, G5, G6, G7, G8, G9, G10];

export const RULES: readonly Rule[] = [...VALUE, ...COLOUR, ...DETAIL, ...CAPTURE];
