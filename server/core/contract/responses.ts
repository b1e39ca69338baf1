/** What the server answers over HTTP; pages and handlers share these types. */

import type { Drying, PhotoLight, Rights } from './picture-choices.ts';
import type { BoardRole, ConsentUse, InviteRole } from './roles.ts';
import type { SchoolRules } from './school.ts';

export interface ErrorBody {
  error: { code: string; message: string };
}

export interface PersonView {
  id: string;
  name: string;
}

/** What somebody can see of themselves. */
export interface AccountView extends PersonView {
  /** Null for who gave nothing but a name. */
  email: string | null;
  isHost: boolean;
}

/** A link for one person to come back by. */
export interface ReturnLinkView {
  url: string;
  /** ISO 8601. */
  expiresAt: string;
}

export interface BoardListItem {
  id: string;
  title: string;
  role: BoardRole;
  demo: boolean;
  owner: PersonView;
  /** The group it belongs to, or null. */
  group: GroupName | null;
  /** ISO 8601. */
  createdAt: string;
  /** Id of a picture to show small, or null when the board is empty. */
  coverPictureId: string | null;
  references: number;
  paintings: number;
}

export interface PictureView {
  id: string;
  kind: 'reference' | 'painting';
  /** Upright pixels of the original. */
  width: number;
  height: number;
  painter: PersonView;
  /** Id of the earlier state of the same painting, or null. */
  follows: string | null;
  rights: Rights | null;
  credit: string | null;
  caption: string | null;
  /** What a painting is made with: one of `MEDIA` or the painter's own words; null where nothing is noted. */
  medium: string | null;
  /** Whether it was photographed wet or dry; null where nothing is noted. */
  drying: Drying | null;
  /** The light it was photographed in; null where nothing is noted. */
  light: PhotoLight | null;
  createdAt: string;
}

export interface MemberView extends PersonView {
  role: BoardRole;
  /** Of a guardian: the minor they guard here. */
  ward?: PersonView;
}

export interface GroupName {
  id: string;
  name: string;
}

export interface GroupListItem extends GroupName {
  role: BoardRole;
  /** How many people belong to it, its owner among them, and how many boards. */
  members: number;
  boards: number;
}

/** A class or a painting circle as one of its people sees it. */
export interface GroupView extends GroupName {
  role: BoardRole;
  owner: PersonView;
  members: MemberView[];
  boards: { id: string; title: string }[];
  /** What was set for the group itself. */
  school: SchoolRules;
}

export interface BoardView {
  id: string;
  title: string;
  demo: boolean;
  scenario: string | null;
  role: BoardRole;
  me: PersonView;
  owner: PersonView;
  group: GroupName | null;
  pictures: PictureView[];
  members: MemberView[];
  /** Person ids that this person does not see here, and that do not see them; nobody is told which way it was made. */
  blocked: string[];
  /** What the school setting holds back here. */
  school: Pick<SchoolRules, 'noPublicLinks' | 'noMixingHints' | 'aliases'>;
  /** What the other members call this person where names are kept back. */
  alias: string | null;
}

export interface InviteView {
  token: string;
  url: string;
  role: InviteRole;
  expiresAt: string;
  /** How many people it lets in; null = any number. */
  uses: number | null;
}

/** An invitation in force as its list shows it; the link itself was shown once, when it was made. */
export interface OpenInvite {
  id: string;
  role: InviteRole;
  createdAt: string;
  expiresAt: string;
  uses: number | null;
  used: number;
  /** Of a guardian's invitation: the minor it is about. */
  ward: PersonView | null;
}

/** What was last said about one use of somebody's pictures on a board. */
export interface ConsentView {
  person: PersonView;
  use: ConsentUse;
  /** Null where nothing was said. */
  given: boolean | null;
  /** What holds: a use is allowed when it was said so; to be shown on the board, a grown painter need not say so. */
  allowed: boolean;
  /** Name of who said it: the painter, or their guardian; null where nothing was said. */
  saidBy: string | null;
  /** ISO 8601. */
  at: string | null;
  /** Whether the caller may answer for it. */
  mine: boolean;
}

export interface UploadedPicture {
  id: string;
  width: number;
  height: number;
}

export interface Pending {
  pending: string;
}
