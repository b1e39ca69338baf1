'use client';
/**
 * How each hanging painting lies in its photograph, and its measures, fetched for all of them at once.
 *
 * In the flow: wall's handlers and measures -> [use-hung-data] -> rows, chart, far. While something is still being
 * measured it asks again, gently. IO: HTTP.
 */
import { useEffect, useState } from 'react';
import { fetchWork } from '#app/_api/wall.ts';
import { followMeasures } from '#app/_measures/use-measures.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { WallWork } from '#server/core/contract/wall.ts';

export interface HungData {
  /** Null until it is there. */
  work: WallWork | null;
  document: MeasureDocument | null;
  /** What the server is doing, or what it waits for; null when there is nothing to wait for. */
  pending: string | null;
  failed: boolean;
}

const NOTHING: HungData = { work: null, document: null, pending: null, failed: false };

export interface Wanted {
  boardId: string;
  pictureIds: readonly string[];
  /** Figures are kept back: they are not asked for, and those that were there are not shown. */
  veiled: boolean;
  /** Rises when all is to be fetched anew. */
  round: number;
}

/** Picture id → what is known of it. */
export function useHungData({ boardId, pictureIds, veiled, round }: Wanted): ReadonlyMap<string, HungData> {
  const [data, setData] = useState<ReadonlyMap<string, HungData>>(new Map());
  const key = pictureIds.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` is the list by its content; a new round is the reason to fetch.
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const put = (id: string, part: Partial<HungData>) => {
      if (signal.aborted) return;
      setData((before) => new Map(before).set(id, { ...(before.get(id) ?? NOTHING), ...part }));
    };
    if (veiled) setData((before) => new Map([...before].map(([id, each]) => [id, withoutFigures(each)])));
    for (const id of pictureIds) {
      fetchWork(boardId, id, signal).then(
        (work) => put(id, { work, failed: false }),
        () => put(id, { failed: true }),
      );
      if (veiled) continue;
      void followMeasures({ boardId, pictureId: id }, signal, ({ document, pending }) =>
        put(id, { ...(document === undefined ? {} : { document }), pending: pending ?? null }),
      );
    }
    return () => controller.abort();
  }, [boardId, key, veiled, round]);
  return data;
}

function withoutFigures(data: HungData): HungData {
  const { work } = data;
  return { ...data, work: work && { ...work, planes: [] }, document: null, pending: null };
}
