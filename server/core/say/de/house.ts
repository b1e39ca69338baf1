/** German of the house itself: who is here and what they may, files, rooms, archives, the demo. Pure. */
import type { Catalogue } from '../catalogue.ts';
import { houseAnswers } from './house-answers.ts';
import { houseArchives } from './house-archives.ts';
import { houseDemo } from './house-demo.ts';
import { housePeople } from './house-people.ts';
import { housePictures } from './house-pictures.ts';
import { houseRooms } from './house-rooms.ts';
import { houseRoutes } from './house-routes.ts';

export const house: Catalogue = {
  ...housePeople,
  ...houseAnswers,
  ...housePictures,
  ...houseRooms,
  ...houseRoutes,
  ...houseArchives,
  ...houseDemo,
};
