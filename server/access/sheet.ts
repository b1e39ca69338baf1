/**
 * What one person may take along of a painting's critique on a sheet, gathered from the store.
 *
 * In the flow: handler -> [sheet] -> services().drawSheet. A sheet leaves the board, so consent is asked anew here: see
 * `refuseSheet` and `takesReference`. IO: the database.
 */
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { BoardView, Pending, PictureView } from '../core/contract/responses.ts';
import { gapWords } from '../core/gaps/gap-words.ts';
import { ladderGeometry } from '../core/ladder/geometry.ts';
import { readOutlinesOf, readPaintingOutlines } from '../core/live/outlines.ts';
import { readPhoto } from '../core/live/painting.ts';
import { planeIdOfColumn } from '../core/live/plane-id-of-column.ts';
import { readConditions, readUnreliable } from '../core/live/scene.ts';
import type { ShownCard } from '../core/live/show-cards.ts';
import { statesOf } from '../core/own-time/states.ts';
import { planePlaces } from '../core/planes/plane-places.ts';
import { withoutMixing } from '../core/readings/without-mixing.ts';
import { type FractionMapper, fractionMapper } from '../core/rectify/fraction-mapper.ts';
import { sayValue } from '../core/say/say.ts';
import type { CritiqueSheet, PictureOrWhy, SheetCard, SheetLadder } from '../core/sheet/content.ts';
import { remarksOnSheet } from '../core/sheet/remarks-on-sheet.ts';
import { dayInWords, sheetWords as words } from '../core/sheet/words.ts';
import { blobPath } from '../store/blobs.ts';
import { findRendition } from '../store/renditions.ts';
import { SaidOnBoard } from './said-on-board.ts';
import { takesReference } from './sheet-consent.ts';

const LETTERS = ['A', 'B', 'C'];

interface Gathering {
  board: BoardView;
  painting: PictureView;
  said: SaidOnBoard;
  measured: MeasureDocument | null;
  mapper: FractionMapper;
}

/**
 * Everything on the sheet of a painting, as the person who takes it sees the board.
 *
 * @param board As they see it, with that painting among its pictures. @param now Day at the foot of the page.
 */
export async function critiqueSheet(
  board: BoardView,
  painting: PictureView,
  figures: MeasureDocument | Pending,
  now: Date,
): Promise<CritiqueSheet> {
  const said = new SaidOnBoard(board);
  const room = await said.document(`painting/${painting.id}`);
  const photo = readPhoto(room);
  const plain = board.school.noMixingHints ? withoutMixing : <Same>(same: Same) => same;
  const measured = 'pending' in figures ? null : plain(figures);
  const pending = 'pending' in figures ? figures.pending : '';
  const gathering: Gathering = { board, painting, said, measured, mapper: fractionMapper(photo) };
  const states = statesOf(board.pictures, painting.id);
  const state = states.findIndex(({ id }) => id === painting.id) + 1;
  const { name } = painting.painter;
  return {
    about: 'critique',
    title: painting.caption ?? words.untitled(name),
    byline: words.byline(name, state, states.length, dayInWords(painting.createdAt)),
    board: board.title,
    painting: { platePath: await platePath(board.id, painting.id), photo, box: null },
    reference: await referenceFor(gathering),
    intention: (await said.intention(painting.id)).replace(/\s+/g, ' ').trim() || words.noIntention,
    conditions: conditionsOf(await said.document('setup')),
    capture: captureOf(measured),
    works: measured?.works?.sentence ?? words.noWorks,
    cards: await cardsOf(gathering),
    noCards: noCardsBecause(measured, pending),
    ...(await remarksOf(gathering)),
    ladder: measured ? await ladderOf(measured, said) : null,
    noLadder: words.noLadder(pending),
    foot: words.foot(board.title, dayInWords(now.toISOString())),
  };
}

/** The file of the plate from which a picture is put on a page. */
export async function platePath(boardId: string, pictureId: string): Promise<string> {
  const plate = await findRendition(boardId, pictureId, 'plate');
  if (!plate) throw new Error(`The picture ${pictureId} has no plate.`);
  return blobPath(plate.hash);
}

