/** How long and how many things of one's own time may be. Pure. */

/** Longest line of a painter who asks for a look, in characters. */
export const ASK_LIMIT = 400;
/** Longest phrase, in characters, and most phrases of one person. */
export const PHRASE_LIMIT = 600;
export const MOST_PHRASES = 200;
/** Most marks that a browser names as not yet seen, and longest state vector of a room, in base64. */
export const MOST_UNSEEN = 500;
export const VECTOR_LIMIT = 40_000;
