/** What a browser sends over HTTP, parsed at the border and trusted afterwards. Pure. */
import { z } from 'zod';
import { say } from '../say/say.ts';
import { DRYINGS, PHOTO_LIGHTS, RIGHTS } from './picture-choices.ts';
import { InviteRole, MemberRole } from './roles.ts';
import { ONE_THING_LIMIT } from './wall.ts';

export const PersonName = z
  .string()
  .trim()
  .min(1, say`Write a name.`)
  .max(60, say`A name has at most 60 characters.`);
export const BoardTitle = z
  .string()
  .trim()
  .min(1, say`Write a title.`)
  .max(120, say`A title has at most 120 characters.`);

const LinkKey = z.string().min(1).max(200);

export const EnterRequest = z.strictObject({
  key: LinkKey,
  name: PersonName,
  /** With a host's key only: id of the host one was before, to go on as them. */
  as: z.string().max(64).optional(),
});
export type EnterRequest = z.infer<typeof EnterRequest>;

/** Case does not tell two addresses apart here, as with every provider in practice. */
const Email = z
  .string()
  .trim()
  .toLowerCase()
  .max(254, say`An e-mail address has at most 254 characters.`)
  .pipe(z.email(say`Write the whole e-mail address.`));

/** NIST SP 800-63B §5.1.1.2: length alone is asked for, any characters, the same ones however they are typed. */
const NewPassword = z
  .string()
  .normalize('NFKC')
  .min(10, say`A password has at least 10 characters; a few words make a good one.`)
  .max(200, say`A password has at most 200 characters.`);

/** A password that is only compared. */
const KnownPassword = z.string().normalize('NFKC').max(400);

/** E-mail and password for oneself; `current` where one has a password already. */
export const AccountRequest = z.strictObject({
  email: Email,
  password: NewPassword,
  current: KnownPassword.optional(),
});
export type AccountRequest = z.infer<typeof AccountRequest>;

/** Deleting oneself: one's own name, written out. */
export const LeavingRequest = z.strictObject({ name: z.string().max(200) });

export const SignInRequest = z.strictObject({ email: Email, password: KnownPassword });
export type SignInRequest = z.infer<typeof SignInRequest>;

/** Coming back by a link; with a new password where one has an e-mail address here. */
export const ReturnRequest = z.strictObject({ key: LinkKey, password: NewPassword.optional() });
export type ReturnRequest = z.infer<typeof ReturnRequest>;

export const BoardRequest = z.strictObject({ title: BoardTitle });
export type BoardRequest = z.infer<typeof BoardRequest>;

/** A new board, of a group where one is named. */
export const NewBoardRequest = z.strictObject({ title: BoardTitle, group: z.string().max(64).optional() });
export type NewBoardRequest = z.infer<typeof NewBoardRequest>;

export const GroupRequest = z.strictObject({
  name: z
    .string()
    .trim()
    .min(1, say`Write a name for the group.`)
    .max(120, say`The name of a group has at most 120 characters.`),
});
export type GroupRequest = z.infer<typeof GroupRequest>;

export const InviteRequest = z
  .strictObject({
    role: InviteRole,
    hours: z
      .number()
      .positive()
      .max(24 * 365),
    /** How many people the link lets in; left out = any number. */
    uses: z
      .int(say`is a whole number`)
      .min(1, say`at least one person`)
      .max(1000, say`at most 1000 people`)
      .optional(),
    /** Person id of the minor whom a guardian is invited for. */
    ward: z.string().max(64).optional(),
  })
  .refine(({ role, ward }) => (role === 'guardian') === (ward !== undefined), {
    path: ['ward'],
    message: say`A guardian’s invite names the minor it is about, and no other invite does`,
  });
export type InviteRequest = z.infer<typeof InviteRequest>;

/** What a member is from now on. */
export const RoleRequest = z.strictObject({ role: MemberRole });
export type RoleRequest = z.infer<typeof RoleRequest>;

export const ConsentRequest = z.strictObject({ given: z.boolean() });
export type ConsentRequest = z.infer<typeof ConsentRequest>;

/** One of `MEDIA`, or the painter's own words. */
const MediumWords = z
  .string()
  .trim()
  .min(1, say`Write what it is painted with.`)
  .max(60, say`A medium has at most 60 characters.`);

/** The text fields beside the file of an upload. A reference needs a rights line; `free` needs a credit. */
export const PictureFields = z.strictObject({
  kind: z.enum(['reference', 'painting']),
  follows: z.string().max(64).optional(),
  rights: z.enum(RIGHTS).optional(),
  credit: z.string().trim().max(300).optional(),
  /** A caption of the painter's own. */
  caption: z.string().trim().max(120).optional(),
  /** Id of the homework that this picture answers; which state it follows is then the server's to know. */
  homework: z.string().max(64).optional(),
  /** 'yes' when the painter asks to keep the untouched camera file for themselves. */
  keepUntouched: z.enum(['yes', 'no']).optional(),
  /** What a painting is and how it was photographed, where its painter knows; left out for a reference. */
  medium: MediumWords.optional(),
  drying: z.enum(DRYINGS).optional(),
  light: z.enum(PHOTO_LIGHTS).optional(),
});
export type PictureFields = z.infer<typeof PictureFields>;

/** Notes about a painting that are put in place of those before; null takes one away, a missing one stays. */
export const PictureNotes = z
  .strictObject({
    medium: MediumWords.nullable().optional(),
    drying: z.enum(DRYINGS).nullable().optional(),
    light: z.enum(PHOTO_LIGHTS).nullable().optional(),
  })
  .refine((notes) => Object.keys(notes).length > 0, say`Name at least one of medium, drying and light`);
export type PictureNotes = z.infer<typeof PictureNotes>;

const Share = z.number().min(0).max(1);

/** One thing to try from a painting on the wall, at a place in 0..1 of its upright original. */
export const OneThingRequest = z.strictObject({
  text: z
    .string()
    .trim()
    .min(1, say`Write what there is to try.`)
    .max(ONE_THING_LIMIT, say`A note has at most ${ONE_THING_LIMIT} characters.`),
  at: z.tuple([Share, Share]),
});
