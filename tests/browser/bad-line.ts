/**
 * A line between browser and server that a test can make bad: frozen, so that nothing passes and nobody is told, or cut,
 * so that every connection ends and no new one is made.
 */

import type { AddressInfo } from 'node:net';
import { createServer, connect as open, type Socket } from 'node:net';

export interface BadLine {
  /** Where the server is reached through this line. */
  url: string;
  freeze(): void;
  cut(): void;
  mend(): void;
  close(): Promise<void>;
}

/** @param serverUrl Such as http://localhost:41234. */
export async function aLineTo(serverUrl: string): Promise<BadLine> {
  const { hostname, port } = new URL(serverUrl);
  const sockets = new Set<Socket>();
  let state: 'up' | 'frozen' | 'cut' = 'up';
  const keep = (socket: Socket) => {
    sockets.add(socket);
    socket.on('error', () => socket.destroy());
    socket.on('close', () => sockets.delete(socket));
    if (state === 'frozen') socket.pause();
  };
  const proxy = createServer((near) => {
    if (state === 'cut') {
      near.destroy();
      return;
    }
    const far = open(Number(port), hostname);
    keep(near);
    keep(far);
    for (const [from, to] of [
      [near, far],
      [far, near],
    ] as const) {
      from.on('data', (bytes) => to.write(bytes));
      from.on('end', () => to.end());
      from.on('close', () => to.destroy());
    }
    if (state === 'frozen') for (const socket of [near, far]) socket.pause();
  });
  await new Promise<void>((listening) => proxy.listen(0, '127.0.0.1', listening));
  const { port: here } = proxy.address() as AddressInfo; // listening on TCP, so it is one
  return {
    url: `http://localhost:${here}`,
    freeze() {
      state = 'frozen';
      for (const socket of sockets) socket.pause();
    },
    cut() {
      state = 'cut';
      for (const socket of sockets) socket.destroy();
    },
    mend() {
      state = 'up';
      for (const socket of sockets) socket.resume();
    },
    async close() {
      for (const socket of sockets) socket.destroy();
      await new Promise((closed) => proxy.close(closed));
    },
  };
}
