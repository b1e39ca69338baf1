/**
 * The audit: what hosts, owners and teachers did to others, one sentence each, with names as they were.
 *
 * Never a picture, never the words of a remark. Kept 365 days, then the daily round removes it.
 * In the flow: handlers, after the deed -> [audit] -> store. IO: the database.
 */
import type { RecordView } from '../core/contract/decency.ts';
import type { InviteRole, MemberRole } from '../core/contract/roles.ts';
import type { SchoolRules } from '../core/contract/school.ts';
import { may } from '../core/permissions/may.ts';
import { say } from '../core/say/say.ts';
import { addAudit, listAudit, listDeletions } from '../store/audit.ts';
import { boardName } from '../store/boards.ts';
import { groupName } from '../store/groups.ts';
import type { Place } from '../store/invites.ts';
import { ledBy } from '../store/leaders.ts';
import { namesOf } from '../store/people.ts';
import { roleOn } from './roles.ts';
import type { Visitor } from './session.ts';

export const AUDIT_DAYS = 365;

/** Everything that is written down. */
type Did =
  | 'role-changed'
  | 'access-ended'
  | 'invite-made'
  | 'invite-ended'
  | 'picture-withdrawn'
  | 'remark-removed'
  | 'report-closed'
  | 'return-link-made'
  | 'school-set'
  | 'board-deleted'
  | 'board-moved'
  | 'board-handed-on'
  | 'class-over'
  | 'group-deleted';

/** As they stand in the sentences below. */
const ROLE_WORDS: Record<InviteRole, string> = {
  teacher: say`teacher`,
  painter: say`painter`,
  peer: say`peer`,
  viewer: say`onlooker`,
  guardian: say`guardian`,
};

const quoted = (name: string) => say`“${name}”`;

async function write({ personId }: Visitor, did: Did, place: Place | null, sentence: string): Promise<void> {
  const boardId = place && 'boardId' in place ? place.boardId : null;
  const groupId = place && 'groupId' in place ? place.groupId : null;
  await addAudit({ actorId: personId, did, boardId, groupId, sentence });
}

async function titleOf(place: Place): Promise<string> {
  const name = 'boardId' in place ? await boardName(place.boardId) : await groupName(place.groupId);
  return quoted(name ?? '');
}

async function nameOf(personId: string): Promise<string> {
  return (await namesOf([personId])).get(personId) ?? say`somebody who is gone`;
}

