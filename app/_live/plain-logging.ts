/**
 * Stands in for lib0's logging in browsers, where Yjs only ever warns with it: plain lines on the console, without colours.
 *
 * In the flow: yjs -> [plain-logging] -> console. IO: the console.
 */
export const [ORANGE, BOLD, UNBOLD, RED] = ['', '', '', ''];

export const print = (..._parts: unknown[]): void => {};
export const warn = (..._parts: unknown[]): void => {};
