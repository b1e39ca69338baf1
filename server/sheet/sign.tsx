/**
 * The number of a remark in a white disc, the letter of a card in a black square: on the painting and beside the words.
 *
 * In the flow: pages -> [sign]. Told apart by shape and weight, not by hue. Draws with react-pdf, sizes in points.
 */
import { Circle, G, Rect, Svg, Text } from '@react-pdf/renderer';
import { INK, PAPER_WHITE, SIGN_RADIUS } from './paper.ts';
import { FAMILIES } from './typeface.ts';

interface SignProps {
  label: string;
  kind: 'remark' | 'card';
  /** Middle of the sign within its drawing. */
  x: number;
  y: number;
}

const SIDE = SIGN_RADIUS * 1.72;
const SIZE = 12;
/** From the middle of a capital down to the line it stands on. */
const DOWN = SIZE * 0.33;

export function Sign({ label, kind, x, y }: SignProps) {
  const ink = kind === 'card' ? PAPER_WHITE : INK;
  return (
    <G>
      {kind === 'card' ? (
        <Rect
          x={x - SIDE / 2}
          y={y - SIDE / 2}
          width={SIDE}
          height={SIDE}
          fill={INK}
          stroke={PAPER_WHITE}
          strokeWidth={1}
        />
      ) : (
        <Circle cx={x} cy={y} r={SIGN_RADIUS - 0.7} fill={PAPER_WHITE} stroke={INK} strokeWidth={1.2} />
      )}
      <Text
        x={x}
        y={y + DOWN}
        textAnchor="middle"
        fill={ink}
        style={{ fontFamily: FAMILIES as unknown as string, fontSize: SIZE, fontWeight: 700 }}
      >
        {label}
      </Text>
    </G>
  );
}

/** A sign by itself, to stand beside words. */
export function SignBox({ label, kind, side }: Pick<SignProps, 'label' | 'kind'> & { side: number }) {
  const box = SIGN_RADIUS * 2;
  return (
    <Svg width={side} height={side} viewBox={`0 0 ${box} ${box}`}>
      <Sign label={label} kind={kind} x={SIGN_RADIUS} y={SIGN_RADIUS} />
    </Svg>
  );
}
