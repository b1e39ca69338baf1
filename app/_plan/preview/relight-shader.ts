/**
 * The planned light as a shader: what `core/plan/preview/relight.ts` does, in the same order, one pixel at a time.
 *
 * In the flow: gl-painter -> [relight-shader]. WebGL 2, GLSL ES 3.00. Everything is read by whole pixels, and curves are
 * read between their own steps by hand, so that nothing depends on how a card filters.
 */
import { RGB_FROM_XYZ, WHITE_D65, XYZ_FROM_RGB } from '#server/core/colour/spaces.ts';
import { CURVE_STEPS, MOST_CHROMA, MOST_LIGHTNESS } from '#server/core/plan/preview/plane-light.ts';
import { BARE } from '#server/core/plan/preview/soft-planes.ts';

export const VERTEX = `#version 300 es
in vec2 corner;
void main() { gl_Position = vec4(corner, 0.0, 1.0); }
`;

function glNumber(value: number): string {
  const text = value.toPrecision(9);
  return /[.e]/.test(text) ? text : `${text}.0`;
}

/** Columns first, as GLSL wants it. */
function glMatrix(rows: readonly (readonly number[])[]): string {
  const columns = [0, 1, 2].flatMap((column) => rows.map((row) => glNumber(row[column] ?? 0)));
  return `mat3(${columns.join(', ')})`;
}

const TO_WHITE = XYZ_FROM_RGB.map((row, at) => row.map((weight) => weight / (WHITE_D65[at] ?? 1)));
const FROM_WHITE = RGB_FROM_XYZ.map((row) => row.map((weight, at) => weight * (WHITE_D65[at] ?? 1)));

/** Texels in a plane's row after its curves: what happens to it, see `lightTable`. */
export const FACTS = 4;

export const FRAGMENT = `#version 300 es
precision highp float;
precision highp int;
precision highp sampler2D;
precision highp usampler2D;
uniform sampler2D picture;
uniform sampler2D calm;
uniform usampler2D weights;
uniform sampler2D lights;
uniform int rows;
out vec4 shown;

const mat3 TO_WHITE = ${glMatrix(TO_WHITE)};
const mat3 FROM_WHITE = ${glMatrix(FROM_WHITE)};

vec3 decoded(vec3 code) {
  return mix(code / 12.92, pow((code + 0.055) / 1.055, vec3(2.4)), greaterThan(code, vec3(0.04045)));
}

vec3 encoded(vec3 light) {
  return mix(light * 12.92, 1.055 * pow(max(light, vec3(1e-9)), vec3(1.0 / 2.4)) - 0.055, greaterThan(light, vec3(0.0031308)));
}

vec3 bent(vec3 t) {
  return mix((t * (24389.0 / 27.0) + 16.0) / 116.0, pow(max(t, vec3(1e-9)), vec3(1.0 / 3.0)), greaterThan(t, vec3(216.0 / 24389.0)));
}

vec3 unbent(vec3 f) {
  return mix((116.0 * f - 16.0) / (24389.0 / 27.0), f * f * f, greaterThan(f, vec3(6.0 / 29.0)));
}

float curve(int plane, float at, float most, int channel) {
  float place = clamp(at / most, 0.0, 1.0) * ${glNumber(CURVE_STEPS - 1)};
  int step = min(int(floor(place)), ${CURVE_STEPS - 2});
  float below = texelFetch(lights, ivec2(step, plane), 0)[channel];
  float above = texelFetch(lights, ivec2(step + 1, plane), 0)[channel];
  return below + (place - float(step)) * (above - below);
}

vec3 lit(int plane, vec3 light, vec3 level) {
  if (plane == ${BARE} || plane >= rows) return light;
  vec4 gain = texelFetch(lights, ivec2(${CURVE_STEPS}, plane), 0);
  if (gain.a < 0.5) return light;
  vec4 offset = texelFetch(lights, ivec2(${CURVE_STEPS + 1}, plane), 0);
  vec4 rest = texelFetch(lights, ivec2(${CURVE_STEPS + 2}, plane), 0);
  vec3 own = level + rest.x * (light - level);
  vec3 f = bent(TO_WHITE * clamp(own * gain.rgb + offset.rgb, 0.0, 1.0));
  vec2 ab = vec2(500.0 * (f.x - f.y), 200.0 * (f.y - f.z));
  float lightness = curve(plane, 116.0 * f.y - 16.0, ${glNumber(MOST_LIGHTNESS)}, 0);
  float reach = max(length(ab), 0.001);
  ab = ab * (curve(plane, reach, ${glNumber(MOST_CHROMA)}, 1) / reach) + rest.yz;
  float y = (lightness + 16.0) / 116.0;
  return clamp(FROM_WHITE * unbent(vec3(y + ab.x / 500.0, y, y - ab.y / 200.0)), 0.0, 1.0);
}

void main() {
  ivec2 size = textureSize(picture, 0);
  ivec2 at = ivec2(int(gl_FragCoord.x), size.y - 1 - int(gl_FragCoord.y));
  vec3 light = decoded(texelFetch(picture, at, 0).rgb);
  vec3 level = decoded(texelFetch(calm, at, 0).rgb);
  uvec4 soft = texelFetch(weights, at, 0);
  float second = float(soft.b) / 255.0;
  float third = float(soft.a) / 255.0;
  vec3 sum = (1.0 - second - third) * lit(int(soft.r & 15u), light, level);
  if (soft.b > 0u) sum += second * lit(int(soft.r >> 4u), light, level);
  if (soft.a > 0u) sum += third * lit(int(soft.g), light, level);
  shown = vec4(encoded(sum), 1.0);
}
`;
