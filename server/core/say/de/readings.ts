/** German of the readings: what is found in figures, and the words for planes, steps and colours. Pure. */
import type { Catalogue } from '../catalogue.ts';
import { cards } from './readings-cards.ts';
import { colour } from './readings-colour.ts';
import { photo } from './readings-photo.ts';
import { value } from './readings-value.ts';
import { words } from './readings-words.ts';

export const readings: Catalogue = { ...words, ...value, ...colour, ...photo, ...cards };
