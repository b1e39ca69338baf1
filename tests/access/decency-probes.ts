/** For every action of decency over HTTP: how somebody tries it, through the handler that a browser would reach. */

import { GET as readHouse } from '#app/api/audit/route.ts';
import { GET as readAudit } from '#app/api/boards/[boardId]/audit/route.ts';
import { PUT as block } from '#app/api/boards/[boardId]/blocks/[personId]/route.ts';
import { PUT as move } from '#app/api/boards/[boardId]/group/route.ts';
import { GET as countOver, POST as sayOver } from '#app/api/boards/[boardId]/over/route.ts';
import { PUT as handOn } from '#app/api/boards/[boardId]/owner/route.ts';
import { POST as closeReport } from '#app/api/boards/[boardId]/reports/[reportId]/route.ts';
import { POST as report, GET as seeReports } from '#app/api/boards/[boardId]/reports/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { PUT as setGroupSchool } from '#app/api/groups/[groupId]/school/route.ts';
import { POST as makeReturnLink } from '#app/api/people/[personId]/return-link/route.ts';
import { GET as readHouseSchool, PUT as setHouseSchool } from '#app/api/school/route.ts';
import type { ReportView } from '#server/core/contract/decency.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import { NO_RULES } from '#server/core/contract/school.ts';
import type { Relation } from '#server/core/permissions/may.ts';
import { addReport } from '#server/store/reports.ts';
import { setGroupRules } from '#server/store/school.ts';
import type { Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aGroup, call, type Outcome, outcomeOf, type Stage } from './cast.ts';

interface Probe {
  what: string;
  relations: readonly Relation[];
  act(stage: Stage, who: Somebody, whose: Somebody): Promise<Outcome>;
}

const OTHER = ['other'] as const;
const PUT = (body: unknown) => ({ method: 'PUT', body });
const POST = (body?: unknown) => ({ method: 'POST', body });

/** A report by one person about another, stored as if it had been made. */
const aReport = (boardId: string, reporter: Somebody, about: Somebody) =>
  addReport({
    ...{ boardId, reporterId: reporter.id, about: 'person', subjectId: about.id, personId: about.id },
    ...{ pictureId: null, quoted: '', words: 'Please look at this' },
  });

function onFresh(
  what: string,
  act: (at: { stage: Stage; boardId: string; who: Somebody; whose: Somebody }) => Promise<Response>,
): Probe {
  return {
    what,
    relations: OTHER,
    act: async (stage, who, whose) =>
      outcomeOf(await act({ stage, boardId: await aBoard(stage), who, whose })),
  };
}

export const DECENCY_PROBES = {
  'board.group': [
    onFresh('takes it out of its group', ({ boardId, who }) =>
      call(move, who, { boardId }, PUT({ group: null })),
    ),
  ],
  'board.hand': [
    onFresh('hands it on', ({ boardId, who, whose }) =>
      call(handOn, who, { boardId }, PUT({ person: whose.id })),
    ),
  ],
  'board.over': [
    onFresh('counts what would go', ({ boardId, who }) => call(countOver, who, { boardId })),
    onFresh('says it', ({ boardId, who }) => call(sayOver, who, { boardId }, POST())),
  ],
  'report.make': [
    onFresh('reports somebody', ({ boardId, who, whose }) => {
      return call(
        report,
        who,
        { boardId },
        POST({ about: 'person', id: whose.id, words: 'Please look at this' }),
      );
    }),
  ],
  'report.see': [
    {
      what: 'reads one that was made by',
      relations: ['own', 'other'],
      act: async (stage: Stage, who: Somebody, whose: Somebody) => {
        const boardId = await aBoard(stage);
        const id = await aReport(boardId, whose, stage.people.ward);
        const answer = await call(seeReports, who, { boardId });
        if (!answer.ok) return outcomeOf(answer);
        const seen = (await answer.json()) as ReportView[];
        return seen.some((each) => each.id === id) ? 'done' : 'refused';
      },
    },
  ],
  'report.close': [
    onFresh('closes one with a note', async ({ stage, boardId, who, whose }) => {
      const reportId = await aReport(boardId, whose, stage.people.ward);
      return call(closeReport, who, { boardId, reportId }, POST({ act: 'note', note: 'Talked to both' }));
    }),
  ],
  'block.make': [
    onFresh('blocks somebody', ({ boardId, who, whose }) => {
      return call(block, who, { boardId, personId: whose.id }, { method: 'PUT' });
    }),
  ],
  'name.see': [
    {
      what: 'reads the name of',
      relations: ['ward', 'other'],
      act: async ({ people }: Stage, who: Somebody, whose: Somebody) => {
        const groupId = await aGroup(people);
        await setGroupRules(groupId, { ...NO_RULES, aliases: true });
        const boardId = await aBoard({ people, groupId });
        const answer = await call(seeBoard, who, { boardId });
        if (!answer.ok) return outcomeOf(answer);
        const { members, me } = (await answer.json()) as BoardView;
        return [me, ...members].some(({ id, name }) => id === whose.id && name === whose.name)
          ? 'done'
          : 'refused';
      },
    },
  ],
  'audit.see': [onFresh('reads it', ({ boardId, who }) => call(readAudit, who, { boardId }))],
  'group.school': [
    {
      what: 'sets it',
      relations: OTHER,
      act: async ({ people }: Stage, who: Somebody) => {
        const groupId = await aGroup(people);
        return outcomeOf(await call(setGroupSchool, who, { groupId }, PUT({ ...NO_RULES, aliases: true })));
      },
    },
  ],
  'house.record': [
    {
      what: 'reads it',
      relations: OTHER,
      act: async (_: Stage, who: Somebody) => outcomeOf(await call(readHouse, who, {})),
    },
  ],
  'return.link': [
    {
      what: 'makes one',
      relations: OTHER,
      act: async (_: Stage, who: Somebody, whose: Somebody) => {
        return outcomeOf(await call(makeReturnLink, who, { personId: whose.id }, { method: 'POST' }));
      },
    },
  ],
  'house.school': [
    {
      what: 'reads it',
      relations: OTHER,
      act: async (_: Stage, who: Somebody) => outcomeOf(await call(readHouseSchool, who, {})),
    },
    {
      what: 'sets it',
      relations: OTHER,
      act: async (_: Stage, who: Somebody) => outcomeOf(await call(setHouseSchool, who, {}, PUT(NO_RULES))),
    },
  ],
} satisfies Record<string, Probe[]>;
