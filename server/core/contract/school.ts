/**
 * The school setting: what a group, or the whole installation, does not allow for the sake of its pupils.
 *
 * In the flow: page -> [school] -> access/school -> invites, names, figures, the daily deletion. Its shape as it is
 * sent and stored stands in `decency`. Pure.
 */

export interface SchoolRules {
  /** Invitations let in one person each and end soon. */
  noPublicLinks: boolean;
  /** Cards leave out how paint is mixed or layered. */
  noMixingHints: boolean;
  /** Members see each other under made-up names. */
  aliases: boolean;
  /** Days after which what may not be kept is deleted; null = never by age. */
  deleteAfterDays: number | null;
  /** The day, 'YYYY-MM-DD', on which what may not be kept is deleted; null = none. */
  deleteOn: string | null;
}

export const NO_RULES: SchoolRules = {
  noPublicLinks: false,
  noMixingHints: false,
  aliases: false,
  deleteAfterDays: null,
  deleteOn: null,
};

/** An invitation lets in one person and works this long where links may not be public. */
export const PRIVATE_INVITE_HOURS = 48;

/** What holds where both are set: the stricter of each. */
export function stricter(one: SchoolRules, two: SchoolRules): SchoolRules {
  const days = [one.deleteAfterDays, two.deleteAfterDays].filter((each) => each !== null);
  const dates = [one.deleteOn, two.deleteOn].filter((each) => each !== null).sort();
  return {
    noPublicLinks: one.noPublicLinks || two.noPublicLinks,
    noMixingHints: one.noMixingHints || two.noMixingHints,
    aliases: one.aliases || two.aliases,
    deleteAfterDays: days.length > 0 ? Math.min(...days) : null,
    deleteOn: dates[0] ?? null,
  };
}
