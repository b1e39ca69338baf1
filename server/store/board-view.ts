/** One board as a page shows it: its pictures and its people. IO: the database. */

import { DRYINGS, PHOTO_LIGHTS, RIGHTS } from '../core/contract/picture-choices.ts';
import type { BoardView, MemberView, PictureView } from '../core/contract/responses.ts';
import { type BoardRole, MemberRole } from '../core/contract/roles.ts';
import { may } from '../core/permissions/may.ts';
import { NOBODY } from './boards.ts';
import { database } from './database.ts';
import { guardianshipsOn } from './guardians.ts';

const PERSON = { select: { id: true, name: true } } as const;

/** A board without what depends on who else is blocked or kept back; `access/consent` adds that. */
export type StoredBoard = Omit<BoardView, 'blocked' | 'school' | 'alias'>;

/** The board for one person who may see it in that role, or null when it went meanwhile. */
export async function readBoardView(
  boardId: string,
  me: { id: string; name: string },
  role: BoardRole,
): Promise<StoredBoard | null> {
  const board = await database().board.findUnique({
    where: { id: boardId },
    include: {
      owner: PERSON,
      group: {
        include: { owner: PERSON, members: { include: { person: PERSON }, orderBy: { createdAt: 'asc' } } },
      },
      members: { include: { person: PERSON }, orderBy: { createdAt: 'asc' } },
      pictures: { include: { painter: PERSON }, orderBy: { createdAt: 'asc' } },
    },
  });
  if (!board) return null;
  return {
    id: board.id,
    title: board.title,
    demo: board.demo,
    scenario: board.scenario,
    role,
    me: { id: me.id, name: me.name },
    owner: board.owner ?? NOBODY,
    pictures: board.pictures.map(pictureView),
    group: board.group && { id: board.group.id, name: board.group.name },
    members: [...membersOf(board), ...(await guardiansFor(boardId, me.id, role))],
  };
}

interface Listed {
  person: { id: string; name: string };
  role: string;
}

interface Peopled {
  owner: { id: string; name: string } | null;
  members: Listed[];
  group: { owner: { id: string; name: string } | null; members: Listed[] } | null;
}

/** The owner, the board's own members, then those the group brings; what the board says of somebody stands. */
function membersOf({ owner, members, group }: Peopled): MemberView[] {
  const listed = new Map<string, MemberView | null>();
  const put = (person: { id: string; name: string }, role: string) => {
    if (listed.has(person.id)) return;
    listed.set(person.id, role === 'none' ? null : { ...person, role: asRole(role) });
  };
  if (owner) put(owner, 'owner');
  if (group?.owner) put(group.owner, 'owner');
  for (const { person, role } of [...members, ...(group?.members ?? [])]) put(person, role);
  return [...listed.values()].filter((member) => member !== null);
}

function asRole(stored: string): 'owner' | MemberRole {
  return stored === 'owner' ? 'owner' : MemberRole.parse(stored);
}

/** Who guards whom is nobody's business but theirs and of those who run or teach on the board. */
async function guardiansFor(boardId: string, meId: string, role: BoardRole): Promise<MemberView[]> {
  const runs = may(role, 'invite.make');
  const rows = (await guardianshipsOn(boardId)).filter((row) => {
    return runs || row.guardianId === meId || row.wardId === meId;
  });
  return rows.map((row) => ({
    id: row.guardianId,
    name: row.guardianName,
    role: 'guardian',
    ward: { id: row.wardId, name: row.wardName },
  }));
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
