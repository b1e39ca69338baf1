/**
 * How large the parts of a critique's sheet may be so that it is one page: the painting takes what the words leave.
 *
 * In the flow: content -> [critique-fit] -> critique-page. The page is tried with room for all words first, then with
 * fewer lines for each, until the painting is large enough to work from; then the words are cut to their lines. Pure apart
 * from the typesetter given.
 */
import type { CritiqueSheet, Paper, SheetRemark } from '../core/sheet/content.ts';
import { sheetWords as words } from '../core/sheet/words.ts';
import { type SetLadder, setLadder } from './ladder-fit.ts';
import { GAP, LETTERS, LINE_HEIGHT, LIST_SIGN, MARGIN, PAPER_SIZE, SIGN_RADIUS } from './paper.ts';
import type { Typesetter } from './typesetter.ts';

/** Most lines of each text on the page. */
interface Lines {
  title: number;
  headline: number;
  how: number;
  check: number;
  answer: number;
  works: number;
  /** Of all numbered remarks together. */
  remarks: number;
  plotHeight: number;
}

const TRIES: readonly Lines[] = [
  { title: 2, headline: 2, how: 4, check: 3, answer: 1, works: 3, remarks: 16, plotHeight: 116 },
  { title: 2, headline: 2, how: 3, check: 2, answer: 1, works: 2, remarks: 12, plotHeight: 104 },
  { title: 2, headline: 1, how: 2, check: 2, answer: 1, works: 2, remarks: 10, plotHeight: 96 },
  { title: 1, headline: 1, how: 2, check: 1, answer: 0, works: 2, remarks: 9, plotHeight: 88 },
  { title: 1, headline: 1, how: 1, check: 1, answer: 0, works: 1, remarks: 9, plotHeight: 76 },
];

/** A painting lower than this is no use at the easel, points (about 72 mm). */
const LEAST_PICTURE = 205;
const MOST_PICTURE = 345;
/** Beside a painting there is a column at least this wide. */
const LEAST_SIDE = 172;
/** The parts of the page stand this far apart at most where there is room left. */
const MOST_GAP = 22;
const PARTS = 5;
/** Room that rounding and the typeface's kerning may take. */
const SLACK = 8;
/** A reference is there to be compared with, not to work from. */
const MOST_REFERENCE = 120;
/** It leaves this much of the painting's height to what is written beside it. */
const REFERENCE_SHARE = 0.32;

/** Room of a letter before its card, and of a number before its remark, points. */
export const LETTER_BOX = 2 * SIGN_RADIUS + 7;
export const REMARK_INDENT = LIST_SIGN + 5;

export interface CritiqueFit {
  /** With every text cut to its lines. */
  sheet: CritiqueSheet;
  ladder: SetLadder | null;
  width: number;
  gap: number;
  picture: { width: number; height: number };
  side: number;
  reference: { width: number; height: number };
  ladderWidth: number;
  remarksWidth: number;
  plotHeight: number;
}

export interface CritiqueSizes {
  paper: Paper;
  /** Width / height of the squared painting. */
  aspect: number;
  /** The same of the reference; null = it is not there. */
  referenceAspect: number | null;
  /** Higher numbers leave more room: 0 first. */
  attempt: number;
}

