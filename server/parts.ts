/**
 * The rooms and the workers, made known to each other and offered to Next's handlers.
 *
 * In the flow: main -> [parts] -> live, pipeline, demo. Main process only. IO: through its parts.
 */
import { isProblem } from './core/problem.ts';
import { seedDemo } from './demo/seed.ts';
import type { Environment } from './env.ts';
import { offerServices, type Services } from './http/services.ts';
import type { Upgrade } from './http/web-server.ts';
import { createLive, type Live } from './live/live.ts';
import { logError, logEvent, say } from './log.ts';
import { createRunner, type Runner } from './pipeline/runner.ts';
import { removeBoard } from './store/boards.ts';
import { dataFolderAnswers } from './store/data-folder.ts';
import { readFact } from './store/installation.ts';
import { databaseAnswers } from './store/open-database.ts';

export interface Parts {
  /** Answers an upgrade of `/live/…`. */
  live: Upgrade;
  /** Makes the demo board when this installation never had one; a failure is logged and stops nothing. */
  makeDemo(): Promise<void>;
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
  const services = join(settings, live, runner);
  offerServices(services);
  return {
    live: (request, socket, head) => live.handleUpgrade(request, socket, head),
    makeDemo: () => makeDemo(services, live),
    closeRooms: () => live.flush(),
    stop: () => runner.stop(),
  };
}

function join(settings: Environment, live: Live, runner: Runner): Services {
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
