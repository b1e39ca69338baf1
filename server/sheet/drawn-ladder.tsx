/**
 * The ladder on paper: the same geometry as on the screen, in lines that a grey printer keeps apart.
 *
 * In the flow: content -> [drawn-ladder] -> pages. The target's rim is dashed, the painting's solid; bars are filled with
 * the plane's own colours, whose greys are their values. Sizes in points.
 */
import { G, Line, Polyline, Rect, Svg, Text, View } from '@react-pdf/renderer';
import { barSlices } from '../core/ladder/bar-slices.ts';
import {
  AXIS_GREYS,
  type LadderBar,
  type LadderGeometry,
  type LadderPoint,
} from '../core/ladder/geometry.ts';
import type { SheetLadder } from '../core/sheet/content.ts';
import { sheetWords as words } from '../core/sheet/words.ts';
import type { SetLadder } from './ladder-fit.ts';
import { FAINT, INK, LADDER_AXIS, LETTERS, LINE, PAPER_WHITE } from './paper.ts';
import { Said } from './said.tsx';
import { FAMILIES } from './typeface.ts';

interface DrawnLadderProps {
  set: SetLadder;
  title: string;
  width: number;
  /** Of the plot alone. */
  plotHeight: number;
}

export function DrawnLadder({ set, title, width, plotHeight }: DrawnLadderProps) {
  const { ladder, column, feet, list } = set;
  return (
    <View style={{ width }}>
      <Said letter={LETTERS.label}>{`${title}, ${words.ladderOf}`}</Said>
      <Key ladder={ladder} />
      <Plot geometry={ladder.geometry} width={width} height={plotHeight} />
      <View style={{ flexDirection: 'row', marginLeft: LADDER_AXIS }}>
        {ladder.geometry.columns.map(({ number }) => (
          <View key={number} style={{ width: column, paddingHorizontal: 2 }}>
            <Said letter={LETTERS.label} centred>
              {feet[number - 1]?.name ?? ''}
            </Said>
            {feet[number - 1]?.words ? <Said centred>{feet[number - 1]?.words}</Said> : null}
          </View>
        ))}
      </View>
      {list ? <Said>{list}</Said> : null}
    </View>
  );
}

/** Which rim is which, as they are drawn. */
function Key({ ladder: { key, against } }: { ladder: SheetLadder }) {
  const sample = (dashed: boolean) => (
    <Svg width={12} height={9} viewBox="0 0 12 9" style={{ marginRight: 3, marginTop: 3 }}>
      <Rect
        x={1}
        y={1}
        width={10}
        height={7}
        fill="none"
        stroke={INK}
        strokeWidth={1.2}
        {...(dashed ? { strokeDasharray: '2.5 2' } : {})}
      />
    </Svg>
  );
  if (!key) return <Said>{against}</Said>;
  return (
    <View style={{ flexDirection: 'row' }}>
      {key.target === '' ? null : (
        <View style={{ flexDirection: 'row', marginRight: 10 }}>
          {sample(true)}
          <Said>{key.target}</Said>
        </View>
      )}
      {sample(false)}
      <Said>{key.painting}</Said>
    </View>
  );
}

function Plot({ geometry, width, height }: { geometry: LadderGeometry; width: number; height: number }) {
  const plotWidth = width - LADDER_AXIS;
  const barWidth = Math.min(18, (plotWidth / Math.max(1, geometry.columns.length)) * 0.16);
  const drawn = { left: LADDER_AXIS, width: plotWidth, height, barWidth };
  return (
    <Svg width={width} height={height + 12} viewBox={`0 -6 ${width} ${height + 12}`}>
      <Axis height={height} width={width} />
      <Run runs={geometry.targetLines} drawn={drawn} dashed />
      <Run runs={geometry.paintingLines} drawn={drawn} />
      {geometry.columns.map((column) => (
        <G key={column.number}>
          <Bar bar={column.target} drawn={drawn} dashed quiet={column.quietTarget} />
          <Bar bar={column.painting} drawn={drawn} />
        </G>
      ))}
    </Svg>
  );
}