export function fitCritique(sheet: CritiqueSheet, sizes: CritiqueSizes, type: Typesetter): CritiqueFit {
  const page = PAPER_SIZE[sizes.paper];
  const width = page.width - 2 * MARGIN;
  const inner = page.height - 2 * MARGIN - SLACK - sizes.attempt * 24;
  const columns = columnsOf(sheet, width);
  const tried = TRIES.map((lines) => {
    const set = cutTo(sheet, lines, width, columns, type);
    const ladder = sheet.ladder ? setLadder(sheet.ladder, columns.ladderWidth, type) : null;
    const left = inner - wordsHeight(set, ladder, lines, width, columns, type);
    return { set, ladder, left, lines };
  });
  const chosen = tried.find(({ left }) => left >= LEAST_PICTURE) ?? tried.at(-1);
  if (!chosen) throw new Error('There is no way to set a sheet.');
  const { left, lines } = chosen;
  const room = Math.min(MOST_PICTURE, Math.max(LEAST_PICTURE / 2, left));
  const picture = inside(room, width - LEAST_SIDE - GAP, sizes.aspect);
  const side = width - picture.width - GAP;
  const reference = inside(
    Math.min(MOST_REFERENCE, picture.height * REFERENCE_SHARE),
    side,
    sizes.referenceAspect ?? 1,
  );
  const fit = { ladder: chosen.ladder, width, picture, side, reference, ...columns };
  return {
    ...fit,
    sheet: cutSide(chosen.set, sizes.referenceAspect === null ? null : reference.height, fit, type),
    gap: GAP + Math.min(MOST_GAP - GAP, Math.max(0, left - picture.height) / PARTS),
    plotHeight: lines.plotHeight,
  };
}

function inside(height: number, mostWidth: number, aspect: number) {
  const width = Math.min(mostWidth, height * aspect);
  return { width, height: width / aspect };
}

/** The ladder stands beside the remarks where there are any, else it has the whole width. */
function columnsOf(sheet: CritiqueSheet, width: number) {
  const spoken = sheet.remarks.some(({ number }) => number !== null);
  if (!spoken || !sheet.ladder) return { ladderWidth: width, remarksWidth: width };
  const ladderWidth = Math.round(width * 0.56);
  return { ladderWidth, remarksWidth: width - ladderWidth - GAP };
}

type Columns = ReturnType<typeof columnsOf>;

/** Every text but those of the side column, which is known once the painting's size is. */
function cutTo(
  sheet: CritiqueSheet,
  lines: Lines,
  width: number,
  { ladderWidth, remarksWidth }: Columns,
  type: Typesetter,
): CritiqueSheet {
  const { body, title, works, card } = LETTERS;
  const column = width - LETTER_BOX;
  return {
    ...sheet,
    title: type.cut(sheet.title, title, width, lines.title),
    byline: type.cut(sheet.byline, body, width, 1),
    works: type.cut(sheet.works, works, width, lines.works),
    noCards: type.cut(sheet.noCards, body, width, 3),
    cards: sheet.cards.map((each) => ({
      ...each,
      headline: type.cut(each.headline, card, column, lines.headline),
      how: type.cut(each.how, body, column, lines.how),
      check: type.cut(each.check, body, column - type.width(`${words.check}: `, LETTERS.label), lines.check),
      answer: lines.answer === 0 ? '' : type.cut(each.answer, body, column, lines.answer),
    })),
    remarks: cutRemarks(sheet.remarks, lines.remarks, remarksWidth, type),
    moreRemarks: type.cut(sheet.moreRemarks, body, remarksWidth, 2),
    noLadder: type.cut(sheet.noLadder, body, ladderWidth, 3),
    foot: type.cut(sheet.foot, body, width, 1),
  };
}

function wordsHeight(
  set: CritiqueSheet,
  ladder: SetLadder | null,
  lines: Lines,
  width: number,
  columns: Columns,
  type: Typesetter,
): number {
  const head = type.height(set.title, LETTERS.title, width) + LINE_HEIGHT;
  const works = LINE_HEIGHT + type.height(set.works, LETTERS.works, width);
  const foot = LINE_HEIGHT * (type.missing ? 2 : 1);
  const parts = [head, works, cardsHeight(set, width, type), foot];
  const ladderHeight = ladder
    ? ladder.around + lines.plotHeight
    : type.height(set.noLadder, LETTERS.body, columns.ladderWidth);
  const remarks = remarksHeight(set, columns.remarksWidth, type);
  const beside = columns.ladderWidth !== columns.remarksWidth;
  const bottom = beside ? Math.max(ladderHeight, remarks) : ladderHeight + remarks + 4;
  return parts.reduce((sum, part) => sum + part, bottom) + PARTS * GAP;
}

