/**
 * Paints the planned light with WebGL 2 on a canvas of its own, in the preview's worker.
 *
 * In the flow: preview worker -> [gl-painter] -> canvas. Textures of the picture are sent once; moving a handle only sends
 * a table of lights. IO: an off-screen canvas.
 */
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { CURVE_STEPS, type PlaneLight } from '#server/core/plan/preview/plane-light.ts';
import type { PreviewGround } from '#server/core/plan/preview/preview-ground.ts';
import { BARE } from '#server/core/plan/preview/soft-planes.ts';
import { FACTS, FRAGMENT, VERTEX } from './relight-shader.ts';

type Seen = Pick<PreviewGround, 'raster' | 'calm' | 'soft'>;
const SAMPLERS = ['picture', 'calm', 'weights', 'lights'] as const;
type Sampler = (typeof SAMPLERS)[number];

/** Lights as a texture: a row a plane, `CURVE_STEPS` texels of curves, then gain, offset, and detail with the shift. */
export function lightTable(lights: readonly (PlaneLight | null)[]): Float32Array {
  const columns = CURVE_STEPS + FACTS;
  const table = new Float32Array(Math.max(1, lights.length) * columns * 4);
  lights.forEach((light, row) => {
    if (!light) return;
    const start = row * columns * 4;
    for (let step = 0; step < CURVE_STEPS; step++) {
      table[start + step * 4] = light.lightness[step] ?? 0;
      table[start + step * 4 + 1] = light.chroma[step] ?? 0;
    }
    const { gain, offset } = light.air;
    table.set([...gain, 1, ...offset, 0, light.detail, ...light.shift, 0], start + CURVE_STEPS * 4);
  });
  return table;
}

function shader(gl: WebGL2RenderingContext, kind: number, source: string): WebGLShader {
  const made = gl.createShader(kind);
  if (!made) throw new Error('No shader could be made.');
  gl.shaderSource(made, source);
  gl.compileShader(made);
  if (!gl.getShaderParameter(made, gl.COMPILE_STATUS)) {
    throw new Error(gl.getShaderInfoLog(made) ?? 'The shader could not be compiled.');
  }
  return made;
}

function programOf(gl: WebGL2RenderingContext): WebGLProgram {
  const program = gl.createProgram();
  gl.attachShader(program, shader(gl, gl.VERTEX_SHADER, VERTEX));
  gl.attachShader(program, shader(gl, gl.FRAGMENT_SHADER, FRAGMENT));
  gl.linkProgram(program);
  if (!gl.getProgramParameter(program, gl.LINK_STATUS)) {
    throw new Error(gl.getProgramInfoLog(program) ?? 'The shaders could not be linked.');
  }
  return program;
}

function opaque({ samples }: EncodedRaster): Uint8Array {
  const rgba = new Uint8Array((samples.length / 3) * 4).fill(255);
  for (let from = 0, to = 0; from < samples.length; from += 3, to += 4) {
    rgba[to] = samples[from] ?? 0;
    rgba[to + 1] = samples[from + 1] ?? 0;
    rgba[to + 2] = samples[from + 2] ?? 0;
  }
  return rgba;
}

export class GlPainter {
  readonly #canvas: OffscreenCanvas;
  readonly #gl: WebGL2RenderingContext;
  readonly #program: WebGLProgram;
  readonly #textures = new Map<Sampler, WebGLTexture>();
  #ground: Seen | null = null;

  /** @throws Error where WebGL 2 is missing. */
  constructor(canvas: OffscreenCanvas) {
    const gl = canvas.getContext('webgl2', { alpha: false, antialias: false, preserveDrawingBuffer: true });
    if (!gl) throw new Error('There is no WebGL 2 here.');
    this.#canvas = canvas;
    this.#gl = gl;
    this.#program = programOf(gl);
    // biome-ignore lint/correctness/useHookAtTopLevel: a call of WebGL, not a hook.
    gl.useProgram(this.#program);
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array([-1, -1, 3, -1, -1, 3]), gl.STATIC_DRAW);
    const corner = gl.getAttribLocation(this.#program, 'corner');
    gl.enableVertexAttribArray(corner);
    gl.vertexAttribPointer(corner, 2, gl.FLOAT, false, 0, 0);
    gl.pixelStorei(gl.UNPACK_ALIGNMENT, 1);
    SAMPLERS.forEach((name, unit) => {
      gl.uniform1i(gl.getUniformLocation(this.#program, name), unit);
      const texture = gl.createTexture();
      this.#textures.set(name, texture);
    });
  }

  paint(ground: PreviewGround, lights: readonly (PlaneLight | null)[]): void {
    if (this.#ground !== ground) this.#take(ground);
    this.#draw(lights);
  }

  #draw(lights: readonly (PlaneLight | null)[]): void {
    const gl = this.#gl;
    this.#bind('lights');
    const [columns, rows] = [CURVE_STEPS + FACTS, Math.max(1, lights.length)];
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA32F, columns, rows, 0, gl.RGBA, gl.FLOAT, lightTable(lights));
    gl.uniform1i(gl.getUniformLocation(this.#program, 'rows'), lights.length);
    gl.drawArrays(gl.TRIANGLES, 0, 3);
  }

  /** The picture as it is. */
  show(raster: EncodedRaster): void {
    const bare = new Uint8Array((raster.samples.length / 3) * 4);
    for (let at = 0; at < bare.length; at += 4) bare[at] = BARE;
    const { widthPx, heightPx } = raster;
    this.#take({ raster, calm: raster, soft: { widthPx, heightPx, packed: bare } });
    this.#draw([]);
  }

  #take(ground: Seen): void {
    const gl = this.#gl;
    const { widthPx, heightPx } = ground.raster;
    this.#canvas.width = widthPx;
    this.#canvas.height = heightPx;
    gl.viewport(0, 0, widthPx, heightPx);
    for (const [name, raster] of [
      ['picture', ground.raster],
      ['calm', ground.calm],
    ] as const) {
      this.#bind(name);
      gl.texImage2D(
        gl.TEXTURE_2D,
        0,
        gl.RGBA8,
        widthPx,
        heightPx,
        0,
        gl.RGBA,
        gl.UNSIGNED_BYTE,
        opaque(raster),
      );
    }
    this.#bind('weights');
    const { packed } = ground.soft;
    gl.texImage2D(
      gl.TEXTURE_2D,
      0,
      gl.RGBA8UI,
      widthPx,
      heightPx,
      0,
      gl.RGBA_INTEGER,
      gl.UNSIGNED_BYTE,
      packed,
    );
    this.#ground = ground;
  }

  /** Read by whole pixels: no filtering, no repeating. */
  #bind(name: Sampler): void {
    const gl = this.#gl;
    gl.activeTexture(gl.TEXTURE0 + SAMPLERS.indexOf(name));
    gl.bindTexture(gl.TEXTURE_2D, this.#textures.get(name) ?? null);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE);
  }
}