const GREYS = 9;

function Axis({ width, height }: { width: number; height: number }) {
  const step = height / AXIS_GREYS.length;
  return (
    <G>
      {[0, 2, 4, 6, 8, 10].map((value) => (
        <G key={value}>
          <Line
            x1={LADDER_AXIS}
            x2={width}
            y1={height - value * step}
            y2={height - value * step}
            stroke={value % 10 === 0 ? LINE : FAINT}
            strokeWidth={0.6}
          />
          <Text
            x={LADDER_AXIS - GREYS - 6}
            y={height - value * step + 4}
            textAnchor="end"
            fill={INK}
            style={{ fontFamily: FAMILIES as unknown as string, fontSize: 11 }}
          >
            {String(value)}
          </Text>
        </G>
      ))}
      {AXIS_GREYS.map((grey, at) => (
        <Rect
          key={grey}
          x={LADDER_AXIS - GREYS - 3}
          y={height - (at + 1) * step}
          width={GREYS}
          height={step}
          fill={grey}
          stroke={LINE}
          strokeWidth={0.3}
        />
      ))}
    </G>
  );
}

interface Drawing {
  left: number;
  width: number;
  height: number;
  barWidth: number;
}

function Run({ runs, drawn, dashed = false }: { runs: LadderPoint[][]; drawn: Drawing; dashed?: boolean }) {
  return (
    <G>
      {runs.map((run) => {
        const points = run
          .map(({ x, y }) => `${(drawn.left + x * drawn.width).toFixed(1)},${(y * drawn.height).toFixed(1)}`)
          .join(' ');
        return (
          <Polyline
            key={points}
            points={points}
            fill="none"
            stroke={INK}
            strokeWidth={1}
            {...(dashed ? { strokeDasharray: '4 3' } : {})}
          />
        );
      })}
    </G>
  );
}

interface BarProps {
  bar: LadderBar | null;
  drawn: Drawing;
  dashed?: boolean;
  quiet?: boolean;
}

const SLICES = 24;

/** Each reaches a little under the next one, so that no white shows between them. */
function slicesOf(bar: LadderBar, top: number, tall: number) {
  const each = tall / SLICES;
  return barSlices(bar, SLICES).map((hex, at) => ({
    hex,
    y: top + at * each,
    reach: at === SLICES - 1 ? each : each * 1.5,
  }));
}

/** How far the rim stands from the colours, so that it changes none of them. */
const RIM = 1.6;
/** Length of the notches at the middle. */
const NOTCH = 2.6;

function Bar({ bar, drawn, dashed = false, quiet = false }: BarProps) {
  if (!bar) return null;
  const { height, barWidth } = drawn;
  const x = drawn.left + bar.x * drawn.width - barWidth / 2;
  const [top, tall] = [bar.top * height, bar.height * height];
  const slices = slicesOf(bar, top, tall);
  const middle = bar.middle === null ? null : bar.middle * height;
  const rim = { x: x - RIM, y: top - RIM, width: barWidth + 2 * RIM, height: tall + 2 * RIM };
  return (
    <G opacity={quiet ? 0.45 : 1}>
      <Rect {...rim} fill={PAPER_WHITE} />
      {slices.map(({ hex, y, reach }) => (
        <Rect key={y} x={x} y={y} width={barWidth} height={reach} fill={hex} />
      ))}
      <Rect
        {...rim}
        fill="none"
        stroke={INK}
        strokeWidth={1.1}
        {...(dashed ? { strokeDasharray: '3 2' } : {})}
      />
      {middle === null ? null : (
        <G>
          <Line x1={rim.x - NOTCH} x2={rim.x} y1={middle} y2={middle} stroke={INK} strokeWidth={2} />
          <Line
            x1={rim.x + rim.width}
            x2={rim.x + rim.width + NOTCH}
            y1={middle}
            y2={middle}
            stroke={INK}
            strokeWidth={2}
          />
        </G>
      )}
    </G>
  );
}
