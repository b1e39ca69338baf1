/** One room of a running server as a browser's own client sees it, to write into it without a browser. */
import * as decoding from 'lib0/decoding';
import { WebSocket } from 'ws';
import { WebsocketProvider } from 'y-websocket';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { MESSAGE_ANNOUNCE, MESSAGE_EPOCH, MESSAGE_REFUSED, MESSAGE_TIME } from '#server/core/live/wire.ts';

const PATIENCE_MS = 20_000;

/**
 * Joins with a fresh document and resolves once the server's state is in it.
 * @param url Of the server, http.
 */
export async function joinRoom(
  url: string,
  { cookie }: { cookie: string },
  boardId: string,
  name: RoomName,
): Promise<{ doc: Y.Doc; leave(): void }> {
  const doc = declareRoots(new Y.Doc(), name);
  const withCookie = class extends WebSocket {
    constructor(address: string) {
      super(address, { headers: { cookie } });
    }
  };
  const provider = new WebsocketProvider(`${url.replace(/^http/, 'ws')}/live/${boardId}`, name, doc, {
    // ws has the browser's interface as far as y-websocket uses it.
    WebSocketPolyfill: withCookie as unknown as typeof globalThis.WebSocket,
    disableBc: true,
  });
  provider.messageHandlers[MESSAGE_EPOCH] = (_encoder, decoder) => decoding.readVarUint(decoder);
  provider.messageHandlers[MESSAGE_ANNOUNCE] = () => undefined;
  provider.messageHandlers[MESSAGE_TIME] = (_encoder, decoder) => decoding.readVarUint(decoder);
  provider.messageHandlers[MESSAGE_REFUSED] = (_encoder, decoder) => decoding.readVarString(decoder);
  await new Promise<void>((synced) => provider.on('sync', (isSynced: boolean) => isSynced && synced()));
  return { doc, leave: () => provider.destroy() };
}

/**
 * Writes as that person and leaves once somebody else who joins is given all of it.
 * @param url Of the server, http. @throws Error when the server does not take it.
 */
export async function writeInto(
  url: string,
  who: { cookie: string },
  boardId: string,
  name: RoomName,
  write: (doc: Y.Doc) => void,
): Promise<void> {
  const writer = await joinRoom(url, who, boardId, name);
  write(writer.doc);
  const written = Y.getState(writer.doc.store, writer.doc.clientID);
  const until = Date.now() + PATIENCE_MS;
  for (;;) {
    const reader = await joinRoom(url, who, boardId, name);
    const given = Y.getState(reader.doc.store, writer.doc.clientID);
    reader.leave();
    if (given >= written) break;
    if (Date.now() > until) throw new Error(`The server took ${given} of ${written} changes to ${name}.`);
  }
  writer.leave();
}
