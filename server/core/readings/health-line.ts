/**
 * The line that stands beside every mixing hint, in one place. Pure. Source: the trade notes on health and safety;
 * ASTM D4236 (labelling for chronic hazards) is what a label may follow.
 */
import { say } from '../say/say.ts';

export const HEALTH_LINE = say`Follow the product label, its safety data sheet and local rules. This app does not know your paint.`;
