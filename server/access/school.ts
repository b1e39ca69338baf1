/**
 * What the school setting means on a board or in a group: the rules that hold, and whom one sees under which name.
 *
 * In the flow: handlers, pages and rooms -> [school] -> store. IO: the database.
 */
import type { InviteRequest } from '../core/contract/requests.ts';
import type { PersonView } from '../core/contract/responses.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { PRIVATE_INVITE_HOURS, type SchoolRules, stricter } from '../core/contract/school.ts';
import { may } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { wardsInGroup, wardsOn } from '../store/guardians.ts';
import type { Place } from '../store/invites.ts';
import { leadersIn, leadersOn } from '../store/leaders.ts';
import { aliasesOf, groupRules, houseRules, rulesOfItsGroup } from '../store/school.ts';

/** The rules of the installation and of the group together. */
export async function rulesAt(place: Place): Promise<SchoolRules> {
  const own = 'boardId' in place ? await rulesOfItsGroup(place.boardId) : await groupRules(place.groupId);
  return stricter(await houseRules(), own);
}

/** Whom somebody sees under the name that was given; 'all' where names are not kept back from them. */
export type KnownNames = 'all' | ReadonlySet<string>;

/** Those who run the place or teach there, oneself, and the minors one guards are always known by name. */
export async function knownNames(place: Place, meId: string, role: BoardRole): Promise<KnownNames> {
  if (may(role, 'name.see') || !(await rulesAt(place)).aliases) return 'all';
  const [leaders, wards] =
    'boardId' in place
      ? await Promise.all([leadersOn(place.boardId), wardsOn(place.boardId, meId)])
      : await Promise.all([leadersIn(place.groupId), wardsInGroup(place.groupId, meId)]);
  return new Set([...leaders, ...wards, meId]);
}

/** Gives each of these people the name that is theirs to the one who looks. */
export type Naming = <Person extends PersonView>(person: Person) => Person;

/** @param people Everybody who is going to be named. */
export async function namingFor(known: KnownNames, people: readonly PersonView[]): Promise<Naming> {
  if (known === 'all') return (person) => person;
  const aliases = await aliasesOf(people.flatMap(({ id }) => (known.has(id) ? [] : [id])));
  return (person) => {
    const alias = aliases.get(person.id);
    return alias === undefined ? person : { ...person, name: alias };
  };
}

/** @throws Problem 'not-allowed' where links may not be public and this one would be. */
export async function refusePublicInvite(place: Place, { uses, hours }: InviteRequest): Promise<void> {
  if ((uses === 1 && hours <= PRIVATE_INVITE_HOURS) || !(await rulesAt(place)).noPublicLinks) return;
  throw new Problem(
    'not-allowed',
    say`Here an invitation lets in one person and works for at most ${PRIVATE_INVITE_HOURS} hours. Make one for each person; whoever runs the group or the server can change the school setting.`,
  );
}
