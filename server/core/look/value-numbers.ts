/** Into how many values a picture is laid out. Apart from the cuts, so that whoever only names a number needs none of their arithmetic. Pure. */

export const VALUE_NUMBERS = [2, 3, 4, 5] as const;
export type ValueNumber = (typeof VALUE_NUMBERS)[number];
