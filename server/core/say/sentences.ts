/** The catalogue of the language of the house, or null in English, whose sentences stand in the code itself. */
import type { Catalogue } from './catalogue.ts';
import { german } from './de/german.ts';
import { LANGUAGE } from './language.ts';

export const sentences: Catalogue | null = LANGUAGE === 'de' ? german : null;
