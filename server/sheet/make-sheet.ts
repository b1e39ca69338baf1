/**
 * A sheet's content to the bytes of one page.
 *
 * In the flow: pipeline/sheet-worker -> [make-sheet] -> handler. IO: reads the plates' files and the typeface. Texts are
 * made settable first, for what cannot be set has to be known before the page is laid out.
 */
import { type DocumentProps, renderToBuffer } from '@react-pdf/renderer';
import { createElement, type ReactElement } from 'react';
import type { CritiqueSheet, Paper, PlanSheet, SheetOrder } from '../core/sheet/content.ts';
import { firstPagePng } from '../imaging/page-png.ts';
import { type PagePicture, pagePicture } from '../imaging/sheet-picture.ts';
import { valuesPicture } from '../imaging/values-picture.ts';
import { fitCritique } from './critique-fit.ts';
import { CritiquePage } from './critique-page.tsx';
import { pageCount } from './page-count.ts';
import { fitPlan } from './plan-fit.ts';
import { type FramePictures, PlanPage } from './plan-page.tsx';
import { settable } from './settable.ts';
import { loadTypeface } from './typeface.ts';
import { Typesetter } from './typesetter.ts';

/** A sheet is sent by mail and kept on phones. */
const MOST_PNG_BYTES = 1_950_000;
/** Longest side of the painting on the page, pixels: more than its place takes at 200 dots an inch. */
const PAINTING_PX = 1280;
const REFERENCE_PX = 640;
const FRAME_PX = 760;
/** A page that came out as two is laid out again with more room, this often. */
const ATTEMPTS = 4;

/** @returns PDF, or PNG of the same page. @throws Problem `corners-invalid`, `card-invalid` of a photo. */
export async function makeSheet({ content, paper, as }: SheetOrder): Promise<Uint8Array> {
  const type = new Typesetter(await loadTypeface());
  const set = settable(content, (text) => type.plain(text));
  const page =
    set.about === 'critique' ? await critiquePage(set, paper, type) : await planPage(set, paper, type);
  const pdf = await onePage(page);
  return as === 'pdf' ? pdf : firstPagePng(pdf, MOST_PNG_BYTES);
}

/** A page that is laid out with more room at every further attempt. */
type Page = (attempt: number) => ReactElement;

async function onePage(page: Page): Promise<Uint8Array> {
  let pdf = new Uint8Array();
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    // The page is a document at its root, which its type does not say.
    pdf = new Uint8Array(await renderToBuffer(page(attempt) as unknown as ReactElement<DocumentProps>));
    if (pageCount(pdf) === 1) break;
  }
  return pdf;
}

async function critiquePage(sheet: CritiqueSheet, paper: Paper, type: Typesetter): Promise<Page> {
  const painting = await pagePicture(sheet.painting, PAINTING_PX);
  const reference = sheet.reference.picture && (await pagePicture(sheet.reference.picture, REFERENCE_PX));
  const { missing } = type;
  const aspect = aspectOf(painting);
  const referenceAspect = reference && aspectOf(reference);
  return (attempt) => {
    const fit = fitCritique(sheet, { paper, aspect, referenceAspect, attempt }, type);
    return createElement(CritiquePage, { paper, fit, painting, reference, missing });
  };
}

async function planPage(sheet: PlanSheet, paper: Paper, type: Typesetter): Promise<Page> {
  const pictures: FramePictures[] = [];
  for (const { picture, values } of sheet.frames) {
    pictures.push({
      frame: await pagePicture(picture, FRAME_PX),
      values: await valuesPicture(picture, values.count, values.cuts),
    });
  }
  const { missing } = type;
  const aspects = pictures.map(({ frame }) => aspectOf(frame));
  return (attempt) => {
    const fit = fitPlan(sheet, { paper, aspects, attempt }, type);
    return createElement(PlanPage, { paper, fit, pictures, missing });
  };
}

const aspectOf = ({ widthPx, heightPx }: PagePicture): number => widthPx / heightPx;
