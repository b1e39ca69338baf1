/** Stands in for Node's Buffer in browsers, where lib0 names it but never uses it. Pure. */
export const Buffer = undefined;
