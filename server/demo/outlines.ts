/**
 * The four planes of the demo photograph, outlined by hand on it, in pixels of its 2400 x 1598.
 *
 * Used by the seed (as fractions) and by the brush (as masks). Nearer covers farther, so each outline simply
 * runs below the ridge of the plane in front of it. Where bare twigs stand before the massif or the sky, the
 * line follows where they close up. Pure: no IO.
 */
import type { FractionPoint, PlaneKind, PlaneTilt } from '../core/contract/setup.ts';
import { say } from '../core/say/say.ts';

export const PHOTO_WIDTH_PX = 2400;
export const PHOTO_HEIGHT_PX = 1598;

/** One plane of the demo: what it is and where its ridge runs. */
export interface DemoPlane {
  id: string;
  name: string;
  kind: PlaneKind;
  tilt: PlaneTilt | null;
  /** Closed outline in 0..1 of the photograph. */
  outline: FractionPoint[];
}

/** x, y, x, y … of the massif's ridge against the sky, left to right. */
// biome-ignore format: a traced line reads best as a block of pairs
const MASSIF_RIDGE = [
  0, 446, 240, 353, 365, 317, 400, 295, 460, 276, 545, 262, 645, 253, 660, 255, 675, 265, 735, 267, 813, 231,
  850, 252, 885, 257, 940, 252, 950, 247, 957, 252, 1020, 223, 1060, 218, 1110, 224, 1130, 221, 1140, 226, 1212, 223,
  1245, 207, 1265, 205, 1310, 188, 1342, 200, 1350, 222, 1390, 229, 1426, 259, 1470, 256, 1512, 232, 1527, 231, 1568, 236,
  1583, 255, 1595, 256, 1617, 272, 1720, 252, 1730, 244, 1815, 243, 1850, 224, 1888, 233, 1925, 223, 1972, 226, 1984, 240,
  2020, 235, 2090, 264, 2105, 275, 2117, 290, 2117, 309, 2155, 336, 2175, 338, 2183, 350, 2205, 353, 2230, 345, 2255, 361,
  2285, 351, 2350, 384, 2400, 425,
];

/** Tops of the larches, the fir, the oak and the bare trees, left to right. */
// biome-ignore format: a traced line reads best as a block of pairs
const WOOD_RIDGE = [
  0, 352, 36, 372, 50, 350, 80, 390, 155, 404, 205, 453, 222, 436, 246, 440, 285, 483, 320, 466, 360, 509,
  387, 507, 400, 525, 435, 530, 457, 510, 490, 546, 512, 516, 537, 526, 552, 505, 570, 535, 590, 530, 624, 571,
  660, 556, 675, 531, 714, 580, 788, 612, 809, 560, 865, 636, 880, 636, 897, 600, 916, 634, 926, 640, 942, 620,
  973, 655, 1001, 631, 1080, 726, 1100, 705, 1131, 727, 1160, 681, 1216, 756, 1270, 773, 1332, 840, 1395, 828, 1435, 866,
  1536, 916, 1556, 908, 1578, 936, 1614, 946, 1637, 914, 1694, 932, 1690, 866, 1713, 841, 1719, 774, 1735, 766, 1750, 715,
  1765, 714, 1760, 686, 1788, 630, 1810, 651, 1817, 702, 1836, 710, 1836, 761, 1864, 759, 1851, 800, 1876, 809, 1870, 829,
  1905, 817, 1903, 838, 1914, 836, 1921, 774, 1929, 761, 1966, 782, 1965, 712, 1980, 718, 1985, 672, 2000, 688, 2024, 632,
  2037, 640, 2053, 618, 2071, 652, 2131, 635, 2169, 658, 2222, 642, 2368, 415, 2400, 330,
];

/** Where the meadow ends against the trees, left to right. */
// biome-ignore format: a traced line reads best as a block of pairs
const MEADOW_EDGE = [
  0, 963, 250, 962, 300, 970, 400, 972, 430, 976, 465, 975, 550, 992, 640, 995, 750, 1004, 850, 1019, 950, 1038,
  1040, 1050, 1190, 1057, 1240, 1067, 1340, 1078, 1400, 1081, 1520, 1093, 1600, 1104, 1660, 1108, 1725, 1118, 1760, 1118, 1840, 1130,
  1880, 1131, 1950, 1138, 1985, 1146, 2080, 1157, 2105, 1165, 2280, 1201, 2350, 1220, 2400, 1229,
];

/** Far to near. */
export const DEMO_PLANES: readonly DemoPlane[] = [
  {
    id: 'sky',
    name: say`Sky`,
    kind: 'sky',
    tilt: null,
    outline: closed([0, 0, PHOTO_WIDTH_PX, 0], 520),
  },
  { id: 'massif', name: say`Massif`, kind: 'land', tilt: 'upright', outline: closed(MASSIF_RIDGE, 990) },
  { id: 'wood', name: say`Rust wood`, kind: 'wood', tilt: 'upright', outline: closed(WOOD_RIDGE, 1260) },
  {
    id: 'meadow',
    name: say`Meadow`,
    kind: 'land',
    tilt: 'flat',
    outline: closed(MEADOW_EDGE, PHOTO_HEIGHT_PX),
  },
];

/** A ridge and the two corners below it, as fractions of the photograph. */
function closed(ridgePx: readonly number[], bottomPx: number): FractionPoint[] {
  const points: FractionPoint[] = [];
  for (let at = 0; at + 1 < ridgePx.length; at += 2) {
    points.push([(ridgePx[at] ?? 0) / PHOTO_WIDTH_PX, (ridgePx[at + 1] ?? 0) / PHOTO_HEIGHT_PX]);
  }
  points.push([1, bottomPx / PHOTO_HEIGHT_PX], [0, bottomPx / PHOTO_HEIGHT_PX]);
  return points;
}
