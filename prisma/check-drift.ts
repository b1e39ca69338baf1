/**
 * Fails when schema.prisma and the committed migrations would not build the same database.
 *
 * In the flow: npm run check -> [drift]. IO: an in-memory database, reads prisma/.
 */
import { migrationsBehindSchema } from '#server/store/drift.ts';

const sql = await migrationsBehindSchema();
if (sql !== null) {
  process.stderr.write(
    `schema.prisma asks for changes that no migration makes. Write one with prisma/new-migration.ts:\n${sql}\n`,
  );
  process.exit(1);
}
