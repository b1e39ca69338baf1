/** Set as a mark of the page's own clock when it begins to fetch what nobody has asked for (User Timing, W3C). */
export const REST_MARK = 'rest';
