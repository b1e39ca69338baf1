/**
 * The roles a person can have on a board or in a group. `owner` is who made it; `host` runs the server; a
 * `guardian` sees the boards of a minor. What each may do: `core/permissions`. Pure.
 */
import { z } from 'zod/mini';

/** Roles that stand in a list of members, from most to least. */
export const MEMBER_ROLES = ['teacher', 'painter', 'peer', 'viewer'] as const;
export const MemberRole = z.enum(MEMBER_ROLES);
export type MemberRole = z.infer<typeof MemberRole>;

/** Roles that an invite can give. A guardian's invite names the minor it is about. */
export const INVITE_ROLES = [...MEMBER_ROLES, 'guardian'] as const;
export const InviteRole = z.enum(INVITE_ROLES);
export type InviteRole = z.infer<typeof InviteRole>;

/** Everything that somebody can be on a board or in a group, from most to least. */
export const BOARD_ROLES = ['host', 'owner', ...INVITE_ROLES] as const;
export type BoardRole = (typeof BOARD_ROLES)[number];

/**
 * What a painter, or a minor's guardian, is asked about apart: that the others on the board see the pictures;
 * that they are kept after the class; shown to others; used as an example.
 */
export const CONSENT_USES = ['class', 'keep', 'others', 'example'] as const;
export const ConsentUse = z.enum(CONSENT_USES);
export type ConsentUse = z.infer<typeof ConsentUse>;
