'use client';
/**
 * Puts before the eye what the one looked with looks at, and tells the others what is looked at here.
 *
 * In the flow: presence -> [use-look-together] -> tools, ways of looking, view; and back. Told at most ten times a
 * second, and only while somebody looks with this person. Who looks with somebody hands on what they are shown, so that
 * two who look with one another never drift.
 */
import { useEffect, useRef } from 'react';
import { useEasel } from '#app/_easel/easel-state.tsx';
import { HALF_SIZE, WHOLE } from '#app/_easel/view-transform.ts';
import { usePresenceLine } from '#app/_live/board-live.tsx';
import { SQUINT_SHARES, useLooking } from '#app/_look/look-state.tsx';
import { useAllTools } from '#app/_workspace/tools-here.tsx';
import type { Look } from '#server/core/live/look.ts';
import { lookOf } from '#server/core/live/presence.ts';
import { VALUE_NUMBERS } from '#server/core/look/value-numbers.ts';
import { seenThrough, viewOf } from './look-view.ts';
import { useTogether } from './together.tsx';

const TELL_MS = 100;

interface Edge {
  edge: number;
  setEdge(edge: number): void;
}

/** Everything that is looked at on this screen, with how to change it. */
function useScreen({ edge, setEdge }: Edge) {
  const tools = useAllTools();
  const looking = useLooking();
  const easel = useEasel();
  return { tools, looking, easel, edge, setEdge };
}
type Screen = ReturnType<typeof useScreen>;

export function useLookTogether(edge: Edge): void {
  const screen = useScreen(edge);
  const now = useRef(screen);
  now.current = screen;
  useFollowed(now);
  useTold(now);
}

/** What is looked at here, or null while no picture has a size. */
function lookHere({ tools, looking, easel, edge }: Screen): Look | null {
  const { referenceId, paintingId, arrange, side, squint, hand } = tools;
  const { closed, valuesShown, valueNumber, sameCuts, mirrored, half } = looking;
  const ids = side === 'reference' ? [referenceId, paintingId] : [paintingId, referenceId];
  for (const pictureId of ids) {
    const lens = pictureId === null ? null : easel.lenses.get(pictureId);
    const seen = lens && seenThrough(easel.views.get(), lens);
    if (!seen) continue;
    return {
      ...{ pictureId, ...seen, referenceId, paintingId, arrange, side, edge, squint, closed },
      ...{ values: valuesShown ? valueNumber : null, sameCuts, mirrored, half, squared: easel.squared },
      movedMs: hand.lastMs,
    };
  }
  return null;
}

/** Tells what is looked at, while somebody looks with this person. */
function useTold(now: { current: Screen }): void {
  const line = usePresenceLine();
  const { lookers, following } = useTogether();
  const watched = lookers.length > 0;
  const leaderId = following?.personId ?? null;
  const telling = useRef<(() => void) | null>(null);
  useEffect(() => {
    if (!watched) return;
    let timer: ReturnType<typeof setTimeout> | null = null;
    let told = '';
    const tell = () => {
      timer = null;
      const look = leaderId === null ? lookHere(now.current) : lookOf(line.presentNow(), leaderId);
      const text = JSON.stringify(look);
      if (look === null || text === told) return;
      told = text;
      line.tell({ look });
    };
    const soon = () => {
      timer ??= setTimeout(tell, TELL_MS);
    };
    telling.current = soon;
    tell();
    const { views, lenses } = now.current.easel;
    const stops = [views.subscribe(soon), lenses.subscribe(soon)];
    if (leaderId !== null) stops.push(line.subscribePresence(soon));
    return () => {
      telling.current = null;
      if (timer) clearTimeout(timer);
      for (const stop of stops) stop();
      line.tell({ look: null });
    };
  }, [watched, leaderId, line, now]);
  // Whatever else is looked at comes with a new drawing of the easel.
  useEffect(() => telling.current?.());
}

/** Follows the one who is looked with. */
function useFollowed(now: { current: Screen }): void {
  const line = usePresenceLine();
  const { following } = useTogether();
  const leaderId = following?.personId ?? null;
  const last = useRef<Look | null>(null);
  useEffect(() => {
    const { hand } = now.current.tools;
    const { views, lenses } = now.current.easel;
    // Panning and zooming of one's own is a move of one's own.
    const stops = [views.subscribe(() => hand.moved())];
    const place = () => {
      if (last.current) hand.quietly(() => placeView(now.current, last.current));
    };
    if (leaderId !== null) {
      const take = () => {
        const look = lookOf(line.presentNow(), leaderId);
        if (!look || JSON.stringify(look) === JSON.stringify(last.current)) return;
        last.current = look;
        hand.quietly(() => show(now.current, look));
        place();
      };
      take();
      stops.push(line.subscribePresence(take), lenses.subscribe(place));
    }
    return () => {
      last.current = null;
      for (const stop of stops) stop();
    };
  }, [leaderId, line, now]);
}

/** Pictures and ways of looking. A picture that is not on this person's board stays away. */
function show({ tools, looking, easel, setEdge }: Screen, look: Look): void {
  if (look.referenceId !== null) tools.setReferenceId(look.referenceId);
  if (look.paintingId !== null) tools.setPaintingId(look.paintingId);
  tools.setArrange(look.arrange);
  tools.setSide(look.side);
  tools.setSquint(look.squint);
  setEdge(look.edge);
  looking.setClosed(Math.min(look.closed, SQUINT_SHARES.length - 1));
  looking.setValuesShown(look.values !== null);
  const values = VALUE_NUMBERS.find((number) => number === look.values);
  if (values !== undefined) looking.setValueNumber(values);
  looking.setSameCuts(look.sameCuts);
  looking.setMirrored(look.mirrored);
  looking.setHalf(look.half);
  easel.setSquared(look.squared);
}

/** The same spot of the picture, as large as this window allows. */
function placeView({ easel }: Screen, look: Look | null): void {
  if (!look) return;
  const lens = look.pictureId === null ? null : easel.lenses.get(look.pictureId);
  if (!lens || lens.window.width === 0) return;
  easel.views.set(look.half ? { ...WHOLE, zoom: HALF_SIZE } : viewOf(look, lens));
}
