/** German. Pure. */
export const termsAsked = 'Was die Wörter meinen';
