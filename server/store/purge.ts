/**
 * Makes deleted rows unreadable in the database's own files, not only for queries.
 *
 * A deleted row lies in its table's file until that is written anew, and in the write-ahead log until that is let go of.
 * The embedded database's log is ours; that of a PostgreSQL server, and its backups, are its operator's. In the flow:
 * leaving for good -> [purge]. IO: the database; other queries wait meanwhile.
 */
import { environment } from '../env.ts';
import { database } from './database.ts';
import { quoted } from './dump-rows.ts';

export async function purgeDeleted(): Promise<void> {
  const store = database();
  const tables = await store.$queryRaw<{ name: string }[]>`
    SELECT table_name::text AS name FROM information_schema.tables
    WHERE table_schema = current_schema() AND table_type = 'BASE TABLE'`;
  const embedded = environment().databaseUrl === null;
  for (const { name } of tables) {
    // A server's own statistics hold values too; the embedded database keeps none.
    await store.$executeRawUnsafe(`VACUUM (FULL${embedded ? '' : ', ANALYZE'}) ${quoted(name)}`);
  }
  if (!embedded) return;
  await store.$executeRawUnsafe('SET wal_recycle = off');
  await store.$queryRawUnsafe('SELECT pg_switch_wal()::text');
  await store.$executeRawUnsafe('CHECKPOINT');
  await store.$executeRawUnsafe('RESET wal_recycle');
}
