/**
 * Prisma's driver adapter over PGlite, with two holes of the published adapter closed.
 *
 * The published one (pglite-prisma-adapter 0.7.2) does not wait for a script, so a failed migration looks
 * applied, and swallows an error at COMMIT, so a full disk looks like success. Queries still go through it.
 * In the flow: open-database -> [adapter] -> Prisma. IO: the database.
 */
import type { PGlite, Transaction as PGliteTransaction } from '@electric-sql/pglite';
import type {
  SqlDriverAdapter,
  SqlMigrationAwareDriverAdapterFactory,
  Transaction,
} from '@prisma/driver-adapter-utils';
import { PrismaPGlite } from 'pglite-prisma-adapter';

/** A factory for Prisma's client and for its migration engine; every connection is the one PGlite session. */
export function pgliteAdapter(pglite: PGlite): SqlMigrationAwareDriverAdapterFactory {
  const published = new PrismaPGlite(pglite);
  return {
    provider: 'postgres',
    adapterName: published.adapterName,
    connect: async () => strictConnection(pglite, await published.connect()),
    connectToShadowDb: () => published.connectToShadowDb(),
  };
}

function strictConnection(pglite: PGlite, connection: SqlDriverAdapter): SqlDriverAdapter {
  return {
    provider: connection.provider,
    adapterName: connection.adapterName,
    queryRaw: (query) => connection.queryRaw(query),
    executeRaw: (query) => connection.executeRaw(query),
    executeScript: async (script) => {
      await pglite.exec(script);
    },
    startTransaction: () => startTransaction(pglite),
    getConnectionInfo: () => ({ supportsRelationJoins: true }),
    dispose: () => connection.dispose(),
  };
}

/** An interactive transaction whose commit fails when the database's commit does. */
function startTransaction(pglite: PGlite): Promise<Transaction> {
  return new Promise((resolve, reject) => {
    let finish: () => void = () => {};
    const finished = new Promise<void>((done) => {
      finish = done;
    });
    const outcome = pglite.transaction(async (session) => {
      resolve(
        await transactionOver(
          session,
          () => finish(),
          () => outcome,
        ),
      );
      await finished;
    });
    outcome.catch(reject);
  });
}

async function transactionOver(
  session: PGliteTransaction,
  finish: () => void,
  outcome: () => Promise<void>,
): Promise<Transaction> {
  // The published adapter only calls `query` on what it is given, and a PGlite transaction has that.
  const queries = await new PrismaPGlite(session as unknown as PGlite).connect();
  return {
    provider: 'postgres',
    adapterName: queries.adapterName,
    options: { usePhantomQuery: true },
    queryRaw: (query) => queries.queryRaw(query),
    executeRaw: (query) => queries.executeRaw(query),
    commit: async () => {
      finish();
      await outcome();
    },
    rollback: async () => {
      await session.rollback();
      finish();
      await outcome();
    },
  };
}
