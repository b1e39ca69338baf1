/**
 * K1: a horizon that halves the picture, and K8: three bands of one height.
 *
 * In the flow: shape scene -> [horizon] -> suggestions. Sources: Poore 1903 (unequal divisions); Harrison 1909, pp. 94,
 * 97 (a middle horizon can work when balanced otherwise). Pure.
 */
import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { chromaOf } from '../../colour/lab.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import { median } from '../../image/percentiles.ts';
import { say } from '../../say/say.ts';
import { shownColumns } from './ridge-lines.ts';
import { pointsAlong, type ShapeScene } from './shape-scene.ts';
import { type Seen, severityOf } from './suggestion.ts';

/** Heights from the middle, of the picture's, within which a horizon halves it. */
const HALVES = 0.03;
/**
 * Pull of sky to land within which neither wins: the trade's 0.8 to 1.25, widened on rendered scenes for this measure, in
 * which the land's chroma counts.
 */
const ALIKE = { least: 0.6, most: 1.67 };
/** Share of the columns in which a contour must show to divide the picture. */
const DIVIDES = 0.6;
/** Greatest height of three bands over the least: own estimate. */
const EQUAL_BANDS = 1.12;
/** And under which share of the picture's height bands are too narrow to count. */
const NARROW = 0.08;

/** Mean pull of the cells of one plane and of the others: |L* − the picture's mean| × (1 + C*ab / 30). */
function pulls({ columns, rows, labels, picture }: ShapeScene, sky: number): { sky: number; land: number } {
  const small = shrunkLinear(picture, Math.max(columns, rows));
  const lab = labPlanesFromLinear(small.linear);
  const mean = lab.lightness.reduce((sum, L) => sum + L, 0) / lab.lightness.length;
  const sums = { sky: 0, land: 0, skyCells: 0, landCells: 0 };
  for (let cell = 0; cell < lab.lightness.length; cell++) {
    const [x, y] = [cell % small.columns, Math.floor(cell / small.columns)];
    const own = Math.min(rows - 1, Math.floor(((y + 0.5) * rows) / small.rows)) * columns;
    const label = labels[own + Math.min(columns - 1, Math.floor(((x + 0.5) * columns) / small.columns))];
    const chroma = chromaOf(lab.a[cell] as number, lab.b[cell] as number);
    const pull = Math.abs((lab.lightness[cell] as number) - mean) * (1 + chroma / 30);
    if (label === sky) {
      sums.sky += pull;
      sums.skyCells++;
    } else {
      sums.land += pull;
      sums.landCells++;
    }
  }
  return { sky: sums.sky / Math.max(1, sums.skyCells), land: sums.land / Math.max(1, sums.landCells) };
}

/** The lower end of the sky at each column, cells; empty where there is no sky. */
export function skyline({ columns, rows, labels, planes }: ShapeScene): number[] {
  const sky = planes.findIndex(({ kind }) => kind === 'sky');
  if (sky < 0) return [];
  return Array.from({ length: columns }, (_, x) => {
    let y = 0;
    while (y < rows && labels[y * columns + x] === sky) y++;
    return y;
  });
}

/** K1. */
export function horizonHalves(scene: ShapeScene): Seen[] {
  const line = skyline(scene);
  const height = (median(line) ?? 0) / scene.rows;
  const away = Math.abs(height - 0.5);
  if (line.length === 0 || away >= HALVES) return [];
  const sky = scene.planes.findIndex(({ kind }) => kind === 'sky');
  const pull = pulls(scene, sky);
  const ratio = pull.sky / pull.land;
  if (!(ratio >= ALIKE.least && ratio <= ALIKE.most)) return [];
  return [
    {
      id: 'K1',
      kind: 'horizon-halves',
      planes: [],
      severity: severityOf(1 - away / HALVES),
      sentence: say`Look at the horizon: it cuts the picture in two equal parts. Try giving one more room.`,
      why: say`Unequal parts let one of them lead; two equal ones ask the eye to choose.`,
      source: say`Poore 1903 (unequal divisions); Harrison 1909, pp. 94, 97`,
      at: [
        [0, height],
        [1, height],
      ],
    },
  ];
}

/** Heights, 0..1, of contours that divide the picture from side to side, from the top down. */
function dividers(scene: ShapeScene): { name: string; height: number; plane: number }[] {
  return scene.ridges
    .filter((ridge) => shownColumns(ridge).length >= DIVIDES * scene.columns)
    .map((ridge) => {
      const heights = shownColumns(ridge).map((x) => ridge.heights[x] as number);
      return { name: ridge.name, plane: ridge.plane, height: (median(heights) as number) / scene.rows };
    })
    .sort((one, two) => one.height - two.height);
}

/** K8: three neighbouring bands, from top to bottom, of nearly one height. */
export function equalDivisions(scene: ShapeScene): Seen[] {
  const lines = dividers(scene);
  const ends = [0, ...lines.map(({ height }) => height), 1];
  for (let at = 0; at + 3 < ends.length; at++) {
    const four = ends.slice(at, at + 4);
    const bands = four.slice(1).map((end, band) => end - (four[band] as number));
    const [least, most] = [Math.min(...bands), Math.max(...bands)];
    if (least < NARROW || most / least > EQUAL_BANDS) continue;
    const between = lines.filter(
      ({ height }) => height > (four[0] as number) && height < (four[3] as number),
    );
    return [
      {
        id: 'K8',
        kind: 'equal-divisions',
        planes: between.map(({ name }) => name),
        severity: severityOf((EQUAL_BANDS - most / least) / (EQUAL_BANDS - 1)),
        sentence: say`Look at the bands: three of them have the same height. Try making one of them win.`,
        why: say`Unequal divisions, such as two to three or three to five, keep the eye moving.`,
        source: say`Poore 1903 (unequal divisions)`,
        at: between.flatMap(({ plane }) => {
          const ridge = scene.ridges.find((line) => line.plane === plane);
          return ridge ? pointsAlong(ridge, scene) : [];
        }),
      },
    ];
  }
  return [];
}
