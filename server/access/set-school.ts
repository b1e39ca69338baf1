/**
 * Setting the school setting: written down, and what is open already is made to fit it.
 *
 * In the flow: handlers -> [set-school] -> store. IO: the database.
 */
import { PRIVATE_INVITE_HOURS, type SchoolRules } from '../core/contract/school.ts';
import { allBoardIds } from '../store/boards.ts';
import { boardsOf } from '../store/groups.ts';
import { closePublicInvites, setGroupRules, setHouseRules } from '../store/school.ts';
import { audited } from './audit.ts';
import type { Visitor } from './session.ts';

/** @returns The boards on which something may have changed. */
export async function setGroupSchool(by: Visitor, groupId: string, rules: SchoolRules): Promise<string[]> {
  await setGroupRules(groupId, rules);
  await shut(rules, groupId);
  await audited.schoolSet(by, groupId, rules);
  return boardsOf(groupId);
}

/** As above, for the whole server. */
export async function setHouseSchool(by: Visitor, rules: SchoolRules): Promise<string[]> {
  await setHouseRules(rules);
  await shut(rules, null);
  await audited.schoolSet(by, null, rules);
  return allBoardIds();
}

async function shut({ noPublicLinks }: SchoolRules, groupId: string | null): Promise<void> {
  if (!noPublicLinks) return;
  await closePublicInvites(groupId, new Date(Date.now() + PRIVATE_INVITE_HOURS * 60 * 60 * 1000));
}
