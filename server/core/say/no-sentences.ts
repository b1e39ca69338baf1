/** Stands in for `sentences.ts` where pages are built in English, so that no browser is sent another language. */
import type { Catalogue } from './catalogue.ts';

export const sentences: Catalogue | null = null;
