/** German, in parts as the sentences stand in the code. Pure. */
import type { Catalogue } from '../catalogue.ts';
import { craft } from './craft.ts';
import { house } from './house.ts';
import { readings } from './readings.ts';

export const german: Catalogue = { ...readings, ...craft, ...house };
