/** The word that opens the list of words; the list itself comes when it is asked for, from `terms.ts`. Pure. */
export const termsAsked = 'What the words mean';
