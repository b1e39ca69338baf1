/** Where a board's rooms are reached. In the flow: page's address -> [live-address] -> board-store. IO: reads the address. */

/** `ws(s)://host/live/<boardId>`; on the server, where no room is opened, a name that nobody calls. */
export function liveAddress(boardId: string): string {
  if (typeof location === 'undefined') return `ws://nowhere/live/${boardId}`;
  return `${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/live/${boardId}`;
}
