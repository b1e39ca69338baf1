/**
 * The planning sheet: what one paints from before anything is painted.
 *
 * In the flow: content, pictures, fit -> [plan-page] -> make-sheet. Each frame beside its values, then the planned ladder
 * with its air and its steps in words. Draws with react-pdf.
 */
import { Image, View } from '@react-pdf/renderer';
import type { Paper, SheetFrame } from '../core/sheet/content.ts';
import { sheetWords } from '../core/sheet/words.ts';
import type { PagePicture } from '../imaging/sheet-picture.ts';
import { DrawnLadder } from './drawn-ladder.tsx';
import { GAP, LETTERS } from './paper.ts';
import type { PlanFit } from './plan-fit.ts';
import { Said } from './said.tsx';
import { SheetOfPaper } from './sheet-of-paper.tsx';

const { plan: words } = sheetWords;

/** A frame as it is, and in its values. */
export interface FramePictures {
  frame: PagePicture;
  values: PagePicture;
}

export interface PlanPageProps {
  fit: PlanFit;
  paper: Paper;
  pictures: readonly FramePictures[];
  missing: boolean;
}

export function PlanPage({ fit, paper, pictures, missing }: PlanPageProps) {
  const { sheet, ladder, ladderWidth, sideWidth, plotHeight } = fit;
  const { title, byline, foot } = sheet;
  return (
    <SheetOfPaper {...{ title, byline, foot, missing, paper }} gap={GAP}>
      <View>
        <Said letter={LETTERS.label}>{words.frames}</Said>
        {sheet.frames.map((frame, at) => (
          <Frame
            key={`${frame.name} ${frame.picture.box}`}
            frame={frame}
            pictures={pictures[at]}
            size={fit.pictures[at]}
          />
        ))}
        {sheet.framesNote ? <Said>{sheet.framesNote}</Said> : null}
      </View>
      <View style={ladder ? { flexDirection: 'row' } : { gap: GAP }}>
        {ladder ? (
          <DrawnLadder set={ladder} title={words.ladder} width={ladderWidth} plotHeight={plotHeight} />
        ) : (
          <Said>{sheet.noLadder}</Said>
        )}
        <View style={{ width: sideWidth, marginLeft: ladder ? GAP : 0 }}>
          <Said letter={LETTERS.label}>{words.air}</Said>
          <Said>{sheet.air}</Said>
          {sheet.steps.length > 0 ? <Steps steps={sheet.steps} /> : null}
        </View>
      </View>
    </SheetOfPaper>
  );
}

/** Each on lines of its own: the typeface has no sign for the end of a line. */
function Steps({ steps }: { steps: readonly string[] }) {
  return (
    <View style={{ marginTop: 7 }}>
      <Said letter={LETTERS.label}>{words.steps}</Said>
      {steps.map((step) => (
        <Said key={step}>{step}</Said>
      ))}
    </View>
  );
}

interface FrameProps {
  frame: SheetFrame;
  pictures: FramePictures | undefined;
  size: { width: number; height: number } | undefined;
}

function Frame({ frame, pictures, size }: FrameProps) {
  if (!pictures || !size) return null;
  return (
    <View style={{ marginTop: 3, marginBottom: 3 }}>
      <View style={{ flexDirection: 'row' }}>
        <Image src={{ data: pictures.frame.jpeg, format: 'jpg' }} style={size} />
        <Image src={{ data: pictures.values.jpeg, format: 'jpg' }} style={{ ...size, marginLeft: GAP }} />
      </View>
      <Said letter={LETTERS.label}>{frame.name}</Said>
      <Said>{frame.words}</Said>
    </View>
  );
}
