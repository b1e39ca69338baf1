/** What the server answers over HTTP; pages and handlers share these types. */

import type { Drying, PhotoLight, Rights } from './picture-choices.ts';
import type { BoardRole, InviteRole } from './roles.ts';

export interface ErrorBody {
  error: { code: string; message: string };
}

export interface PersonView {
  id: string;
  name: string;
}

export interface BoardListItem {
  id: string;
  title: string;
  role: BoardRole;
  demo: boolean;
  owner: PersonView;
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
}

export interface BoardView {
  id: string;
  title: string;
  demo: boolean;
  scenario: string | null;
  role: BoardRole;
  me: PersonView;
  owner: PersonView;
  pictures: PictureView[];
  members: MemberView[];
}

export interface InviteView {
  token: string;
  url: string;
  role: InviteRole;
  expiresAt: string;
}

export interface UploadedPicture {
  id: string;
  width: number;
  height: number;
}

export interface Pending {
  pending: string;
}
