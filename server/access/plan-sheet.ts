/**
 * What one person may take along of the plan of a photograph, gathered from the store.
 *
 * In the flow: handler -> [plan-sheet] -> services().drawSheet. The plan is what the live `setup` room says now; what is not
 * there is said. IO: the database.
 */
import type * as Y from 'yjs';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { BoardView, Pending, PictureView } from '../core/contract/responses.ts';
import { readCrops } from '../core/live/plan/crops.ts';
import { readKept, readTaken } from '../core/live/plan/taken-plan.ts';
import { readValues } from '../core/live/plan/values.ts';
import { readWishes } from '../core/live/plan/wishes.ts';
import { readPlanes } from '../core/live/planes.ts';
import { LIKELY_AIRS } from '../core/plan/air/likely-airs.ts';
import type { PlanSheet, SheetFrame } from '../core/sheet/content.ts';
import { plannedLadder, plannedSteps } from '../core/sheet/plan-on-sheet.ts';
import { dayInWords, sheetWords } from '../core/sheet/words.ts';
import { colourWords } from '../core/wall/colour-words.ts';
import { readDocument } from '../store/live-documents.ts';
import { platePath } from './sheet.ts';
import { takesReference } from './sheet-consent.ts';

const { plan: words } = sheetWords;

/** As many as a page shows large enough to paint from, each with its values. */
const MOST_FRAMES = 3;
/** Where nobody settled on a number of values. */
const USUAL_VALUES = 3;

/** @param figures The photograph's own, or why they are not there. @param now Day on the page. */
export async function planSheet(
  board: BoardView,
  photograph: PictureView,
  figures: MeasureDocument | Pending,
  now: Date,
): Promise<PlanSheet> {
  const setup = await readDocument(board.id, 'setup');
  const shown = await takesReference(board, photograph);
  const names = new Map(readPlanes(setup).map(({ id, name }) => [id, name]));
  const rungs = (readTaken(setup) ?? []).map(({ planeId, ...rung }) => ({
    ...rung,
    name: names.get(planeId ?? '') ?? rung.name,
  }));
  const measured = 'pending' in figures ? null : figures;
  const day = dayInWords(now.toISOString());
  return {
    about: 'plan',
    title: words.title(board.title),
    byline: words.byline(day),
    board: board.title,
    ...(shown ? await framesOf(board.id, photograph, setup) : { frames: [], framesNote: words.noPhotograph }),
    ladder: rungs.length > 0 ? plannedLadder(rungs, measured) : null,
    noLadder: words.noLadder,
    air: airOf(setup, measured),
    steps: plannedSteps(rungs),
    foot: sheetWords.foot(board.title, day),
  };
}

async function framesOf(
  boardId: string,
  { id, credit }: PictureView,
  setup: Y.Doc,
): Promise<Pick<PlanSheet, 'frames' | 'framesNote'>> {
  const plate = await platePath(boardId, id);
  const kept = readCrops(setup).filter(({ pictureId }) => pictureId === id);
  const frames = kept.slice(0, MOST_FRAMES).map((crop): SheetFrame => {
    const format = words.format(crop.format);
    const named = crop.canvas === null ? format : words.canvas(format, crop.canvas);
    return frameOf(setup, crop.id, { name: crop.name, words: named, plate, box: crop.box });
  });
  const whole = frameOf(setup, id, { name: words.whole, words: '', plate, box: null });
  const more = kept.length - frames.length;
  const said = [
    ...(kept.length === 0 ? [words.noFrames] : []),
    ...(more > 0 ? [words.moreFrames(more)] : []),
    ...(credit ? [`${sheetWords.referenceCaption(credit)}.`] : []),
  ];
  return { frames: frames.length > 0 ? frames : [whole], framesNote: said.join(' ') };
}

interface FrameFacts {
  name: string;
  words: string;
  plate: string;
  box: SheetFrame['picture']['box'];
}

/** @param id Of the frame or the photograph, under which its value plan is kept. */
function frameOf(setup: Y.Doc, id: string, facts: FrameFacts): SheetFrame {
  const plan = readValues(setup, id);
  const count = plan.count ?? USUAL_VALUES;
  const values = words.values(count, plan.count !== null);
  return {
    name: facts.name,
    words: facts.words ? `${facts.words}, ${values}` : values,
    picture: { platePath: facts.plate, photo: null, box: facts.box },
    values: { count, cuts: plan.cuts.get(count) ?? null },
  };
}

/** The air of the plan that was taken last, else of the wishes as they stand. */
function airOf(setup: Y.Doc, measured: MeasureDocument | null): string {
  const { air } = readKept(setup)[0]?.wishes ?? readWishes(setup);
  if (typeof air === 'string' && air !== 'photograph') return words.airWords(colourWords(LIKELY_AIRS[air]));
  if (air !== null && typeof air !== 'string') return words.airWords(colourWords(air));
  const own = measured?.air.painting ?? measured?.air.reference ?? null;
  return own ? `${words.photographsAir} ${words.airWords(colourWords(own))}` : words.photographsAir;
}
