'use client';
/**
 * One painting on the wall: its letter, and under it the ways of looking that are switched on.
 *
 * In the flow: wall-screen -> [hung-painting] -> rows. All frames have one size, so that rows stand on one level.
 */
import { wallWords as words } from '#words/wall.ts';
import { Drawn } from './drawn.tsx';
import { type Hung, smallSource } from './hung.ts';
import styles from './painting.module.css';
import { PaletteStrip } from './palette-strip.tsx';
import { type Looking, offeredRows, type Row } from './rows.ts';
import { SmallLadder } from './small-ladder.tsx';
import { useAsked } from './use-asked.ts';
import type { BitmapAsk, WallLine, WallSource } from './wall-line.ts';

/** How far the eyes are closed, as usual on the board: sigma as a share of the long side. */
const SQUINT = 0.014;

interface HungPaintingProps {
  boardId: string;
  hung: Hung;
  line: WallLine;
  looking: Looking;
  veiled: boolean;
  onLarge(letter: string): void;
}

export function HungPainting({ boardId, hung, line, looking, veiled, onLarge }: HungPaintingProps) {
  const { letter } = hung;
  const source = smallSource(boardId, hung);
  const shown = offeredRows(veiled).filter((row) => looking.rows.includes(row));
  return (
    <li className={styles.painting}>
      <h3 className={styles.head}>
        <span className={styles.letter}>{letter}</span>
        {hung.painter ? <span className={styles.name}>{hung.painter.name}</span> : null}
        {hung.mine ? <span className={styles.yours}>{words.yours}</span> : null}
      </h3>
      {shown.map((row) => (
        <RowOf key={row} {...{ row, hung, line, looking, source, onLarge }} />
      ))}
    </li>
  );
}

interface RowProps extends Pick<HungPaintingProps, 'hung' | 'line' | 'looking' | 'onLarge'> {
  row: Row;
  source: WallSource | null;
}

function RowOf({ row, hung, line, looking, source, onLarge }: RowProps) {
  const { letter, data } = hung;
  if (row === 'palette') return <Palette {...{ hung, line, looking, source }} />;
  if (row === 'ladder') return <Ladder hung={hung} />;
  const ways: Record<Exclude<Row, 'palette' | 'ladder'>, { ask: BitmapAsk; label: string }> = {
    picture: { ask: { ask: 'squared' }, label: words.pictureOf(letter) },
    squint: { ask: { ask: 'squint', squint: SQUINT }, label: words.squintOf(letter) },
    values: {
      ask: { ask: 'values', count: looking.count },
      label: words.valuesOf(letter, words.rows.countOf[looking.count] ?? ''),
    },
  };
  const way = ways[row];
  return (
    <button
      type="button"
      className={styles.frame}
      data-row={row}
      aria-label={words.large(way.label)}
      onClick={() => onLarge(letter)}
    >
      <Way line={line} source={source} ask={way.ask} label={way.label} failed={data?.failed ?? false} />
    </button>
  );
}

interface WayProps {
  line: WallLine;
  source: WallSource | null;
  ask: BitmapAsk;
  label: string;
  failed: boolean;
}

function Way({ line, source, ask, label, failed }: WayProps) {
  const asked = useAsked(source && JSON.stringify([source, ask]), () =>
    source ? line.bitmap(source, ask) : Promise.reject(new Error('Nothing is asked.')),
  );
  if (failed || asked.failed) return <span className={styles.note}>{words.failed}</span>;
  return <Drawn bitmap={asked.answer} label={label} className={styles.drawn} />;
}

function Palette({ hung, line, looking, source }: Omit<RowProps, 'row' | 'onLarge'>) {
  const planes = (hung.data?.work?.planes ?? []).map(({ outline }) => outline);
  const asked = useAsked(source && JSON.stringify([source, planes]), () =>
    source
      ? line.palette(source, { ask: 'palette', planes })
      : Promise.reject(new Error('Nothing is asked.')),
  );
  return <PaletteStrip letter={hung.letter} palette={asked.answer} order={looking.order} />;
}

function Ladder({ hung: { letter, data } }: { hung: Hung }) {
  if (data?.document) return <SmallLadder letter={letter} document={data.document} />;
  const waits = data?.work && data.work.planes.length === 0;
  return (
    <div className={styles.ladder} data-empty="">
      <p className={styles.note}>{waits ? words.noLadder : (data?.pending ?? words.measuring)}</p>
    </div>
  );
}
