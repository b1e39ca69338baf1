/**
 * Opens a PostgreSQL server given by DATABASE_URL: one process at a time, same schema, same migrations.
 *
 * In the flow: open-database -> [postgres]. IO: the network to PostgreSQL.
 */
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { PrismaClient } from '../../prisma/generated/client.ts';
import { Problem } from '../core/problem.ts';
import { logEvent } from '../log.ts';
import { applyMigrations, migrationState } from './migrations.ts';

/** Any constant serves; all versions of Veilstep must use the same. */
const ADVISORY_LOCK = 86_345_743;
const CONNECT_TIMEOUT_MS = 10_000;

export interface PostgresConnection {
  client: PrismaClient;
  migrated: string[];
  backup: null;
  close(): Promise<void>;
}

/**
 * Connects, takes the advisory lock, migrates.
 *
 * @param url postgresql://...; never repeated in a message, for it holds a password.
 * @param asItIs Leaves the schema as it is.
 * @throws Problem 'database-unreachable', 'data-folder-busy' or 'database-newer'.
 */
export async function openPostgres(url: string, asItIs = false): Promise<PostgresConnection> {
  const guard = await lockPostgres(url);
  try {
    const adapter = new PrismaPg({ connectionString: url });
    const opened = { client: new PrismaClient({ adapter }), backup: null, close: () => guard.end() };
    if (asItIs) return { ...opened, migrated: [] };
    const state = await migrationState(async (sql) => (await guard.query<Record<string, unknown>>(sql)).rows);
    if (state.applied.length > 0 && state.missing.length > 0) {
      logEvent('postgres-backup-is-yours', {
        message:
          'DATABASE_URL is set, so no copy is made before migrating; pg_dump is yours to run before an upgrade.',
      });
    }
    return { ...opened, migrated: await applyMigrations(adapter, state) };
  } catch (thrown) {
    await guard.end();
    throw thrown;
  }
}

/**
 * A connection that holds the lock as long as it is open.
 *
 * @throws Problem 'database-unreachable' or 'data-folder-busy'.
 */
export async function lockPostgres(url: string): Promise<pg.Client> {
  const guard = await connect(url);
  try {
    await takeAdvisoryLock(guard);
    return guard;
  } catch (thrown) {
    await guard.end();
    throw thrown;
  }
}

async function connect(url: string): Promise<pg.Client> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS });
  client.on('error', (thrown) => logEvent('postgres-connection-lost', { message: thrown.message }));
  try {
    await client.connect();
    return client;
  } catch (thrown) {
    await client.end().catch(() => {});
    throw unreachable(url, thrown);
  }
}

async function takeAdvisoryLock(guard: pg.Client): Promise<void> {
  const { rows } = await guard.query<{ taken: boolean }>('SELECT pg_try_advisory_lock($1) AS taken', [
    ADVISORY_LOCK,
  ]);
  if (rows[0]?.taken) return;
  throw new Problem(
    'data-folder-busy',
    'Another Veilstep already uses this PostgreSQL database, and one process at a time is supported. ' +
      'Stop it or set DATABASE_URL to another database.',
  );
}

function unreachable(url: string, thrown: unknown): Problem {
  const { hostname, port, pathname } = new URL(url);
  const password = decodeURIComponent(new URL(url).password);
  const said = saidBy(thrown);
  const reason = password ? said.replaceAll(password, '…') : said;
  return new Problem(
    'database-unreachable',
    `The PostgreSQL database ${pathname.slice(1) || '(unnamed)'} at ${hostname}:${port || 5432} could not be ` +
      `opened: ${reason}. Check DATABASE_URL and that the server runs.`,
    { cause: thrown },
  );
}

/** A refused connection to a name with two addresses comes as an error without a message of its own. */
function saidBy(thrown: unknown): string {
  if (thrown instanceof AggregateError && thrown.errors.length > 0) return saidBy(thrown.errors[0]);
  return thrown instanceof Error ? thrown.message : String(thrown);
}
