/** A link for one person to a board or a group, as browser tests need it. */
import type { InviteView } from '#server/core/contract/responses.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';

/** @param place Such as boards/<id> or groups/<id>. @param ward Whom a guardian is invited for. */
export async function aToken(
  server: AServer,
  host: Entered,
  place: string,
  role: string,
  ward?: string,
): Promise<string> {
  const body = { role, hours: 2, uses: 1, ...(ward === undefined ? {} : { ward }) };
  return (await server.json<InviteView>(host, `/api/${place}/invites`, 'POST', body)).token;
}
