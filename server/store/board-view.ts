/** One board as a page shows it: its pictures and its people. IO: the database. */

import { DRYINGS, PHOTO_LIGHTS, RIGHTS } from '../core/contract/picture-choices.ts';
import type { BoardView, MemberView, PictureView } from '../core/contract/responses.ts';
import { type BoardRole, InviteRole } from '../core/contract/roles.ts';
import { NOBODY } from './boards.ts';
import { database } from './database.ts';

const PERSON = { select: { id: true, name: true } } as const;

/** The board for one person who may see it in that role, or null when it went meanwhile. */
export async function readBoardView(
  boardId: string,
  me: { id: string; name: string },
  role: BoardRole,
): Promise<BoardView | null> {
  const board = await database().board.findUnique({
    where: { id: boardId },
    include: {
      owner: PERSON,
      members: { include: { person: PERSON }, orderBy: { createdAt: 'asc' } },
      pictures: { include: { painter: PERSON }, orderBy: { createdAt: 'asc' } },
    },
  });
  if (!board) return null;
  const members = board.members.map(
    (row): MemberView => ({ ...row.person, role: InviteRole.parse(row.role) }),
  );
  return {
    id: board.id,
    title: board.title,
    demo: board.demo,
    scenario: board.scenario,
    role,
    me: { id: me.id, name: me.name },
    owner: board.owner ?? NOBODY,
    pictures: board.pictures.map(pictureView),
    members: board.owner ? [{ ...board.owner, role: 'owner' }, ...members] : members,
  };
}

interface PictureRow {
  id: string;
  kind: string;
  widthPx: number;
  heightPx: number;
  painter: { id: string; name: string };
  followsId: string | null;
  rights: string | null;
  credit: string | null;
  caption: string | null;
  medium: string | null;
  drying: string | null;
  light: string | null;
  createdAt: Date;
}

export function pictureView(row: PictureRow): PictureView {
  return {
    id: row.id,
    kind: row.kind === 'reference' ? 'reference' : 'painting',
    width: row.widthPx,
    height: row.heightPx,
    painter: row.painter,
    follows: row.followsId,
    rights: known(RIGHTS, row.rights),
    credit: row.credit,
    caption: row.caption,
    medium: row.medium,
    drying: known(DRYINGS, row.drying),
    light: known(PHOTO_LIGHTS, row.light),
    createdAt: row.createdAt.toISOString(),
  };
}

/** A stored word where it is one of the choices, else null. */
function known<Choice extends string>(choices: readonly Choice[], stored: string | null): Choice | null {
  return choices.find((choice) => choice === stored) ?? null;
}
