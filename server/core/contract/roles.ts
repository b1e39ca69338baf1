/** The roles a person can have on a board. `owner` is who made it; `host` runs the server. Pure. */
import { z } from 'zod/mini';

/** Roles that an invite can give. */
export const INVITE_ROLES = ['teacher', 'painter', 'peer', 'viewer'] as const;
export const InviteRole = z.enum(INVITE_ROLES);
export type InviteRole = z.infer<typeof InviteRole>;

export type BoardRole = 'host' | 'owner' | InviteRole;
