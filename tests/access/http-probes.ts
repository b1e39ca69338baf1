/** For every action over HTTP: how somebody tries it, through the handler that a browser would reach. */

import { GET as boardContents } from '#app/api/boards/[boardId]/archive/contents/route.ts';
import { GET as takeBoard } from '#app/api/boards/[boardId]/archive/route.ts';
import { PUT as putConsent } from '#app/api/boards/[boardId]/consents/[personId]/[use]/route.ts';
import { GET as seeConsents } from '#app/api/boards/[boardId]/consents/route.ts';
import { DELETE as endInvite } from '#app/api/boards/[boardId]/invites/[token]/route.ts';
import { GET as listInvites, POST as makeInvite } from '#app/api/boards/[boardId]/invites/route.ts';
import { DELETE as endAccess, PATCH as setRole } from '#app/api/boards/[boardId]/members/[personId]/route.ts';
import {
  PATCH as notePicture,
  GET as seePicture,
  DELETE as withdraw,
} from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { POST as postPicture } from '#app/api/boards/[boardId]/pictures/route.ts';
import { DELETE as deleteBoard, PATCH as renameBoard } from '#app/api/boards/[boardId]/route.ts';
import { POST as makeBoard } from '#app/api/boards/route.ts';
import { DELETE as endGroupInvite } from '#app/api/groups/[groupId]/invites/[token]/route.ts';
import { GET as listGroupInvites, POST as makeGroupInvite } from '#app/api/groups/[groupId]/invites/route.ts';
import {
  DELETE as endMembership,
  PATCH as setGroupRole,
} from '#app/api/groups/[groupId]/members/[personId]/route.ts';
import {
  DELETE as deleteGroup,
  PATCH as renameGroup,
  GET as seeGroup,
} from '#app/api/groups/[groupId]/route.ts';
import type { ConsentView } from '#server/core/contract/responses.ts';
import type { Relation } from '#server/core/permissions/may.ts';
import type { Action } from '#server/core/permissions/table.ts';
import { sayConsent } from '#server/store/consents.ts';
import { addInvite } from '#server/store/invites.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aGroup, call, type Outcome, outcomeOf, type Stage } from './cast.ts';
import { CLASS_PROBES } from './class-probes.ts';
import { DECENCY_PROBES } from './decency-probes.ts';
import { HOMEWORK_PROBES } from './homework-probes.ts';
import { OWN_TIME_PROBES } from './own-time-probes.ts';
import { PATH_PROBES } from './path-probes.ts';
import { SEEING_PROBES } from './seeing-probes.ts';
import { SHEET_PROBES } from './sheet-probes.ts';

export interface Probe {
  what: string;
  /** Whose things it is tried on. */
  relations: readonly Relation[];
  /** @param whose Who made or owns what is acted on. */
  act(stage: Stage, who: Somebody, whose: Somebody): Promise<Outcome>;
}

export type HttpAction = Exclude<Action, `room.${string}`>;

const OTHER = ['other'] as const;
const OWN_OR_NOT = ['own', 'other'] as const;
/** Owners and hosts have no row of their own to end. */
const NO_ROW = ['person-not-found'];

const inAnHour = () => new Date(Date.now() + 3_600_000);
const anInvite = () => ({
  ...{ tokenHash: crypto.randomUUID(), role: 'peer' as const, wardId: null, uses: null },
  expiresAt: inAnHour(),
});

function pictureForm(kind: string): FormData {
  const form = new FormData();
  form.set('kind', kind);
  if (kind === 'reference') form.set('rights', 'mine');
  form.set('file', new File(['not looked at here'], 'study.jpg', { type: 'image/jpeg' }));
  return form;
}

const codeOf = async (answer: Response) => ((await answer.json()) as { error: { code: string } }).error.code;

const posting = (kind: string): Probe => ({
  what: 'posts it',
  relations: OTHER,
  act: async (stage, who) => {
    const boardId = await theBoard(stage);
    return outcomeOf(await call(postPicture, who, { boardId }, { method: 'POST', body: pictureForm(kind) }));
  },
});