/** One function for each deed; each writes one sentence. What people do to themselves is not written down. */
export const audited = {
  async roleChanged(by: Visitor, place: Place, personId: string, role: MemberRole) {
    const who = await nameOf(personId);
    const title = await titleOf(place);
    await write(by, 'role-changed', place, say`${by.name} made ${who} ${ROLE_WORDS[role]} in ${title}.`);
  },
  async accessEnded(by: Visitor, place: Place, personId: string) {
    if (by.personId === personId) return;
    await write(
      by,
      'access-ended',
      place,
      say`${by.name} ended the access of ${await nameOf(personId)} to ${await titleOf(place)}.`,
    );
  },
  async inviteMade(by: Visitor, place: Place, role: InviteRole, uses: number | null) {
    const many =
      uses === null ? say`any number of people` : uses === 1 ? say`one person` : say`${uses} people`;
    await write(
      by,
      'invite-made',
      place,
      say`${by.name} made an invitation to ${await titleOf(place)} as ${ROLE_WORDS[role]} for ${many}.`,
    );
  },
  async inviteEnded(by: Visitor, place: Place) {
    await write(
      by,
      'invite-ended',
      place,
      say`${by.name} took an invitation to ${await titleOf(place)} back, with the access of who came by it.`,
    );
  },
  async pictureWithdrawn(by: Visitor, boardId: string, painterId: string) {
    if (by.personId === painterId) return;
    const place = { boardId };
    await write(
      by,
      'picture-withdrawn',
      place,
      say`${by.name} took a picture of ${await nameOf(painterId)} back from ${await titleOf(place)}.`,
    );
  },
  async remarkRemoved(by: Visitor, boardId: string, authorId: string) {
    const place = { boardId };
    await write(
      by,
      'remark-removed',
      place,
      say`${by.name} removed a remark of ${await nameOf(authorId)} from ${await titleOf(place)}.`,
    );
  },
  async reportClosed(by: Visitor, boardId: string, personId: string) {
    const place = { boardId };
    await write(
      by,
      'report-closed',
      place,
      say`${by.name} closed a report about ${await nameOf(personId)} in ${await titleOf(place)}.`,
    );
  },
  async returnLinkMade(by: Visitor, personId: string) {
    const who = await nameOf(personId);
    await write(by, 'return-link-made', null, say`${by.name} made a link for ${who} to come back by.`);
  },
  /** @param groupId Null for the whole server. */
  async schoolSet(by: Visitor, groupId: string | null, rules: SchoolRules) {
    const place = groupId === null ? null : { groupId };
    const set = rulesInWords(rules);
    const sentence =
      place === null
        ? say`${by.name} set for the whole server: ${set}.`
        : say`${by.name} set for ${await titleOf(place)}: ${set}.`;
    await write(by, 'school-set', place, sentence);
  },
  async boardDeleted(by: Visitor, boardId: string, title: string) {
    await write(by, 'board-deleted', { boardId }, say`${by.name} deleted the board ${quoted(title)}.`);
  },
  /** @param groupId Null = it belongs to none now. */
  async boardMoved(by: Visitor, boardId: string, groupId: string | null) {
    const place = { boardId };
    const title = await titleOf(place);
    const sentence =
      groupId === null
        ? say`${by.name} moved the board ${title} out of its group.`
        : say`${by.name} moved the board ${title} into ${await titleOf({ groupId })}.`;
    await write(by, 'board-moved', place, sentence);
  },
  async boardHandedOn(by: Visitor, boardId: string, personId: string) {
    const place = { boardId };
    await write(
      by,
      'board-handed-on',
      place,
      say`${by.name} handed the board ${await titleOf(place)} on to ${await nameOf(personId)}.`,
    );
  },
  async classOver(by: Visitor, boardId: string, pictures: number) {
    const place = { boardId };
    const title = await titleOf(place);
    const sentence =
      pictures === 1
        ? say`${by.name} said that the class is over on ${title}; one picture was deleted.`
        : say`${by.name} said that the class is over on ${title}; ${pictures} pictures were deleted.`;
    await write(by, 'class-over', place, sentence);
  },
  async groupDeleted(by: Visitor, groupId: string, name: string) {
    await write(by, 'group-deleted', { groupId }, say`${by.name} deleted the group ${quoted(name)}.`);
  },
};

function rulesInWords(rules: SchoolRules): string {
  const said = [
    rules.noPublicLinks ? say`no public links` : '',
    rules.noMixingHints ? say`no mixing hints` : '',
    rules.aliases ? say`made-up names` : '',
    rules.deleteAfterDays === null ? '' : say`deletion after ${rules.deleteAfterDays} days`,
    rules.deleteOn === null ? '' : say`deletion on ${rules.deleteOn}`,
  ].filter(Boolean);
  return said.join(', ') || say`nothing is held back`;
}

/** What was done and deleted on one board, newest first. */
export async function recordOfBoard(boardId: string): Promise<RecordView> {
  return {
    audit: await listAudit([boardId]),
    deletions: await listDeletions({ boardIds: [boardId], groupIds: [] }),
  };
}

/** What was done and deleted anywhere here, newest first. */
export async function recordOfHouse(): Promise<RecordView> {
  return { audit: await listAudit(null), deletions: await listDeletions(null) };
}

/**
 * What somebody may read of all that: of one board, or of all they may; null where there is nothing for them.
 *
 * @param boardId Null = everything that is for them.
 */
export async function recordFor(visitor: Visitor, boardId: string | null): Promise<RecordView | null> {
  if (boardId !== null) {
    const role = await roleOn(visitor, boardId);
    return role && may(role, 'audit.see') ? recordOfBoard(boardId) : null;
  }
  if (visitor.isHost) return recordOfHouse();
  const led = await ledBy(visitor.personId);
  if (led.boardIds.length + led.groupIds.length === 0) return null;
  return { audit: await listAudit(led.boardIds), deletions: await listDeletions(led) };
}
