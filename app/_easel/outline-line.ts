/**
 * The page's line to the worker that follows ridges and edits outlines.
 *
 * In the flow: hands of the outline tool -> [outline-line] -> outline worker. IO: a worker, opened with the first question.
 */
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline, PlaneKind } from '#server/core/contract/setup.ts';
import type { Ring } from '#server/core/planes/edit/layers.ts';
import type { Edited, EditTrouble } from '#server/core/planes/edit/regions.ts';
import type { SplitOff } from '#server/core/planes/edit/split.ts';
import type { OutlineAnswer, OutlineQuestion } from './outline.worker.ts';
import { losslessAddress } from './picture-copies.tsx';

type Rings = readonly (Ring | null)[];

/** What a stroke over patches came to: how they look together, and the outlines it leads to. */
export interface Painted {
  shape: Outline[];
  edited: Edited | EditTrouble;
}

export interface PaintStroke {
  wanted: number;
  trail: readonly FractionPoint[];
  plane: number;
  way: 'add' | 'away';
}

export class OutlineLine {
  readonly #line = new QuestionLine<OutlineQuestion, OutlineAnswer>(
    () => new Worker(new URL('./outline.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #boardId: string;

  constructor(boardId: string) {
    this.#boardId = boardId;
  }

  /** Works out the edges of a picture beforehand. Every question here rejects when the picture cannot be had. */
  async prepare(pictureId: string): Promise<void> {
    await this.#line.ask({ ask: 'edges', ...this.#on(pictureId) });
  }

  /** The line along the strongest edge; its first and last point are the two places. */
  async follow(pictureId: string, from: FractionPoint, to: FractionPoint): Promise<FractionPoint[]> {
    const { line } = await this.#line.ask({ ask: 'line', from, to, ...this.#on(pictureId) });
    return line ?? [from, to];
  }

  /** For each stretch the line along an edge, or null where the straight one is as good. */
  async better(
    pictureId: string,
    stretches: readonly (readonly [FractionPoint, FractionPoint])[],
  ): Promise<(FractionPoint[] | null)[]> {
    const { better } = await this.#line.ask({ ask: 'better', stretches, ...this.#on(pictureId) });
    return better ?? stretches.map(() => null);
  }

  /** How the patches under the hand look. */
  async under(pictureId: string, wanted: number, trail: readonly FractionPoint[]): Promise<Outline[]> {
    const { shape } = await this.#line.ask({ ask: 'under', wanted, trail, ...this.#on(pictureId) });
    return shape ?? [];
  }

  async paint(pictureId: string, rings: Rings, stroke: PaintStroke): Promise<Painted> {
    const answer = await this.#line.ask({ ask: 'paint', rings, ...stroke, ...this.#on(pictureId) });
    return {
      shape: answer.shape ?? [],
      edited: answer.edited ?? { trouble: 'nothing', plane: stroke.plane },
    };
  }

  /** Null when the line does not divide the plane. */
  async split(
    { width, height }: PictureView,
    rings: Rings,
    cut: { plane: number; kind: PlaneKind; line: FractionPoint[] },
  ): Promise<SplitOff | null> {
    const { split } = await this.#line.ask({ ask: 'split', size: [width, height], rings, ...cut });
    return split ?? null;
  }

  /** Null when the two cannot be one outline. */
  async merge(
    { width, height }: Pick<PictureView, 'width' | 'height'>,
    rings: Rings,
    pair: { one: number; other: number },
  ): Promise<Ring | null> {
    const { merged } = await this.#line.ask({ ask: 'merge', size: [width, height], rings, ...pair });
    return merged ?? null;
  }

  close(): void {
    this.#line.close();
  }

  #on(pictureId: string): { address: string } {
    return { address: new URL(losslessAddress(this.#boardId, pictureId), location.href).href };
  }
}
