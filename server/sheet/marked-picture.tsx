/**
 * The painting with its numbers and letters, and what was drawn on it.
 *
 * In the flow: content + picture -> [marked-picture] -> page. Numbers of remarks stand in white discs, letters of cards in
 * black squares, lines are black within white: they are told apart and seen on any picture without a hue.
 */
import { Circle, G, Image, Line, Path, Svg, View } from '@react-pdf/renderer';
import type { SheetCard, SheetRemark } from '../core/sheet/content.ts';
import { type PlacedSign, placeSigns } from '../core/sheet/place-signs.ts';
import type { PagePicture } from '../imaging/sheet-picture.ts';
import { INK, PAPER_WHITE, SIGN_RADIUS } from './paper.ts';
import { Sign } from './sign.tsx';

interface MarkedPictureProps {
  picture: PagePicture;
  /** Points. */
  width: number;
  height: number;
  remarks: readonly SheetRemark[];
  cards: readonly SheetCard[];
}

interface WantedSign {
  label: string;
  kind: 'remark' | 'card';
  wanted: { x: number; y: number };
}

export function MarkedPicture({ picture, width, height, remarks, cards }: MarkedPictureProps) {
  const signs = signsOf(remarks, cards, width, height);
  const places = placeSigns(
    signs.map(({ wanted }) => wanted),
    { width, height, radius: SIGN_RADIUS },
  );
  return (
    <View style={{ width, height, position: 'relative' }}>
      <Image src={{ data: picture.jpeg, format: 'jpg' }} style={{ width, height }} />
      <Svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        style={{ position: 'absolute', left: 0, top: 0 }}
      >
        {remarks.map((remark) => (
          <Drawn key={`${remark.number}-${remark.at}`} remark={remark} width={width} height={height} />
        ))}
        {signs.map(({ label, wanted }, at) => (
          <Lead key={label} from={wanted} to={places[at]} />
        ))}
        {signs.map(({ label, kind, wanted }, at) => {
          const { x, y } = places[at] ?? wanted;
          return <Sign key={label} label={label} kind={kind} x={x} y={y} />;
        })}
      </Svg>
    </View>
  );
}

/** Numbers first: a remark is about a spot, a card about a whole plane. */
function signsOf(
  remarks: readonly SheetRemark[],
  cards: readonly SheetCard[],
  width: number,
  height: number,
): WantedSign[] {
  const numbered = remarks.flatMap(({ number, at: [x, y], kind }): WantedSign[] => {
    if (number === null) return [];
    // What is drawn is not covered by its own number: it stands a little beside.
    const aside = kind === 'text' ? 0 : SIGN_RADIUS + 3;
    const wanted = { x: x * width + aside, y: y * height - aside };
    return [{ label: String(number), kind: 'remark', wanted }];
  });
  const lettered = cards.flatMap(({ letter, at }): WantedSign[] => {
    return at ? [{ label: letter, kind: 'card', wanted: { x: at[0] * width, y: at[1] * height } }] : [];
  });
  return [...numbered, ...lettered];
}

const HALO = 3.4;
const STROKE = 1.3;

/** From a sign that had to step aside to where it belongs. */
function Lead({ from, to }: { from: WantedSign['wanted']; to: PlacedSign | undefined }) {
  if (!to || to.moved <= SIGN_RADIUS) return null;
  const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  return (
    <G>
      <Line {...ends} stroke={PAPER_WHITE} strokeWidth={HALO} />
      <Line {...ends} stroke={INK} strokeWidth={STROKE} />
    </G>
  );
}

/** The spot of a pin, or the line that was drawn. */
function Drawn({ remark, width, height }: { remark: SheetRemark; width: number; height: number }) {
  const { kind, at, points } = remark;
  if (kind === 'text') return null;
  if (kind === 'pin' || kind === 'patch') {
    const [cx, cy] = [at[0] * width, at[1] * height];
    const r = kind === 'pin' ? 2.6 : 5;
    return (
      <G>
        <Circle cx={cx} cy={cy} r={r} fill="none" stroke={PAPER_WHITE} strokeWidth={HALO} />
        <Circle cx={cx} cy={cy} r={r} fill="none" stroke={INK} strokeWidth={STROKE} />
      </G>
    );
  }
  const d = pathOf(
    points.map(([x = 0, y = 0]) => [x * width, y * height] as const),
    kind,
  );
  return (
    <G>
      <Path d={d} fill="none" stroke={PAPER_WHITE} strokeWidth={HALO} strokeLinecap="round" />
      <Path d={d} fill="none" stroke={INK} strokeWidth={STROKE} strokeLinecap="round" />
    </G>
  );
}

type Point = readonly [number, number];
/** Length of an arrow's barbs and how far they open, points and radians. */
const BARB = 8;
const OPENING = 0.45;

function pathOf(points: readonly Point[], kind: 'stroke' | 'arrow' | 'outline'): string {
  const text = ([x, y]: Point) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  const line = points.map((point, at) => `${at === 0 ? 'M' : 'L'}${text(point)}`).join(' ');
  if (kind === 'outline') return `${line} Z`;
  const [tail, head] = [points.at(-2), points.at(-1)];
  if (kind === 'stroke' || !tail || !head) return line;
  const back = Math.atan2(tail[1] - head[1], tail[0] - head[0]);
  const barb = (turn: number): Point => [
    head[0] + BARB * Math.cos(back + turn),
    head[1] + BARB * Math.sin(back + turn),
  ];
  return `${line} M${text(barb(OPENING))} L${text(head)} L${text(barb(-OPENING))}`;
}
