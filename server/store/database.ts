/**
 * The one database client of this process.
 *
 * Next bundles its own copy of this module; both copies find the same client behind a global symbol.
 * Opening and closing live in open-database.ts, so that a handler's bundle carries no engine.
 * In the flow: everything in store/ -> [client] -> PGlite or PostgreSQL. IO: none itself.
 */
import type { PrismaClient } from '../../prisma/generated/client.ts';

const CLIENT = Symbol.for('veilstep.database');

type Holder = Record<symbol, PrismaClient | undefined>;

/** @throws Error before the start opened the database, or after the stop closed it: a bug. */
export function database(): PrismaClient {
  const client = (globalThis as unknown as Holder)[CLIENT];
  if (!client) throw new Error('The database is not open.');
  return client;
}

/** Puts the opened client where both copies of this module find it; undefined takes it away. */
export function offerDatabase(client: PrismaClient | undefined): void {
  (globalThis as unknown as Holder)[CLIENT] = client;
}
