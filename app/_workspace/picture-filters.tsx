/**
 * A grey that keeps every colour's true luminance.
 *
 * The browser's own greyscale works on encoded values and shifts values by up to a step; this one works in
 * linear light with the luminance weights of IEC 61966-2-1 (rounded to four digits, as printed there). The blur of
 * squinting is no filter: see `soft-layers.tsx`, which mixes light as the eye does.
 */
const TO_LUMINANCE = `${'0.2126 0.7152 0.0722 0 0 '.repeat(3)}0 0 0 1 0`;

/** The definition that `url(#true-grey)` names, in the sheets of what is looked at, where the page says `data-grey`. */
export function PictureFilters() {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true">
      <filter id="true-grey" colorInterpolationFilters="linearRGB">
        <feColorMatrix type="matrix" values={TO_LUMINANCE} />
      </filter>
    </svg>
  );
}
