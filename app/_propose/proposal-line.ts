/**
 * The page's line to the worker that finds planes; what was found in a picture is kept while the page is open.
 *
 * In the flow: use-groupings -> [proposal-line] -> propose worker. IO: a worker, opened with the first question and let
 * go of after each answer, since it holds a whole picture.
 */
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { Groupings } from './groupings.ts';
import type { ProposeAnswer, ProposeQuestion } from './propose.worker.ts';

export interface ProposeWish {
  boardId: string;
  pictureId: string;
  /** Long side of the original, pixels. */
  longSidePx: number;
  photo: ProposeQuestion['photo'];
}

export type Doing = ProposeQuestion['ask'];

/** Found in that many pictures and states of their corners at most. */
const KEPT = 6;

interface Looking {
  found: Promise<Groupings>;
  doing: Doing;
  /** Who wants to know what is being done. */
  tell: Set<(doing: Doing) => void>;
}

export class ProposalLine {
  readonly #kept = new Map<string, Looking>();

  /**
   * @param tell Called at once and with each further step, until the answer is there.
   * @throws Error when the picture cannot be fetched, or this browser cannot look at it.
   */
  groupings(wish: ProposeWish, tell: (doing: Doing) => void): Promise<Groupings> {
    const key = JSON.stringify(wish);
    const known = this.#kept.get(key);
    const looking = known ?? this.#look(wish);
    tell(looking.doing);
    looking.tell.add(tell);
    if (known) return known.found;
    this.#kept.set(key, looking);
    looking.found.catch(() => this.#kept.delete(key));
    for (const old of [...this.#kept.keys()].slice(0, -KEPT)) this.#kept.delete(old);
    return looking.found;
  }

  #look({ boardId, pictureId, longSidePx, photo }: ProposeWish): Looking {
    const line = new QuestionLine<ProposeQuestion, ProposeAnswer>(
      () => new Worker(new URL('./propose.worker.ts', import.meta.url), { type: 'module' }),
    );
    const copy: PictureSize = longSidePx > 1280 ? 2560 : 1280;
    const address = new URL(copyAddress(boardId, pictureId, copy), location.href).href;
    const looking: Omit<Looking, 'found'> = { doing: 'fetch', tell: new Set() };
    const step = async () => {
      try {
        await line.ask({ address, photo, ask: 'fetch' });
        looking.doing = 'propose';
        for (const tell of looking.tell) tell('propose');
        const found = await line.ask({ address, photo, ask: 'propose' });
        if (!found) throw new Error('The worker answered another question.');
        return found;
      } finally {
        line.close();
        looking.tell.clear();
      }
    };
    return Object.assign(looking, { found: step() });
  }
}
