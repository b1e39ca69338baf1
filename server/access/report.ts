/**
 * Reports: made by anybody on a board, read by those who run it or teach on it and by hosts, but never by the one who
 * is reported.
 *
 * In the flow: handlers, pages -> [report] -> store, said in the live documents. IO: the database.
 */
import {
  OUTCOMES,
  REPORT_ACTS,
  REPORTED,
  type ReportAct,
  type ReportOutcome,
  type ReportRequest,
  type ReportView,
} from '../core/contract/decency.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { readMarks } from '../core/live/marks.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { ledBy } from '../store/leaders.ts';
import { readDocument } from '../store/live-documents.ts';
import { findPerson, namesOf } from '../store/people.ts';
import { findPicture } from '../store/pictures.ts';
import {
  addReport,
  findReport,
  listReports,
  markSeen,
  type Report,
  type ReportRow,
} from '../store/reports.ts';
import { hiddenPainters } from './consent.ts';
import { roleNow, roleOn } from './roles.ts';
import { knownNames, namingFor } from './school.ts';
import type { Visitor } from './session.ts';

/** Closed reports go with what they quote after so many days. */
export const CLOSED_REPORT_DAYS = 90;

type Subject = Pick<Report, 'personId' | 'pictureId' | 'quoted'>;

/** @returns The report's id. @throws Problem 'remark-not-found', 'picture-not-found' or 'person-not-found'. */
export async function makeReport(
  boardId: string,
  { personId }: Visitor,
  role: BoardRole,
  { about, id, words }: ReportRequest,
): Promise<{ id: string }> {
  const subject =
    about === 'remark'
      ? await remarkOn(boardId, id)
      : about === 'picture'
        ? await pictureOn(boardId, id, personId, role)
        : await personOn(boardId, id);
  return { id: await addReport({ boardId, reporterId: personId, about, subjectId: id, words, ...subject }) };
}

async function remarkOn(boardId: string, id: string): Promise<Subject> {
  const mark = readMarks(await readDocument(boardId, 'marks')).find((each) => each.id === id);
  if (!mark)
    throw new Problem('remark-not-found', say`That remark is no longer there. Report its author instead.`);
  return { personId: mark.author, pictureId: mark.pictureId, quoted: mark.text };
}

async function pictureOn(boardId: string, id: string, personId: string, role: BoardRole): Promise<Subject> {
  const picture = await findPicture(boardId, id);
  const hidden = await hiddenPainters(boardId, personId, role);
  if (!picture || hidden.has(picture.painterId)) {
    throw new Problem('picture-not-found', say`That picture is no longer there. Report its painter instead.`);
  }
  return { personId: picture.painterId, pictureId: id, quoted: '' };
}

async function personOn(boardId: string, id: string): Promise<Subject> {
  if ((await findPerson(id)) === null || (await roleNow(id, boardId)) === null) {
    throw new Problem('person-not-found', say`That person is not on this board. Load the board again.`);
  }
  return { personId: id, pictureId: null, quoted: '' };
}

const relation = (report: Pick<Report, 'reporterId'>, personId: string): Relation =>
  report.reporterId === personId ? 'own' : 'other';

/** Nobody decides about themselves, and nobody hears who reported them. */
const concerns = (report: Pick<Report, 'personId'>, personId: string) => report.personId === personId;

/**
 * A report that the visitor may act on.
 *
 * @throws Problem 'report-not-found' alike for none and for one about the visitor.
 */
export async function reportToActOn(boardId: string, id: string, { personId }: Visitor): Promise<Report> {
  const report = await findReport(boardId, id);
  if (report && report.closedAt === null && !concerns(report, personId)) return report;
  throw new Problem(
    'report-not-found',
    say`There is no such open report; somebody may have closed it. Load the page again.`,
  );
}

/** What can be done about a report by somebody in that role. */
export function actsOn(
  { about, personId, closedAt }: Pick<Report, 'about' | 'personId' | 'closedAt'>,
  role: BoardRole,
): ReportAct[] {
  if (closedAt !== null || !may(role, 'report.close')) return [];
  return REPORT_ACTS.filter((act) => {
    if (act === 'remove-remark') return about === 'remark' && may(role, 'room.mark');
    if (act === 'withdraw-picture') return about === 'picture' && may(role, 'picture.withdraw');
    return act === 'note' || (personId !== '' && may(role, 'member.end'));
  });
}

/**
 * Every report that is for the visitor's eyes: on boards they run or teach on (for hosts, all), and their own, newest
 * first. Those they can act on count as seen from then on.
 *
 * @param boardId Of that board alone, where given.
 */
export async function reportsFor(
  visitor: Visitor,
  boardId: string | null,
  now = new Date(),
): Promise<ReportView[]> {
  const led = visitor.isHost ? null : (await ledBy(visitor.personId)).boardIds;
  const rows = await listReports(led, visitor.personId);
  const wanted = rows.filter(
    (row) => (boardId === null || row.boardId === boardId) && !concerns(row, visitor.personId),
  );
  const names = await namesOf(wanted.map(({ personId }) => personId));
  const roles = new Map<string, BoardRole | null>();
  for (const row of wanted)
    if (!roles.has(row.boardId)) roles.set(row.boardId, await roleOn(visitor, row.boardId));
  const views: ReportView[] = [];
  const seen: string[] = [];
  for (const row of wanted) {
    const role = roles.get(row.boardId) ?? null;
    const acts = role !== null && may(role, 'report.close');
    if (!acts && !may(role ?? 'viewer', 'report.see', relation(row, visitor.personId))) continue;
    if (acts && row.seenAt === null) seen.push(row.id);
    views.push(await viewOf(row, names.get(row.personId) ?? '', { visitor, role, now }));
  }
  await markSeen(seen, now);
  return views;
}

interface Looking {
  visitor: Visitor;
  /** Null for somebody who left the board after they reported. */
  role: BoardRole | null;
  now: Date;
}

async function viewOf(row: ReportRow, name: string, { visitor, role, now }: Looking): Promise<ReportView> {
  const acts = role !== null && may(role, 'report.close');
  const person = { id: row.personId, name };
  const known = await knownNames({ boardId: row.boardId }, visitor.personId, role ?? 'viewer');
  const naming = await namingFor(known, [person]);
  return {
    id: row.id,
    board: row.board,
    about: REPORTED.find((each) => each === row.about) ?? 'person',
    person: naming(person),
    quoted: acts ? row.quoted : '',
    words: row.words,
    reporter: row.reporter,
    at: row.at.toISOString(),
    seenAt: (row.seenAt ?? (acts ? now : null))?.toISOString() ?? null,
    closedAt: row.closedAt?.toISOString() ?? null,
    outcome: outcomeOf(row.outcome),
    note: acts ? row.note : '',
    acts: role === null ? [] : actsOn(row, role),
  };
}

function outcomeOf(stored: string | null): ReportOutcome | null {
  return Object.values(OUTCOMES).find((outcome) => outcome === stored) ?? null;
}
