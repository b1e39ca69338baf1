/** One board as a page shows it: its pictures and its people. IO: the database. */

import { RIGHTS, type Rights } from '../core/contract/picture-choices.ts';
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
    rights: rightsOf(row.rights),
    credit: row.credit,
    caption: row.caption,
    createdAt: row.createdAt.toISOString(),
  };
}

function rightsOf(stored: string | null): Rights | null {
  return RIGHTS.find((known) => known === stored) ?? null;
}
