/** German of measures, plans, planes, the wall and the sheet. Pure. */
import type { Catalogue } from '../catalogue.ts';
import { crops } from './craft-crops.ts';
import { photo } from './craft-photo.ts';
import { plan } from './craft-plan.ts';
import { planes } from './craft-planes.ts';
import { sheet } from './craft-sheet.ts';
import { wall } from './craft-wall.ts';

export const craft: Catalogue = { ...photo, ...planes, ...plan, ...crops, ...wall, ...sheet };