/** For what leaves people and board as they were, one board does. */
const shared = new WeakMap<Stage, Promise<string>>();

function theBoard(stage: Stage): Promise<string> {
  const board = shared.get(stage) ?? aBoard(stage);
  shared.set(stage, board);
  return board;
}

type OnBoard = (at: { boardId: string; who: Somebody; whose: Somebody }) => Promise<Response>;

/** Something done to a board, or to a painting on it, that leaves the people and the board there. */
function onBoard(what: string, relations: readonly Relation[], act: OnBoard): Probe {
  return {
    what,
    relations,
    act: async (stage, who, whose) => outcomeOf(await act({ boardId: await theBoard(stage), who, whose })),
  };
}

/** Something done to a board that is made for it. */
function onFreshBoard(
  what: string,
  relations: readonly Relation[],
  act: OnBoard,
  alsoDone: readonly string[] = [],
): Probe {
  return {
    what,
    relations,
    act: async (stage, who, whose) => {
      return outcomeOf(await act({ boardId: await aBoard(stage), who, whose }), alsoDone);
    },
  };
}

type InGroup = (at: { groupId: string; who: Somebody; whose: Somebody }) => Promise<Response>;

/** Something done in the group that leaves its people there. */
function inGroup(what: string, act: InGroup): Probe {
  return {
    what,
    relations: OTHER,
    act: async ({ groupId }, who, whose) => outcomeOf(await act({ groupId, who, whose })),
  };
}

/** Something done to a group that is made for it. */
function inFreshGroup(
  what: string,
  relations: readonly Relation[],
  act: InGroup,
  alsoDone: readonly string[] = [],
): Probe {
  return {
    what,
    relations,
    act: async ({ people }, who, whose) => {
      return outcomeOf(await act({ groupId: await aGroup(people), who, whose }), alsoDone);
    },
  };
}

