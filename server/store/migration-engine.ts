/**
 * Prisma's migration engine as WebAssembly: no binary to download, the same SQL and the same
 * `_prisma_migrations` table as Prisma's own command line.
 *
 * In the flow: open-database -> [engine] -> database; also behind prisma/new-migration.ts and check-drift.ts.
 * IO: reads prisma/ and, through the adapter, the database.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  bindMigrationAwareSqlAdapterFactory,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import type { MigrationList, SchemaEngine } from '@prisma/schema-engine-wasm';

export const PRISMA_FOLDER = fileURLToPath(new URL('../../prisma', import.meta.url));
export const NO_FILTER = { externalTables: [], externalEnums: [] };

const SCHEMA_PATH = join(PRISMA_FOLDER, 'schema.prisma');
const MIGRATIONS_FOLDER = join(PRISMA_FOLDER, 'migrations');
const LOCKFILE = 'migration_lock.toml';

/** prisma/schema.prisma in the shape the engine takes. */
export function readSchema(): { path: string; content: string } {
  return { path: SCHEMA_PATH, content: readFileSync(SCHEMA_PATH, 'utf8') };
}

/** Names of the migrations this version carries, oldest first. */
export function migrationNames(folder = MIGRATIONS_FOLDER): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

/**
 * The migrations with their SQL, in the shape the engine takes.
 *
 * @param only Names of those that are wanted; all when left out.
 */
export function readMigrations(only?: ReadonlySet<string>, folder = MIGRATIONS_FOLDER): MigrationList {
  return {
    baseDir: folder,
    lockfile: { path: LOCKFILE, content: 'provider = "postgresql"\n' },
    shadowDbInitScript: '',
    migrationDirectories: migrationNames(folder)
      .filter((name) => only?.has(name) ?? true)
      .map((name) => ({
        path: name,
        migrationFile: {
          path: 'migration.sql',
          content: { tag: 'ok', value: readFileSync(join(folder, name, 'migration.sql'), 'utf8') },
        },
      })),
  };
}

/** Starts the engine over a database. The caller frees it. */
export async function startMigrationEngine(
  adapter: SqlMigrationAwareDriverAdapterFactory,
): Promise<SchemaEngine> {
  instantiated ??= instantiate();
  const { SchemaEngine: Engine } = await instantiated;
  const schema = readSchema();
  return Engine.new(
    { datamodels: [[schema.path, schema.content]] },
    () => {},
    bindMigrationAwareSqlAdapterFactory(adapter),
  );
}

/** The glue around the WebAssembly, which the package's types do not describe. */
type Glue = WebAssembly.ModuleImports & {
  __wbg_set_wasm(exports: WebAssembly.Exports): void;
  SchemaEngine: typeof SchemaEngine;
};

/** Once for a process: the glue keeps views of one instance's memory, and a second would be read through them. */
let instantiated: Promise<Glue> | undefined;

async function instantiate(): Promise<Glue> {
  const require = createRequire(import.meta.url);
  const wasmPath = join(require.resolve('@prisma/schema-engine-wasm'), '..', 'schema_engine_bg.wasm');
  // The package's types describe its bundler entry; the glue module beside it is what instantiates by hand.
  const glue = (await import('@prisma/schema-engine-wasm/schema_engine_bg')) as unknown as Glue;
  const { instance } = await WebAssembly.instantiate(readFileSync(wasmPath), {
    './schema_engine_bg.js': glue,
  });
  glue.__wbg_set_wasm(instance.exports);
  (instance.exports as { __wbindgen_start?: () => void }).__wbindgen_start?.();
  return glue;
}
