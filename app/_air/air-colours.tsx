'use client';
/**
 * The colour of the air of each picture: measured or picked by hand, and the way to pick it.
 *
 * In the flow: measures + live `air` <-> [air-colours]; the tap itself is the easel's.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { figure, signedFigure } from '#app/_words/figures.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { hexFromLinear } from '#server/core/colour/hex.ts';
import { rgbFromLab } from '#server/core/colour/lab.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { LabColour } from '#server/core/contract/setup.ts';
import { airWords } from '#words/air.ts';
import styles from './air.module.css';

const { colour: words } = airWords;
type Side = 'reference' | 'painting';

export function AirColours({ document }: { document: MeasureDocument }) {
  const { referenceId, paintingId } = useTools();
  const shown: [Side, string | null][] = [
    ['reference', document.target === 'none' ? null : referenceId],
    ['painting', paintingId],
  ];
  return (
    <div className={styles.colours}>
      <h3 className={styles.coloursTitle}>{words.title}</h3>
      {shown.map(([side, pictureId]) =>
        pictureId ? (
          <AirColour key={side} side={side} pictureId={pictureId} colour={document.air[side]} />
        ) : null,
      )}
    </div>
  );
}

interface AirColourProps {
  side: Side;
  pictureId: string;
  colour: LabColour | null;
}

function AirColour({ side, pictureId, colour: measured }: AirColourProps) {
  const { air } = useBoardLive();
  const picked = air.get(pictureId) ?? null;
  const colour = picked ?? measured;
  return (
    <div className={styles.colour}>
      <i
        className={styles.swatch}
        style={colour ? { background: hexFromLinear(...rgbFromLab(colour)) } : undefined}
        aria-hidden="true"
      />
      <p>
        <span className={styles.of}>{words.of[side]}</span> {colour ? `${labText(colour)}, ` : null}
        <span title={colour && !picked ? words.measuredTitle : undefined}>
          {picked ? words.picked : colour ? words.measured : words.none}
        </span>
      </p>
      <Picking side={side} pictureId={pictureId} picked={picked !== null} />
    </div>
  );
}

/** Rounded to whole units: a photograph does not tell more. */
function labText({ L, a, b }: LabColour): string {
  return words.lab(figure(L, 0), signedFigure(a, 0), signedFigure(b, 0));
}

function Picking({ side, pictureId, picked }: { side: Side; pictureId: string; picked: boolean }) {
  const { may, write } = useBoardLive();
  const { tool, setTool, setSide, side: shown } = useTools();
  if (!may.setup) return null;
  if (tool === 'air' && shown === side) {
    return (
      <Button weight="word" onClick={() => setTool('look')}>
        {words.stop}
      </Button>
    );
  }
  const pick = () => {
    setSide(side);
    setTool('air');
  };
  return (
    <>
      <Button weight="word" aria-label={words.pickOf[side]} onClick={pick}>
        {picked ? words.again : words.pick}
      </Button>
      {picked ? (
        <Button
          weight="word"
          aria-label={words.measureOf[side]}
          onClick={() => write.setAir(pictureId, null)}
        >
          {words.measure}
        </Button>
      ) : null}
    </>
  );
}
