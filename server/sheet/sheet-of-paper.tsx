/**
 * One page in the sheet's typeface: its parts one under the other, the foot at the bottom.
 *
 * In the flow: pages -> [sheet-of-paper] -> make-sheet. Draws with react-pdf.
 */
import { Document, Page, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { LOCALE } from '../core/say/language.ts';
import type { Paper } from '../core/sheet/content.ts';
import { sheetWords as words } from '../core/sheet/words.ts';
import { INK, LETTERS, MARGIN, PAPER_SIZE, PAPER_WHITE } from './paper.ts';
import { Said } from './said.tsx';
import { FAMILIES } from './typeface.ts';

interface SheetOfPaperProps {
  title: string;
  byline: string;
  foot: string;
  /** Some letters could not be set, and the foot says so. */
  missing: boolean;
  paper: Paper;
  /** Between the parts, points. */
  gap: number;
  children: ReactNode;
}

export function SheetOfPaper({ title, byline, foot, missing, paper, gap, children }: SheetOfPaperProps) {
  const { width, height } = PAPER_SIZE[paper];
  return (
    <Document title={title} author={byline} creator="Veilstep" producer="Veilstep" language={LOCALE}>
      <Page
        size={[width, height]}
        style={{
          padding: MARGIN,
          // The library takes a list of families, each asked in turn; its types know one alone.
          fontFamily: FAMILIES as unknown as string,
          fontSize: LETTERS.body.size,
          color: INK,
          backgroundColor: PAPER_WHITE,
        }}
      >
        <View style={{ gap }}>
          <View>
            <Said letter={LETTERS.title}>{title}</Said>
            <Said quiet>{byline}</Said>
          </View>
          {children}
        </View>
        <View style={{ marginTop: 'auto', paddingTop: 4 }}>
          {missing ? <Said quiet>{words.missingLetters}</Said> : null}
          <Said quiet>{foot}</Said>
        </View>
      </Page>
    </Document>
  );
}