function cardsHeight(set: CritiqueSheet, width: number, type: Typesetter): number {
  const { body, card } = LETTERS;
  if (set.cards.length === 0) return LINE_HEIGHT + type.height(set.noCards, body, width);
  const column = width - LETTER_BOX;
  const cards = set.cards.map(({ how, check, headline, answer }) => {
    const checked = check ? type.height(`${words.check}: ${check}`, body, column) : 0;
    return (
      type.height(headline, card, column) +
      type.height(how, body, column) +
      checked +
      answerHeight(answer) +
      6
    );
  });
  const health = set.cards.some(({ healthLine }) => healthLine) ? LINE_HEIGHT + 3 : 0;
  return cards.reduce((sum, each) => sum + each, LINE_HEIGHT + health);
}

const answerHeight = (answer: string): number => (answer === '' ? 0 : LINE_HEIGHT);

function remarksHeight({ remarks, moreRemarks }: CritiqueSheet, width: number, type: Typesetter): number {
  const { body } = LETTERS;
  const heights = remarks.flatMap(({ number, words: said }) => {
    if (number === null) return [];
    return [Math.max(LIST_SIGN, type.height(said, body, width - REMARK_INDENT) + 2) + 2];
  });
  const all = heights.reduce((sum, each) => sum + each, LINE_HEIGHT);
  return all + type.height(moreRemarks, body, width);
}

/**
 * Numbered remarks with who said them, cut. Each gets a line; those left go to the first ones that want more, four at
 * most.
 */
function cutRemarks(
  remarks: readonly SheetRemark[],
  most: number,
  width: number,
  type: Typesetter,
): SheetRemark[] {
  const column = width - REMARK_INDENT;
  const texts = remarks.map(({ who, words: said, state }) => {
    return `${words.said(who, said)}${state ? ` (${state})` : ''}`;
  });
  const wanted = remarks.map(({ number }, at) => {
    return number === null ? 0 : Math.min(4, type.lines(texts[at] ?? '', LETTERS.body, column));
  });
  const given = wanted.map((lines) => Math.min(1, lines));
  let left = most - given.reduce((sum, lines) => sum + lines, 0);
  for (let round = 2; round <= 4; round++) {
    wanted.forEach((lines, at) => {
      if (lines < round || left <= 0) return;
      given[at] = round;
      left--;
    });
  }
  return remarks.map((remark, at) => {
    const lines = given[at] ?? 0;
    return lines === 0
      ? remark
      : { ...remark, words: type.cut(texts[at] ?? '', LETTERS.body, column, lines) };
  });
}

/** Texts beside the painting, cut to what its height leaves them. @param reference Height of the reference, or null. */
function cutSide(
  set: CritiqueSheet,
  reference: number | null,
  { side, picture }: Pick<CritiqueFit, 'side' | 'picture'>,
  type: Typesetter,
): CritiqueSheet {
  const { body } = LETTERS;
  const shown = set.reference.picture === null ? set.reference.why : set.reference.caption;
  const caption = type.cut(shown, body, side, reference === null ? 4 : 2);
  const conditions = type.cut(set.conditions, body, side, 2);
  const label = LINE_HEIGHT + 7;
  const used =
    (reference ?? 0) + type.height(caption, body, side) + 3 * label + type.height(conditions, body, side);
  const left = Math.max(2, Math.floor((picture.height - used + 6) / LINE_HEIGHT));
  const intentionLines = Math.max(
    1,
    Math.min(6, left - 1, left - Math.min(2, type.lines(set.capture.sentence, body, side))),
  );
  const intention = type.cut(set.intention, body, side, intentionLines);
  const taken = type.lines(intention, body, side);
  const sentence = type.cut(set.capture.sentence, body, side, Math.max(1, Math.min(4, left - taken)));
  return {
    ...set,
    reference:
      set.reference.picture === null ? { picture: null, why: caption } : { ...set.reference, caption },
    intention,
    conditions,
    capture: { headline: set.capture.headline, sentence },
  };
}
