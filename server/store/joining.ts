/**
 * Coming in by an invite: one use of it, the person and their membership, together or not at all.
 *
 * In the flow: access/enter -> [joining] -> database. IO: the database.
 */
import { randomUUID } from 'node:crypto';
import { database } from './database.ts';
import { newGuardianship } from './guardians.ts';
import type { InviteRow, Place } from './invites.ts';
import type { PersonRow } from './people.ts';

type Transaction = Parameters<Parameters<ReturnType<typeof database>['$transaction']>[0]>[0];

/**
 * Uses the invite once. Of two who take the last use in the same moment one gets null.
 *
 * @param who The id of somebody who is known already, or the name of somebody new.
 * @returns The person, or null when the invite is used up or ended meanwhile.
 */
export async function joinByInvite(
  invite: InviteRow,
  who: { id: string } | { name: string },
  now: Date,
): Promise<PersonRow | null> {
  return database().$transaction(async (transaction) => {
    if (!(await spend(transaction, invite.id, now))) return null;
    const select = { id: true, name: true, isHost: true } as const;
    const person =
      'id' in who
        ? await transaction.person.findUniqueOrThrow({ where: { id: who.id }, select })
        : await transaction.person.create({ data: { id: randomUUID(), name: who.name }, select });
    await addTo(transaction, invite, person.id);
    return person;
  });
}

/** The row is locked by the update, so that a second one counts what the first has left. */
async function spend(transaction: Transaction, inviteId: string, now: Date): Promise<boolean> {
  const { count } = await transaction.invite.updateMany({
    where: {
      id: inviteId,
      revokedAt: null,
      expiresAt: { gt: now },
      OR: [{ uses: null }, { used: { lt: transaction.invite.fields.uses } }],
    },
    data: { used: { increment: 1 } },
  });
  return count === 1;
}

async function addTo(transaction: Transaction, invite: InviteRow, personId: string): Promise<void> {
  const { boardId, groupId, role, id: inviteId } = invite;
  if (role === 'guardian') {
    const place = placeOf(invite);
    if (place && invite.wardId) {
      await transaction.guardianship.create({
        data: newGuardianship(place, personId, invite.wardId, inviteId),
      });
    }
  } else if (boardId !== null) {
    await transaction.member.upsert({
      where: { boardId_personId: { boardId, personId } },
      create: { boardId, personId, role, inviteId },
      update: { role, inviteId },
    });
  } else if (groupId !== null) {
    await transaction.groupMember.upsert({
      where: { groupId_personId: { groupId, personId } },
      create: { groupId, personId, role, inviteId },
      update: { role, inviteId },
    });
  }
}

/** What an invite leads to. */
export function placeOf({ boardId, groupId }: Pick<InviteRow, 'boardId' | 'groupId'>): Place | null {
  if (boardId !== null) return { boardId };
  return groupId === null ? null : { groupId };
}
