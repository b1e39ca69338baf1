/**
 * The yardstick: the barest relay that y-protocols allows. Memory only, no check, no store, no session.
 *
 * `node --import tsx relay-child.ts [state file]`: a room per address; the file, when given, is the state of
 * every room. Prints one line of JSON when it listens.
 */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import * as decoding from 'lib0/decoding';
import * as encoding from 'lib0/encoding';
import { type WebSocket, WebSocketServer } from 'ws';
import * as sync from 'y-protocols/sync';
import * as Y from 'yjs';
import { tellMemory } from '../live/child-process.ts';

const stateFile = process.argv[2];
const state = stateFile ? await readFile(stateFile) : null;
const rooms = new Map<string, { doc: Y.Doc; sockets: Set<WebSocket> }>();

function roomOf(address: string) {
  const present = rooms.get(address);
  if (present) return present;
  const room = { doc: new Y.Doc(), sockets: new Set<WebSocket>() };
  if (state) Y.applyUpdate(room.doc, state);
  room.doc.on('update', (update: Uint8Array, origin: unknown) => {
    const frame = syncFrame((encoder) => sync.writeUpdate(encoder, update));
    for (const socket of room.sockets) if (socket !== origin) socket.send(frame);
  });
  rooms.set(address, room);
  return room;
}

function syncFrame(write: (encoder: encoding.Encoder) => void): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, 0);
  write(encoder);
  return encoding.toUint8Array(encoder);
}

const server = createServer();
const sockets = new WebSocketServer({ server, perMessageDeflate: false });
sockets.on('connection', (socket, request) => {
  const room = roomOf(request.url ?? '');
  room.sockets.add(socket);
  socket.send(syncFrame((encoder) => sync.writeSyncStep1(encoder, room.doc)));
  socket.on('close', () => room.sockets.delete(socket));
  socket.on('message', (message) => {
    const decoder = decoding.createDecoder(new Uint8Array(message as Buffer)); // binary frames only
    if (decoding.readVarUint(decoder) !== 0) return;
    const reply = encoding.createEncoder();
    encoding.writeVarUint(reply, 0);
    sync.readSyncMessage(decoder, reply, room.doc, socket);
    if (encoding.length(reply) > 1) socket.send(encoding.toUint8Array(reply));
  });
});
tellMemory();
server.listen(0, '127.0.0.1', () => {
  process.stdout.write(`${JSON.stringify({ port: (server.address() as AddressInfo).port })}\n`);
});
