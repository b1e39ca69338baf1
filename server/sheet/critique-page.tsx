/**
 * The sheet of a painting's critique: one page to stand beside the easel.
 *
 * In the flow: content, pictures, fit -> [critique-page] -> make-sheet. From the top: whose painting, the painting with its
 * numbers beside what it is about, what works, what to try, the ladder and the remarks. Draws with react-pdf.
 */
import { Image, Text, View } from '@react-pdf/renderer';
import { HEALTH_LINE } from '../core/readings/health-line.ts';
import type { Paper, SheetCard, SheetRemark } from '../core/sheet/content.ts';
import { sheetWords as words } from '../core/sheet/words.ts';
import type { PagePicture } from '../imaging/sheet-picture.ts';
import { type CritiqueFit, LETTER_BOX, REMARK_INDENT } from './critique-fit.ts';
import { DrawnLadder } from './drawn-ladder.tsx';
import { MarkedPicture } from './marked-picture.tsx';
import { GAP, LETTERS, LIST_SIGN, SIGN_RADIUS } from './paper.ts';
import { Labelled, Said } from './said.tsx';
import { SheetOfPaper } from './sheet-of-paper.tsx';
import { SignBox } from './sign.tsx';

export interface CritiquePageProps {
  fit: CritiqueFit;
  paper: Paper;
  painting: PagePicture;
  reference: PagePicture | null;
  missing: boolean;
}

export function CritiquePage({ fit, paper, painting, reference, missing }: CritiquePageProps) {
  const { sheet, gap } = fit;
  const { title, byline, foot } = sheet;
  return (
    <SheetOfPaper {...{ title, byline, foot, missing, paper, gap }}>
      <Pictures fit={fit} painting={painting} reference={reference} />
      <View>
        <Said letter={LETTERS.label}>{words.works}</Said>
        <Said letter={LETTERS.works}>{sheet.works}</Said>
      </View>
      <Cards fit={fit} />
      <Bottom fit={fit} />
    </SheetOfPaper>
  );
}

function Pictures({ fit, painting, reference }: Pick<CritiquePageProps, 'fit' | 'painting' | 'reference'>) {
  const { picture, side, sheet } = fit;
  return (
    <View style={{ flexDirection: 'row' }}>
      <MarkedPicture picture={painting} {...picture} remarks={sheet.remarks} cards={sheet.cards} />
      <View style={{ width: side, height: picture.height, marginLeft: GAP }}>
        {reference ? (
          <Image src={{ data: reference.jpeg, format: 'jpg' }} style={{ ...fit.reference, flexShrink: 0 }} />
        ) : null}
        <Said>{sheet.reference.picture === null ? sheet.reference.why : sheet.reference.caption}</Said>
        <Labelled label={words.intention}>{sheet.intention}</Labelled>
        <Labelled label={words.conditions}>{sheet.conditions}</Labelled>
        <Labelled label={sheet.capture.headline}>{sheet.capture.sentence}</Labelled>
      </View>
    </View>
  );
}

function Cards({ fit }: { fit: CritiqueFit }) {
  const { cards, noCards } = fit.sheet;
  return (
    <View>
      <Said letter={LETTERS.label}>{words.cards}</Said>
      {cards.length === 0 ? <Said>{noCards}</Said> : null}
      {cards.map((card) => (
        <Card key={card.letter} card={card} width={fit.width - LETTER_BOX} />
      ))}
      {cards.some(({ healthLine }) => healthLine) ? (
        <View style={{ marginTop: 3 }}>
          <Said>{HEALTH_LINE}</Said>
        </View>
      ) : null}
    </View>
  );
}

function Card({ card, width }: { card: SheetCard; width: number }) {
  const { headline, how, check, answer } = card;
  return (
    <View style={{ flexDirection: 'row', marginTop: 6 }}>
      <View style={{ width: LETTER_BOX }}>
        <SignBox label={card.letter} kind="card" side={2 * SIGN_RADIUS} />
      </View>
      <View style={{ width }}>
        <Said letter={LETTERS.card}>{headline}</Said>
        {how ? <Said>{how}</Said> : null}
        {check ? (
          <Said>
            <Text style={{ fontWeight: LETTERS.label.weight }}>{words.check}: </Text>
            {check}
          </Said>
        ) : null}
        {answer ? <Said quiet>{answer}</Said> : null}
      </View>
    </View>
  );
}

function Bottom({ fit }: { fit: CritiqueFit }) {
  const { sheet, ladder, ladderWidth, remarksWidth, plotHeight } = fit;
  const beside = remarksWidth !== ladderWidth;
  return (
    <View style={beside ? { flexDirection: 'row' } : { gap: 4 }}>
      {ladder ? (
        <DrawnLadder set={ladder} title={words.ladder} width={ladderWidth} plotHeight={plotHeight} />
      ) : (
        <Said>{sheet.noLadder}</Said>
      )}
      <View style={{ width: remarksWidth, marginLeft: beside ? GAP : 0 }}>
        <Said letter={LETTERS.label}>{words.remarks}</Said>
        {sheet.remarks.map((remark) => {
          return remark.number === null ? null : <Remark key={remark.number} remark={remark} />;
        })}
        {sheet.moreRemarks ? <Said>{sheet.moreRemarks}</Said> : null}
      </View>
    </View>
  );
}

function Remark({ remark }: { remark: SheetRemark }) {
  return (
    <View style={{ flexDirection: 'row', marginTop: 2, alignItems: 'flex-start' }}>
      <View style={{ width: REMARK_INDENT }}>
        <SignBox label={String(remark.number)} kind="remark" side={LIST_SIGN} />
      </View>
      <View style={{ flex: 1, minHeight: LIST_SIGN, paddingTop: 2 }}>
        <Said>{remark.words}</Said>
      </View>
    </View>
  );
}
