/**
 * Every row that is somebody's own: for the archive of their data, and for their deletion.
 *
 * In the flow: own data, leaving for good -> [own-rows]. IO: the database.
 */
import { database } from './database.ts';

/** All that the tables hold of a person, without what only proves who they are; null when there is nobody. */
export async function ownRows(personId: string) {
  const store = database();
  const person = await store.person.findUnique({
    where: { id: personId },
    select: { id: true, name: true, isHost: true, createdAt: true, email: true, alias: true },
  });
  if (!person) return null;
  const board = { board: { select: { id: true, title: true } } };
  const [
    owned,
    member,
    groups,
    guardianships,
    consents,
    asks,
    phrases,
    looks,
    reports,
    blocks,
    sessions,
    did,
    homework,
  ] = await Promise.all([
    store.board.findMany({
      where: { ownerId: personId },
      select: { id: true, title: true, createdAt: true },
    }),
    store.member.findMany({ where: { personId }, include: board }),
    store.groupMember.findMany({
      where: { personId },
      include: { group: { select: { id: true, name: true } } },
    }),
    store.guardianship.findMany({ where: { OR: [{ guardianId: personId }, { wardId: personId }] } }),
    store.consent.findMany({ where: { OR: [{ personId }, { saidById: personId }] }, include: board }),
    store.ask.findMany({ where: { askedById: personId }, include: board }),
    store.phrase.findMany({ where: { personId }, orderBy: { place: 'asc' } }),
    store.look.findMany({ where: { personId }, select: { boardId: true, at: true } }),
    // What a report quotes is somebody else's.
    store.report.findMany({ where: { reporterId: personId }, omit: { quoted: true } }),
    store.block.findMany({ where: { blockerId: personId } }),
    store.session.findMany({ where: { personId }, select: { createdAt: true, expiresAt: true } }),
    store.auditEntry.findMany({ where: { actorId: personId }, orderBy: { at: 'asc' } }),
    store.homework.findMany({
      where: { OR: [{ painterId: personId }, { setById: personId }] },
      include: board,
    }),
  ]);
  return {
    person,
    owned,
    member,
    groups,
    guardianships,
    consents,
    asks,
    phrases,
    looks,
    reports,
    blocks,
    sessions,
    did,
    homework,
  };
}

/** Their pictures on every board, the oldest first. */
export function ownPictures(personId: string) {
  return database().picture.findMany({
    where: { painterId: personId },
    include: { board: { select: { id: true, title: true } } },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
  });
}

/** Boards and groups that would be left without an owner. */
export async function heldBy(personId: string): Promise<{
  boards: { id: string; title: string }[];
  groups: { id: string; name: string }[];
}> {
  const where = { where: { ownerId: personId } };
  const [boards, groups] = await Promise.all([
    database().board.findMany({ ...where, select: { id: true, title: true }, orderBy: { title: 'asc' } }),
    database().group.findMany({ ...where, select: { id: true, name: true }, orderBy: { name: 'asc' } }),
  ]);
  return { boards, groups };
}

/**
 * Removes the person and every row of theirs; what others wrote of them stays without their words. Their pictures must
 * be gone.
 */
export async function removePerson(personId: string): Promise<void> {
  const store = database();
  await store.$transaction([
    store.report.updateMany({ where: { personId }, data: { quoted: '' } }),
    store.ask.updateMany({ where: { askedOfId: personId }, data: { askedOfId: null } }),
    store.ask.updateMany({ where: { promisedById: personId }, data: { promisedById: null } }),
    store.ask.updateMany({ where: { answeredById: personId }, data: { answeredById: null } }),
    store.consent.deleteMany({ where: { saidById: personId, personId } }),
    store.person.deleteMany({ where: { id: personId } }),
  ]);
}
