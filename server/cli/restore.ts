/**
 * `npm run -s restore -- FILE`: puts a backup into an empty data folder, and into an empty database where DATABASE_URL
 * names one. IO: FILE, the data folder, the database.
 */
import { resolve } from 'node:path';
import { environment } from '../env.ts';
import { restoreBackup } from '../outward/restore.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

async function restore(words: string[]): Promise<string> {
  const { positionals } = readWords(words, {});
  const [file] = positionals;
  if (positionals.length !== 1 || !file) throw new UsageError('One backup to restore is needed.');
  const settings = environment();
  const { at, files, rows } = await restoreBackup(
    resolve(process.env.INIT_CWD ?? process.cwd(), file),
    settings,
  );
  return `Restored into ${settings.dataFolderName}: ${rows} rows and ${files} files, as of ${at}. Start the server with npm start.`;
}

await runCommand(restore, {
  usage: 'Usage: npm run -s restore -- FILE',
  failed: 'The backup could not be restored',
});
