/**
 * How squinting looks: a blur, and a grey that keeps every colour's true luminance.
 *
 * The browser's own greyscale works on encoded values and shifts values by up to a step; this one works in
 * linear light with the luminance weights of IEC 61966-2-1 (rounded to four digits, as printed there).
 */
import type { Squint } from './tools.tsx';

const TO_LUMINANCE = `${'0.2126 0.7152 0.0722 0 0 '.repeat(3)}0 0 0 1 0`;
const BLUR = 'blur(max(4px, 0.5vw))';
const GREY = 'url(#true-grey)';

/** Value of `--picture-filter`. */
export function pictureFilter(squint: Squint): string {
  return { off: 'none', blur: BLUR, grey: GREY, both: `${BLUR} ${GREY}` }[squint];
}

/** The definition that `url(#true-grey)` names. */
export function PictureFilters() {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true">
      <filter id="true-grey" colorInterpolationFilters="linearRGB">
        <feColorMatrix type="matrix" values={TO_LUMINANCE} />
      </filter>
    </svg>
  );
}
