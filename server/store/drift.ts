/**
 * The difference between what the migrations build and what schema.prisma says.
 *
 * In the flow: developer's tools only. IO: an in-memory database, reads prisma/.
 */
import { PGlite } from '@electric-sql/pglite';
import type { DiffTarget } from '@prisma/schema-engine-wasm';
import {
  migrationNames,
  NO_FILTER,
  readMigrations,
  readSchema,
  startMigrationEngine,
} from './migration-engine.ts';
import { pgliteAdapter } from './pglite-adapter.ts';

/** SQL that would take the migrations to the schema, or null when they agree. */
export async function migrationsBehindSchema(): Promise<string | null> {
  const pglite = await PGlite.create('memory://');
  const engine = await startMigrationEngine(pgliteAdapter(pglite));
  try {
    const from =
      migrationNames().length === 0
        ? ({ tag: 'empty' } as const)
        : ({ tag: 'migrations', ...readMigrations() } as const);
    const to: DiffTarget = { tag: 'schemaDatamodel', files: [readSchema()] };
    const result = await engine.diff({ from, to, script: true, exitCode: true, filters: NO_FILTER });
    return result.exitCode === 0 ? null : (result.stdout ?? '');
  } finally {
    engine.free();
    await pglite.close();
  }
}
