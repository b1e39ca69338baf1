/** Reports, blocks, the audit and what was deleted, as they travel. Requests are parsed at the border. Pure. */
import { z } from 'zod';
import { say } from '../say/say.ts';
import type { PersonView } from './responses.ts';
import type { SchoolRules } from './school.ts';

export const REPORTED = ['remark', 'picture', 'person'] as const;
export type Reported = (typeof REPORTED)[number];

export const ReportRequest = z.strictObject({
  about: z.enum(REPORTED),
  /** Id of the remark, the picture or the person. */
  id: z.string().min(1).max(64),
  words: z.string().trim().min(1, say`Say in a few words what is the matter.`).max(1000),
});
export type ReportRequest = z.infer<typeof ReportRequest>;

/** What can be done about a report; each closes it. */
export const REPORT_ACTS = ['remove-remark', 'withdraw-picture', 'end-access', 'note'] as const;
export type ReportAct = (typeof REPORT_ACTS)[number];

export const CloseReportRequest = z.strictObject({
  act: z.enum(REPORT_ACTS),
  note: z.string().trim().max(1000).default(''),
});
export type CloseReportRequest = z.infer<typeof CloseReportRequest>;

/** The group a board moves to; null = out of its group. */
export const MoveRequest = z.strictObject({ group: z.string().min(1).max(64).nullable() });
/** Who owns the board from now on. */
export const HandOnRequest = z.strictObject({ person: z.string().min(1).max(64) });

/** The school setting as it is sent and stored. */
export const SchoolShape = z.strictObject({
  noPublicLinks: z.boolean(),
  noMixingHints: z.boolean(),
  aliases: z.boolean(),
  deleteAfterDays: z
    .int(say`is a whole number of days`)
    .min(1, say`at least one day`)
    .max(3650, say`at most 3650 days, which is ten years`)
    .nullable(),
  deleteOn: z.iso.date(say`is a day such as 2027-06-30`).nullable(),
}) satisfies z.ZodType<SchoolRules>;

export interface ReportView {
  id: string;
  board: { id: string; title: string };
  about: Reported;
  /** Who wrote, painted or is reported. */
  person: PersonView;
  /** The remark as it was; empty for whoever only made the report. */
  quoted: string;
  words: string;
  reporter: PersonView;
  /** ISO 8601. */
  at: string;
  /** When somebody who can act on it first saw it; null = not yet. */
  seenAt: string | null;
  closedAt: string | null;
  outcome: ReportOutcome | null;
  /** For those who can act on it alone. */
  note: string;
  /** What the caller may do about it; empty for whoever only made it, and once it is closed. */
  acts: ReportAct[];
}

export const OUTCOMES = {
  'remove-remark': 'remark-removed',
  'withdraw-picture': 'picture-withdrawn',
  'end-access': 'access-ended',
  note: 'noted',
} as const satisfies Record<ReportAct, string>;
export type ReportOutcome = (typeof OUTCOMES)[ReportAct];

export interface AuditView {
  id: string;
  /** ISO 8601. */
  at: string;
  sentence: string;
}

/** `age`: so many days after it was posted; `day`: the day that was set; `over`: the class was over. */
export const DELETION_REASONS = ['age', 'day', 'over'] as const;
export type DeletionReason = (typeof DELETION_REASONS)[number];

export interface DeletionView {
  id: string;
  /** ISO 8601. */
  at: string;
  boardTitle: string;
  reason: DeletionReason;
  pictures: number;
  remarks: number;
  /** Whether the board itself went. */
  whole: boolean;
}

/** What was done, newest first. */
export interface RecordView {
  audit: AuditView[];
  deletions: DeletionView[];
}

/** What would go, and what stay, if the class were over now. */
export interface OverView {
  goes: number;
  stays: number;
  /** ISO 8601; null while the class goes on. */
  overAt: string | null;
}
