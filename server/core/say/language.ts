/**
 * The language of the house: one for everybody on a server, as a class speaks one.
 *
 * In the flow: VEILSTEP_LANGUAGE -> [language] -> sentences, numbers, pages. Read once, when this is loaded; the
 * build of the pages writes the same answer into the script of the browser (`next.config.mjs`).
 */
export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** `server/env.ts` refuses any other word at the start, so what is not German here is English. */
export const LANGUAGE: Language = process.env.VEILSTEP_LANGUAGE === 'de' ? 'de' : 'en';

/** For Intl: how numbers, days and plurals are written. */
export const LOCALE = LANGUAGE === 'de' ? 'de-DE' : 'en-GB';
