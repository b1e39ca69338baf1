/**
 * Makes the link that turns whoever opens it into the host, once.
 *
 * In the flow: start and `npm run host-link` -> [host link] -> store. IO: the database.
 */
import { addHostLink } from '../store/host-links.ts';
import { hashToken, newToken } from './tokens.ts';

const HOST_LINK_HOURS = 72;

/** @param origin Where the server is reached, such as http://localhost:3000. @returns The whole address. */
export async function makeHostLink(origin: string, now = new Date()): Promise<string> {
  const token = newToken();
  await addHostLink(hashToken(token), new Date(now.getTime() + HOST_LINK_HOURS * 60 * 60 * 1000));
  return `${origin}/enter?key=${token}`;
}
