/** Facts about this installation, such as that the demo board was made. IO: the database. */
import { database } from './database.ts';

export type FactName = 'demo-made' | 'version' | 'school' | 'seal';

/** The fact's text, or null when nobody wrote it yet. */
export async function readFact(name: FactName): Promise<string | null> {
  return (await database().installation.findUnique({ where: { key: name } }))?.value ?? null;
}

export async function writeFact(name: FactName, value: string): Promise<void> {
  await database().installation.upsert({
    where: { key: name },
    create: { key: name, value },
    update: { value },
  });
}
