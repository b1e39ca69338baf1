/**
 * The HTTP server around Next: headers on the way in and out, sockets handed to the rooms, an orderly end.
 *
 * In the flow: main -> [web server] -> Next's handlers, live. IO: the network.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import type { Duplex } from 'node:stream';
import type { ErrorBody } from '../core/contract/responses.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { logError } from '../log.ts';
import { contentSecurityPolicy, STEADY_HEADERS } from './security-headers.ts';
import { ADDRESS_HEADER, SECURE_HEADER } from './visitor.ts';

type Answer = (request: IncomingMessage, response: ServerResponse) => Promise<void>;
export type Upgrade = (request: IncomingMessage, socket: Duplex, head: Buffer) => void | Promise<void>;

/** What answers, once the start is through. */
export interface Handlers {
  page: Answer;
  live: Upgrade;
  /** Next's own socket in development; null otherwise. */
  devTools: Upgrade | null;
}

export interface WebServerSettings {
  port: number;
  /** VEILSTEP_ORIGIN, or null. When it is set, a proxy on this machine is believed about address and https. */
  origin: string | null;
  dev: boolean;
  /** Resolves when the start is through; requests that come earlier wait for it. */
  handlers: Promise<Handlers>;
}

export interface WebServer {
  /** The port that was taken. */
  port: number;
  /** From now on every request is answered with 503 and no new connection is taken. */
  refuseNewWork(): void;
  /** Lets running requests end for at most that long, then cuts every connection. */
  close(graceMs: number): Promise<void>;
}

/** @throws Problem 'port-in-use' when the port is taken or not ours to take. */
export async function listen(settings: WebServerSettings): Promise<WebServer> {
  const state = { stopping: false };
  const sockets = new Set<Socket>();
  const server = createServer((request, response) => {
    answer(request, response, settings, state).catch((thrown) => fail(thrown, request, response));
  });
  server.on('upgrade', (request, socket, head) => {
    upgrade(request, socket, head, settings, state).catch(() => socket.destroy());
  });
  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
  });
  await takePort(server, settings.port);
  return {
    // A server that listens on a port has an address record, never a path.
    port: (server.address() as AddressInfo).port,
    refuseNewWork: () => {
      state.stopping = true;
    },
    close: (graceMs) => closeServer(server, sockets, graceMs),
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  settings: WebServerSettings,
  state: { stopping: boolean },
): Promise<void> {
  const policy = contentSecurityPolicy(request.headers.host, settings.dev);
  dress(request, settings);
  request.headers['content-security-policy'] = policy;
  response.setHeader('content-security-policy', policy);
  for (const [name, value] of Object.entries(STEADY_HEADERS)) response.setHeader(name, value);
  if (state.stopping) return refuseStopping(response);
  const { page } = await settings.handlers;
  await page(request, response);
}

async function upgrade(
  request: IncomingMessage,
  socket: Duplex,
  head: Buffer,
  settings: WebServerSettings,
  state: { stopping: boolean },
): Promise<void> {
  // A peer that resets the connection while it is being looked at is its own trouble.
  socket.on('error', () => socket.destroy());
  dress(request, settings);
  const { live, devTools } = await settings.handlers;
  if (state.stopping) socket.destroy();
  else if (request.url?.startsWith('/live/')) await live(request, socket, head);
  else if (devTools) await devTools(request, socket, head);
  else socket.destroy();
}

/** Says on the request who sent it and how; whatever the sender wrote there itself is overwritten. */
function dress(request: IncomingMessage, { origin }: WebServerSettings): void {
  const peer = request.socket.remoteAddress ?? 'unknown';
  const behindProxy = origin !== null && /^(::1|127\.|::ffff:127\.)/.test(peer);
  const forwarded = headerText(request, 'x-forwarded-for')?.split(',').at(-1)?.trim();
  const https =
    behindProxy && (headerText(request, 'x-forwarded-proto') ?? new URL(origin).protocol).startsWith('https');
  request.headers[ADDRESS_HEADER] = (behindProxy && forwarded) || peer;
  request.headers[SECURE_HEADER] = https ? '1' : '0';
}

function headerText(request: IncomingMessage, name: string): string | undefined {
  const value = request.headers[name];
  return Array.isArray(value) ? value[0] : value;
}

function refuseStopping(response: ServerResponse): void {
  const message = say`The server is stopping. Try again in a moment.`;
  const body: ErrorBody = { error: { code: 'stopping', message } };
  response.writeHead(503, { 'content-type': 'application/json', connection: 'close', 'retry-after': '5' });
  response.end(JSON.stringify(body));
}

function fail(thrown: unknown, request: IncomingMessage, response: ServerResponse): void {
  logError('request-failed', thrown, { method: request.method, path: request.url?.split('?')[0] });
  if (response.headersSent) response.destroy();
  else response.writeHead(500).end();
}

function takePort(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (thrown: NodeJS.ErrnoException) => reject(portProblem(thrown, port)));
    server.listen(port, () => resolve());
  });
}

function portProblem(thrown: NodeJS.ErrnoException, port: number): unknown {
  if (thrown.code === 'EADDRINUSE') {
    return new Problem(
      'port-in-use',
      `Port ${port} is in use by another program. Stop it or set PORT to another.`,
    );
  }
  if (thrown.code === 'EACCES') {
    return new Problem('port-in-use', `This user may not open port ${port}. Set PORT to one above 1023.`);
  }
  return thrown;
}

async function closeServer(server: Server, sockets: ReadonlySet<Socket>, graceMs: number): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  server.closeIdleConnections();
  const cut = setTimeout(() => {
    for (const socket of sockets) socket.destroy();
  }, graceMs);
  await closed;
  clearTimeout(cut);
  for (const socket of sockets) socket.destroy();
}