/** The reference that a painting is measured against: the first with planes outlined, else the first. */
async function referenceFor({ board, said }: Gathering): Promise<PictureOrWhy> {
  const references = board.pictures.filter(({ kind }) => kind === 'reference');
  const setup = await said.document('setup');
  const reference = references.find(({ id }) => readOutlinesOf(setup, id).size > 0) ?? references[0];
  if (!reference) return { picture: null, why: words.noReference };
  if (!(await takesReference(board, reference))) return { picture: null, why: words.referenceNotShown };
  return {
    picture: { platePath: await platePath(board.id, reference.id), photo: null, box: null },
    caption: words.referenceCaption(reference.credit),
  };
}

function conditionsOf(setup: Parameters<typeof readConditions>[0]): string {
  const held = readConditions(setup).map((condition) => words.conditionNames[condition]);
  if (held.length === 0) return words.noConditions;
  const list = held.join(', ');
  return `${list.charAt(0).toUpperCase()}${list.slice(1)}.`;
}

function captureOf(measured: MeasureDocument | null): CritiqueSheet['capture'] {
  const grade = measured?.capture.grade ?? null;
  if (grade === null) return { headline: words.photoUngraded, sentence: words.ungraded };
  const reasons = measured?.capture.reasons ?? [];
  const against = reasons.length > 0 ? ` ${words.gradeReasons(reasons.map(sayValue).join(', '))}` : '';
  return { headline: words.photo(grade), sentence: `${words.grades[grade]}${against}` };
}

function noCardsBecause(measured: MeasureDocument | null, pending: string): string {
  if (!measured) return words.noCards.pending(pending);
  return measured.target === 'none' ? words.noCards.life : words.noCards.measured;
}

async function cardsOf({ said, painting, measured, mapper }: Gathering): Promise<SheetCard[]> {
  const { open } = await said.cards(painting.id, measured);
  const places = await placesOnPainting(said, painting.id, mapper);
  return open.slice(0, LETTERS.length).map((card, at) => ({
    letter: LETTERS[at] ?? '',
    at: (card.planeId === null ? null : places.get(card.planeId)) ?? null,
    headline: words.headline(card.where, card.words.what, card.key === 'photo'),
    how: card.words.how,
    check: card.words.check,
    healthLine: card.healthLine,
    answer: answerOf(card),
  }));
}

function answerOf({ answer }: ShownCard): string {
  return answer ? words.answeredWith(words.answered[answer.state], answer.words) : '';
}

/** Where each plane lies on the squared painting: by its own outline, else by the reference's, as measuring does. */
async function placesOnPainting(said: SaidOnBoard, paintingId: string, { toSquared }: FractionMapper) {
  const setup = await said.document('setup');
  const own = readPaintingOutlines(await said.document(`painting/${paintingId}`));
  const references = said.referenceIds().map((id) => readOutlinesOf(setup, id));
  const onReference = references.find((outlines) => outlines.size > 0) ?? new Map();
  const outlines = (await said.planes()).flatMap(({ id }) => {
    const outline = own.get(id)?.map(toSquared) ?? onReference.get(id);
    return outline ? [{ planeId: id, outline }] : [];
  });
  return planePlaces(outlines).badges;
}

async function remarksOf({ board, said, painting, mapper }: Gathering) {
  const people = [...board.pictures.map(({ painter }) => painter), ...board.members, board.owner, board.me];
  const names = new Map(people.map(({ id, name }) => [id, name]));
  const { remarks, more } = remarksOnSheet({
    marks: (await said.marks()).filter(({ pictureId }) => pictureId === painting.id),
    answers: await said.answers(painting.id),
    nameOf: (id) => names.get(id) ?? words.somebody,
    toSquared: mapper.toSquared,
  });
  return { remarks, moreRemarks: more };
}

async function ladderOf(measured: MeasureDocument, said: SaidOnBoard): Promise<SheetLadder> {
  const { target, capture } = measured;
  const planes = await said.planes();
  const unreliable = readUnreliable(await said.document('setup'));
  const untrusted = measured.planes.map(({ name }, at) => {
    const id = planeIdOfColumn(planes, name, at);
    return target === 'reference' && id !== null && unreliable.has(id);
  });
  return {
    geometry: ladderGeometry(measured.planes, untrusted),
    planes: measured.planes.map((plane, at) => ({
      name: plane.name,
      words: untrusted[at] ? words.untrusted : gapWords(plane, target, capture.grade).join(', '),
    })),
    against: words.against[target],
    key: target === 'none' ? null : { target: words.target[target], painting: words.painting },
  };
}
