/**
 * Writes a migration: the SQL that takes the committed migrations to schema.prisma.
 *
 * Use: `node --import tsx prisma/new-migration.ts <name in kebab-case>`, then read the SQL and commit it.
 * In the flow: developer -> [new migration] -> prisma/migrations. IO: an in-memory database, prisma/.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { migrationsBehindSchema } from '#server/store/drift.ts';
import { PRISMA_FOLDER } from '#server/store/migration-engine.ts';

const name = process.argv[2] ?? '';
if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name)) {
  process.stderr.write(
    'Name the migration in kebab-case: node --import tsx prisma/new-migration.ts add-plans\n',
  );
  process.exit(1);
}
const sql = await migrationsBehindSchema();
if (sql === null) {
  process.stdout.write('The migrations already build schema.prisma; there is nothing to write.\n');
} else {
  const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
  const folder = join(PRISMA_FOLDER, 'migrations', `${stamp}_${name.replaceAll('-', '_')}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'migration.sql'), sql);
  process.stdout.write(`${folder}\n`);
}
