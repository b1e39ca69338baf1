/**
 * Who may do what: the one table that HTTP, rooms and screens go by. `DEVELOPERS.md` shows it; a test compares
 * the two and tries every cell.
 *
 * In the flow: [table] -> may. Pure.
 */
import { BOARD_ROLES, type BoardRole } from '../contract/roles.ts';

/** How far an action reaches: to everything, only to one's own, only to that of a minor one guards, or not at all. */
export type Reach = 'any' | 'own' | 'ward' | 'none';

interface Row {
  /** Completes "who may …". */
  says: string;
  reach: Readonly<Record<BoardRole, Reach>>;
}

const short = { '+': 'any', o: 'own', w: 'ward', '-': 'none' } as const;

/** @param cells One sign a role, in the order of `BOARD_ROLES`: + any, o own, w ward, - none. */
function row(cells: string, says: string): Row {
  const signs = cells.split(' ');
  const reach = BOARD_ROLES.map((role, at) => {
    const sign = signs[at];
    if (sign !== '+' && sign !== 'o' && sign !== 'w' && sign !== '-') throw new Error(`No cell for ${role}.`);
    return [role, short[sign]];
  });
  return { says, reach: Object.fromEntries(reach) as Row['reach'] }; // one entry for each role, just made
}

/** Columns: host, owner, teacher, painter, peer, viewer, guardian. */
export const PERMISSIONS = {
  'board.see': row('+ + + + + + +', 'see a board, its pictures and figures'),
  'board.rename': row('+ + - - - - -', 'rename the board'),
  'board.take': row('+ + - - - - -', 'take the whole board away as one archive'),
  'board.delete': row('+ + - - - - -', 'delete the board'),
  'reference.post': row('+ + + - - - -', 'post a reference'),
  'painting.post': row('+ + + + - - -', 'post a painting'),
  'painting.note': row('+ o + o o - -', 'note paint, drying and light of a painting'),
  'picture.withdraw': row('+ + + o o o o', 'take a picture back'),
  'picture.unshown': row('+ + + o o o w', 'see pictures that the others may not be shown'),
  'sheet.take': row(
    '+ + + o o o w',
    'take along the sheet of a painting (others’: where they may be shown outside)',
  ),
  'invite.make': row('+ + + - - - -', 'invite, list invitations'),
  'invite.end': row('+ + + - - - -', 'take an invitation back'),
  'member.role': row('+ + - - - - -', 'change what a member is'),
  'member.end': row('+ + o o o o o', 'end somebody’s access (one’s own: leave)'),
  'board.group': row('+ + - - - - -', 'move the board into a group or out of one'),
  'board.hand': row('+ + - - - - -', 'hand the board on to somebody else'),
  'board.over': row('+ + - - - - -', 'say that the class is over: what may not be kept is deleted'),
  'report.make': row('+ + + + + + +', 'report a remark, a picture or somebody'),
  'report.see': row('+ + + o o o o', 'see reports, but of oneself (one’s own: that it was seen)'),
  'report.close': row('+ + + - - - -', 'act on a report and close it'),
  'block.make': row('- - - + + + +', 'block somebody who neither runs the board nor teaches on it'),
  'name.see': row('+ + + o o o w', 'see names where the school setting keeps them back'),
  'audit.see': row('+ + + - - - -', 'read what was done to others on the board, and what was deleted'),
  'consent.see': row('+ + + o o o w', 'see what was said about consent'),
  'impressions.see': row('+ + + + + + +', 'read the first impressions of a painting once they are revealed'),
  'consent.say': row('o o o o o o w', 'give or withdraw consent'),
  'group.see': row('+ + + + + + +', 'see a group, its members and boards'),
  'group.rename': row('+ + - - - - -', 'rename the group'),
  'group.delete': row('+ + - - - - -', 'delete the group, its boards stay'),
  'group.board': row('+ + + - - - -', 'make a board for the group'),
  'group.invite.make': row('+ + + - - - -', 'invite to the group, list invitations'),
  'group.invite.end': row('+ + + - - - -', 'take a group’s invitation back'),
  'group.member.role': row('+ + - - - - -', 'change what a member of the group is'),
  'group.member.end': row('+ + o o o o o', 'end membership of the group (own: leave)'),
  'group.school': row('+ + - - - - -', 'set what the group does not allow: the school setting'),
  'ask.make': row('o o o o o - -', 'ask for a look at a painting, take the asking back'),
  'ask.see': row('+ + + o o o w', 'see that a look was asked for, and the promised day'),
  'ask.promise': row('+ + + - - - -', 'promise a day for a look, take the promise back'),
  'ask.answer': row('+ + + - - - -', 'say that a look was given'),
  'queue.see': row('+ + + - - - -', 'have what is asked for in one’s queue, with what was said last time'),
  'path.see': row('+ + + o o o w', 'see a painter’s path: what comes back, what was tried, what helped'),
  'homework.set': row('+ o + o - - -', 'set homework for a painting'),
  'homework.see': row('+ + + o o o w', 'see homework and whether it is in'),
  'homework.change': row(
    '+ o + o - - -',
    'move, close or take back homework (own: what one set for oneself)',
  ),
  'homework.answer': row('o o o o - - -', 'post the picture that answers homework'),
  'return.link': row('+ - - - - - -', 'make a link for somebody to come back by'),
  'house.record': row('+ - - - - - -', 'read what was done to others anywhere on the server'),
  'house.school': row('+ - - - - - -', 'set what the whole server does not allow'),
  'room.setup': row(
    '+ + + - - - -',
    'write planes, air, conditions, plan, wall; outlines, answers and hidden remarks of references',
  ),
  'room.painting': row(
    '+ o + o o - -',
    'write outlines, photo, intention, focus, meant and answers of a painting',
  ),
  'room.cards': row('+ - + - - - -', 'write adjustment cards'),
  'room.result': row('- - - - - - -', 'write results (the server alone)'),
  'room.mark': row('+ o + o o - -', 'make a mark, change or remove it'),
  'room.nod': row('o o o o o - -', 'nod at a remark, take the nod back'),
  'room.hide': row('+ o + o o - -', 'hide a remark on a painting, show it again'),
  'room.sketch': row('o o o o o - -', 'allow the others to sketch over a painting'),
  'room.class': row('+ - + - - - -', 'run a class: order, turns, steps, who marks, whose view all look with'),
  'room.kept': row('- - - - - - -', 'write the clock of a class and what is revealed (the server alone)'),
  'room.said': row('o o o o o - -', 'say back what one does first to a painting'),
  'room.silent': row('o o o o o - -', 'write first impressions, read them before they are revealed'),
} satisfies Record<string, Row>;

export type Action = keyof typeof PERMISSIONS;
