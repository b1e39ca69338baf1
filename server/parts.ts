import type { Environment } from './env.ts';
import { offerServices } from './http/services.ts';
import type { Upgrade } from './http/web-server.ts';
import { dataFolderAnswers } from './store/data-folder.ts';
import { databaseAnswers } from './store/open-database.ts';

export interface Parts {
  live: Upgrade;
  closeRooms(): Promise<void>;
  stop(): Promise<void>;
}

export async function startParts(settings: Environment): Promise<Parts> {
  const missing = async () => {
    throw new Error('not wired yet');
  };
  offerServices({
    takeInPicture: missing,
    measuresOf: missing,
    pictureRemoved: async () => {},
    boardRemoved: async () => {},
    accessEnded: async () => {},
    boardChanged: () => {},
    healthy: async () => (await databaseAnswers()) && (await dataFolderAnswers(settings.dataFolder)),
  });
  return {
    live: (_request, socket) => void socket.destroy(),
    closeRooms: async () => {},
    stop: async () => {},
  };
}