export const HTTP_PROBES: Record<HttpAction, Probe[]> = {
  ...SEEING_PROBES,
  'board.rename': [
    onBoard('renames it', OTHER, ({ boardId, who }) => {
      return call(renameBoard, who, { boardId }, { method: 'PATCH', body: { title: 'Another title' } });
    }),
  ],
  'board.take': [
    onFreshBoard('takes it away', OTHER, ({ boardId, who }) => call(takeBoard, who, { boardId })),
    onFreshBoard('asks what would be in it', OTHER, ({ boardId, who }) =>
      call(boardContents, who, { boardId }),
    ),
  ],
  'board.delete': [
    onFreshBoard('deletes it', OTHER, ({ boardId, who }) =>
      call(deleteBoard, who, { boardId }, { method: 'DELETE' }),
    ),
  ],
  ...CLASS_PROBES,
  'reference.post': [posting('reference')],
  'painting.post': [posting('painting')],
  'painting.note': [
    onBoard('notes it', OWN_OR_NOT, async ({ boardId, who, whose }) => {
      const pictureId = await aPainting(boardId, whose.id);
      return call(notePicture, who, { boardId, pictureId }, { method: 'PATCH', body: { medium: 'oil' } });
    }),
  ],
  'picture.withdraw': [
    onBoard('takes it back', OWN_OR_NOT, async ({ boardId, who, whose }) => {
      const pictureId = await aPainting(boardId, whose.id);
      return call(withdraw, who, { boardId, pictureId }, { method: 'DELETE' });
    }),
  ],
  'picture.unshown': [
    {
      what: 'looks at one',
      relations: ['own', 'ward', 'other'],
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        const pictureId = await aPainting(boardId, whose.id);
        await sayConsent({ boardId, personId: whose.id, use: 'class', given: false, saidById: whose.id });
        const answer = await call(seePicture, who, { boardId, pictureId });
        return answer.status === 404 && (await codeOf(answer.clone())) === 'picture-not-found'
          ? 'refused'
          : outcomeOf(answer);
      },
    },
  ],
  'invite.make': [
    onBoard('makes one', OTHER, ({ boardId, who }) => {
      return call(makeInvite, who, { boardId }, { method: 'POST', body: { role: 'peer', hours: 1 } });
    }),
    onBoard('lists them', OTHER, ({ boardId, who }) => call(listInvites, who, { boardId })),
  ],
  'invite.end': [
    onBoard('takes one back', OTHER, async ({ boardId, who }) => {
      const { id } = await addInvite({ boardId }, anInvite());
      return call(endInvite, who, { boardId, token: id }, { method: 'DELETE' });
    }),
  ],
  'member.role': [
    onFreshBoard('makes somebody a peer', OTHER, ({ boardId, who, whose }) => {
      const params = { boardId, personId: whose.id };
      return call(setRole, who, params, { method: 'PATCH', body: { role: 'peer' } });
    }),
  ],
  'member.end': [
    onFreshBoard(
      'ends it',
      OWN_OR_NOT,
      ({ boardId, who, whose }) => {
        return call(endAccess, who, { boardId, personId: whose.id }, { method: 'DELETE' });
      },
      NO_ROW,
    ),
  ],
  'consent.see': [
    {
      what: 'reads it',
      relations: ['own', 'ward', 'other'],
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        await aPainting(boardId, whose.id);
        const answer = await call(seeConsents, who, { boardId });
        if (!answer.ok) return outcomeOf(answer);
        const seen = (await answer.json()) as ConsentView[];
        return seen.some(({ person }) => person.id === whose.id) ? 'done' : 'refused';
      },
    },
  ],
  'consent.say': [
    onBoard('says it', ['own', 'ward', 'other'], ({ boardId, who, whose }) => {
      const params = { boardId, personId: whose.id, use: 'example' };
      return call(putConsent, who, params, { method: 'PUT', body: { given: true } });
    }),
  ],
  'group.see': [inGroup('opens it', ({ groupId, who }) => call(seeGroup, who, { groupId }))],
  'group.rename': [
    inGroup('renames it', ({ groupId, who }) => {
      return call(renameGroup, who, { groupId }, { method: 'PATCH', body: { name: 'Friday class' } });
    }),
  ],
  'group.delete': [
    inFreshGroup('deletes it', OTHER, ({ groupId, who }) =>
      call(deleteGroup, who, { groupId }, { method: 'DELETE' }),
    ),
  ],
  'group.board': [
    inGroup('makes one', ({ groupId, who }) => {
      return call(makeBoard, who, {}, { method: 'POST', body: { title: 'Weir', group: groupId } });
    }),
  ],
  'group.invite.make': [
    inGroup('makes one', ({ groupId, who }) => {
      return call(makeGroupInvite, who, { groupId }, { method: 'POST', body: { role: 'peer', hours: 1 } });
    }),
    inGroup('lists them', ({ groupId, who }) => call(listGroupInvites, who, { groupId })),
  ],
  'group.invite.end': [
    inGroup('takes one back', async ({ groupId, who }) => {
      const { id } = await addInvite({ groupId }, anInvite());
      return call(endGroupInvite, who, { groupId, token: id }, { method: 'DELETE' });
    }),
  ],
  'group.member.role': [
    inFreshGroup('makes somebody a peer', OTHER, ({ groupId, who, whose }) => {
      const params = { groupId, personId: whose.id };
      return call(setGroupRole, who, params, { method: 'PATCH', body: { role: 'peer' } });
    }),
  ],
  'group.member.end': [
    inFreshGroup(
      'ends it',
      OWN_OR_NOT,
      ({ groupId, who, whose }) => {
        return call(endMembership, who, { groupId, personId: whose.id }, { method: 'DELETE' });
      },
      NO_ROW,
    ),
  ],
  ...HOMEWORK_PROBES,
  ...OWN_TIME_PROBES,
  ...PATH_PROBES,
  ...SHEET_PROBES,
  ...DECENCY_PROBES,
};
