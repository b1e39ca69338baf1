/**
 * The rooms and the workers, made known to each other and offered to Next's handlers.
 *
 * In the flow: main -> [parts] -> live, pipeline, demo. Main process only. IO: through its parts.
 */
import { setAnswer } from './core/live/card-answers.ts';
import { edit } from './core/live/document.ts';
import { putMarks } from './core/live/marks.ts';
import { putPaintingOutline } from './core/live/outlines.ts';
import { isProblem } from './core/problem.ts';
import { seedDemo } from './demo/seed.ts';
import type { Environment } from './env.ts';
import { offerServices, type Services } from './http/services.ts';
import type { Upgrade } from './http/web-server.ts';
import { createLive, type Live } from './live/live.ts';
import { logError, logEvent, say } from './log.ts';
import { takeInBoard } from './outward/take-in-board.ts';
import { type Comparer, createComparer } from './pipeline/comparer.ts';
import { createRelighter } from './pipeline/relighter.ts';
import { createRunner, type Runner } from './pipeline/runner.ts';
import { createSheets } from './pipeline/sheets.ts';
import { removeBoard } from './store/boards.ts';
import { dataFolderAnswers } from './store/data-folder.ts';
import { readFact } from './store/installation.ts';
import { databaseAnswers } from './store/open-database.ts';

export interface Parts {
  /** Answers an upgrade of `/live/…`. */
  live: Upgrade;
  /** Makes the demo board when this installation never had one; a failure is logged and stops nothing. */
  makeDemo(): Promise<void>;
  /** Makes ready, at leisure, what the first who asks would otherwise wait for. */
  warm(): Promise<void>;
  /** Sends everybody out of the rooms; all they wrote is stored when it resolves. */
  closeRooms(): Promise<void>;
  /** Stops the workers. */
  stop(): Promise<void>;
}

/** Starts rooms and workers over the open store. */
export async function startParts(settings: Environment): Promise<Parts> {
  // Each tells the other only once both are there: nothing changes before the first request.
  const runner: Runner = await createRunner({
    onResult: (boardId, pictureId, result) => live.setResult(boardId, pictureId, result),
    onError: (thrown, boardId, pictureId) => logError('measuring-failed', thrown, { boardId, pictureId }),
  });
  const live: Live = createLive({
    onRoomChanged: (boardId, room) => runner.roomChanged(boardId, room),
    onTrouble: (thrown) => logError('live-trouble', thrown),
  });
  const sheets = createSheets();
  const relighter = createRelighter();
  const comparer = createComparer((thrown, boardId, pictureId) =>
    logError('comparing-failed', thrown, { boardId, pictureId }),
  );
  const services = {
    ...join(settings, live, runner),
    ...ofStates(live, comparer),
    drawSheet: sheets.draw,
    plannedJpeg: relighter.pictureOf,
  };
  offerServices(services);
  return {
    live: (request, socket, head) => live.handleUpgrade(request, socket, head),
    makeDemo: () => makeDemo(services, live),
    warm: () => sheets.warm(),
    closeRooms: () => live.flush(),
    stop: async () => {
      await Promise.all([runner.stop(), sheets.stop(), comparer.stop(), relighter.stop()]);
    },
  };
}

/** What is offered about the states of a painting. */
type StateServices = Pick<Services, 'statesCompared' | 'statePicture' | 'answerMade' | 'outlinesMade'>;

function ofStates(live: Pick<Live, 'writeAs'>, comparer: Omit<Comparer, 'stop'>): StateServices {
  return {
    statesCompared: (pair) => comparer.compared(pair),
    statePicture: (pair, which) => comparer.picture(pair, which),
    answerMade: ({ boardId, pictureId }, writer, key, answer) =>
      live.writeAs(boardId, `painting/${pictureId}`, writer, (doc) => setAnswer(doc, key, answer)),
    outlinesMade: ({ boardId, pictureId }, writer, outlines) =>
      live.writeAs(boardId, `painting/${pictureId}`, writer, (doc) =>
        edit(doc, () => {
          for (const [planeId, outline] of outlines) putPaintingOutline(doc, planeId, outline);
        }),
      ),
  };
}

function join(
  settings: Environment,
  live: Live,
  runner: Runner,
): Omit<Services, 'drawSheet' | 'plannedJpeg' | keyof StateServices> {
  const announce = (boardId: string) => {
    live.announce(boardId).catch((thrown) => logError('announce-failed', thrown, { boardId }));
  };
  return {
    async takeInPicture(incoming) {
      const taken = await runner.takeInPicture(incoming);
      announce(incoming.boardId);
      return taken;
    },
    measuresOf: (boardId, pictureId) => runner.measuresOf(boardId, pictureId),
    planOf: (boardId, pictureId) => runner.planOf(boardId, pictureId),
    isVeiled: (boardId) => live.isVeiled(boardId),
    impressionsOf: (boardId, pictureId) => live.impressionsOf(boardId, pictureId),
    pictureNoted(boardId, pictureId) {
      runner.pictureNoted(boardId, pictureId);
      announce(boardId);
    },
    async pictureRemoved(boardId, pictureId) {
      const marks = await live.closePicture(boardId, pictureId);
      await runner.pictureRemoved(boardId, pictureId);
      announce(boardId);
      return marks;
    },
    markMade: (boardId, writer, mark) => live.addMark(boardId, writer, mark),
    markRemoved: (boardId, markId) => live.removeMark(boardId, markId),
    blocksChanged: (personIds) => live.blocksChanged(personIds),
    async boardRemoved(boardId) {
      await live.closeBoard(boardId);
      await runner.boardRemoved(boardId);
    },
    async accessChanged(boardIds) {
      for (const boardId of boardIds) {
        await live.recheck(boardId);
        announce(boardId);
      }
    },
    sessionsEnded: (sessionIds) => live.closeSessions(sessionIds),
    boardChanged: announce,
    takeInBoard,
    personForgotten: (boardId, personId) => live.forgetPerson(boardId, personId),
    marksTakenIn: (boardId, writer, marks) =>
      live.writeAs(boardId, 'marks', writer, (doc) => putMarks(doc, marks)),
    async healthy() {
      const answers = {
        database: await databaseAnswers(),
        dataFolder: await dataFolderAnswers(settings.dataFolder),
        rooms: await live.healthy(),
        workers: runner.healthy(),
      };
      const well = Object.values(answers).every(Boolean);
      if (!well) logEvent('not-healthy', answers);
      return well;
    },
  };
}

async function makeDemo(services: Services, live: Live): Promise<void> {
  try {
    if ((await readFact('demo-made')) !== null) return;
    say('Painting the demo board, at the first start only …');
    await seedDemo({
      takeInPicture: services.takeInPicture,
      writeAsServer: live.writeAsServer,
      async removeBoard(boardId) {
        await removeBoard(boardId);
        await services.boardRemoved(boardId);
      },
      now: new Date(),
    });
    say('The demo board is there.');
  } catch (thrown) {
    // A stop in the middle of the first start is no failure: the next start begins the demo anew.
    if (!isProblem(thrown) || thrown.code !== 'stopping') logError('demo-failed', thrown);
  }
}
