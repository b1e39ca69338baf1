/** Links that make whoever opens them host, once. Only the hash of a token lies here. IO: the database. */
import { database } from './database.ts';

export async function addHostLink(tokenHash: string, expiresAt: Date): Promise<void> {
  await database().hostLink.create({ data: { tokenHash, expiresAt } });
}

/** Uses a link up. @returns Whether it was there, unused and not expired; of two at once one gets true. */
export async function spendHostLink(tokenHash: string, now: Date): Promise<boolean> {
  const { count } = await database().hostLink.updateMany({
    where: { tokenHash, usedAt: null, expiresAt: { gt: now } },
    data: { usedAt: now },
  });
  return count === 1;
}

/** Whether a link is there, unused and not expired, without using it. */
export async function hostLinkWorks(tokenHash: string, now: Date): Promise<boolean> {
  return (
    (await database().hostLink.count({ where: { tokenHash, usedAt: null, expiresAt: { gt: now } } })) > 0
  );
}
