/**
 * How large the parts of a planning sheet may be so that it is one page: the frames take what the ladder leaves.
 *
 * In the flow: content -> [plan-fit] -> plan-page. Each frame stands beside its values; they share a row where two rows
 * would make both small. Pure apart from the typesetter given.
 */
import type { Paper, PlanSheet } from '../core/sheet/content.ts';
import { type SetLadder, setLadder } from './ladder-fit.ts';
import { GAP, LETTERS, LINE_HEIGHT, MARGIN, PAPER_SIZE } from './paper.ts';
import type { Typesetter } from './typesetter.ts';

const MOST_ROW = 230;
const PLOT = 120;
const SLACK = 8;
const MOST_STEPS = 12;

export interface PlanFit {
  sheet: PlanSheet;
  ladder: SetLadder | null;
  width: number;
  /** Of each frame, and of its values beside it. */
  pictures: { width: number; height: number }[];
  ladderWidth: number;
  sideWidth: number;
  plotHeight: number;
}

export interface PlanSizes {
  paper: Paper;
  /** Width / height of each frame. */
  aspects: readonly number[];
  attempt: number;
}

export function fitPlan(sheet: PlanSheet, { paper, aspects, attempt }: PlanSizes, type: Typesetter): PlanFit {
  const page = PAPER_SIZE[paper];
  const width = page.width - 2 * MARGIN;
  const inner = page.height - 2 * MARGIN - SLACK - attempt * 24;
  const ladderWidth = sheet.ladder ? Math.round(width * 0.56) : width;
  const sideWidth = sheet.ladder ? width - ladderWidth - GAP : width;
  const set = cutPlan(sheet, width, sideWidth, type);
  const ladder = sheet.ladder ? setLadder(sheet.ladder, ladderWidth, type) : null;
  const { body, title } = LETTERS;
  const sideHeight =
    (set.steps.length > 0 ? LINE_HEIGHT + 7 : 0) +
    LINE_HEIGHT +
    [set.air, ...set.steps].reduce((sum, text) => sum + type.height(text, body, sideWidth), 0);
  const ladderHeight = ladder ? ladder.around + PLOT : type.height(set.noLadder, body, width) + GAP;
  const bottom = ladder ? Math.max(ladderHeight, sideHeight) : ladderHeight + sideHeight;
  const head = type.height(set.title, title, width) + LINE_HEIGHT;
  const note = LINE_HEIGHT + type.height(set.framesNote, body, width);
  const captions = set.frames.length * (LINE_HEIGHT * 2 + 6);
  const foot = LINE_HEIGHT * (type.missing ? 2 : 1);
  const left = inner - head - note - captions - bottom - foot - 4 * GAP;
  const row = Math.min(MOST_ROW, Math.max(60, left / Math.max(1, set.frames.length)));
  const pictures = aspects.map((aspect) => {
    const wide = Math.min((width - GAP) / 2, row * aspect);
    return { width: wide, height: wide / aspect };
  });
  return { sheet: set, ladder, width, pictures, ladderWidth, sideWidth, plotHeight: PLOT };
}

function cutPlan(sheet: PlanSheet, width: number, sideWidth: number, type: Typesetter): PlanSheet {
  const { body, title, label } = LETTERS;
  return {
    ...sheet,
    title: type.cut(sheet.title, title, width, 2),
    byline: type.cut(sheet.byline, body, width, 1),
    frames: sheet.frames.map((frame) => ({
      ...frame,
      name: type.cut(frame.name, label, width, 1),
      words: type.cut(frame.words, body, width, 1),
    })),
    framesNote: type.cut(sheet.framesNote, body, width, 3),
    air: type.cut(sheet.air, body, sideWidth, 4),
    steps: sheet.steps
      .slice(0, MOST_STEPS)
      .map((step) => type.cut(step, body, sideWidth, sheet.steps.length > 6 ? 1 : 2)),
    foot: type.cut(sheet.foot, body, width, 1),
  };
}
