'use client';
/**
 * Under the pictures while planes are carried over: what was found, take it or leave it, and how to change it.
 *
 * In the flow: easel bar -> [carry-controls] -> carry-desk.
 */
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { Choice } from '#app/_look/choice.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { carryWords as words } from '#words/carry.ts';
import styles from './carry.module.css';
import { useCarryDesk, useCarryDoor } from './carry-desk.tsx';
import type { CarryDesk } from './carry-desk-types.ts';
import { namesOf } from './names-of.ts';
import { useCarryKeys } from './use-carry-hand.ts';

export function CarryControls() {
  return useCarryDoor().work ? <Controls /> : null;
}

function Controls() {
  const desk = useCarryDesk();
  const press = useCarryKeys();
  const bar = useRef<HTMLElement>(null);
  const { heldBy, wish, carried, trouble, away, laid } = desk;
  const ready = carried !== null;
  useTakesKeys(bar, ready);
  if (heldBy) return <Alone sentence={words.heldBy(heldBy)} />;
  if (!wish) return <Alone sentence={words.nothingThere} />;
  // Arrows move the planes from here too, so that nobody has to look for the picture first.
  const onKeyDown = (event: KeyboardEvent) => {
    const onField = event.target instanceof HTMLElement && event.target.closest('select') !== null;
    if (onField || event.key === 'Enter' || event.ctrlKey || event.metaKey || event.altKey) return;
    if (press(event.key, event.shiftKey)) event.preventDefault();
  };
  return (
    <section ref={bar} className={styles.controls} aria-label={words.offer} onKeyDown={onKeyDown}>
      <Said />
      {away ? <Button onClick={desk.findAgain}>{words.tryAgain}</Button> : null}
      <div className={styles.acts}>
        {ready ? (
          <Button
            weight="main"
            data-take=""
            // Not truly disabled: it would lose the keys while ridges are fitted.
            aria-disabled={desk.doing !== null || carried.planes.length === 0}
            onClick={desk.accept}
          >
            {words.take}
          </Button>
        ) : null}
        <Button weight="word" onClick={desk.leave}>
          {words.leave}
        </Button>
      </div>
      {ready || trouble ? <Sources /> : null}
      {laid ? (
        <Choice
          label={words.ridges}
          options={[
            { value: true, name: words.fitted },
            { value: false, name: words.notFitted },
          ]}
          chosen={desk.fit}
          onChoose={desk.setFit}
        />
      ) : null}
      {laid ? <InHand /> : null}
      {ready ? (
        // Its room is kept from the start: nothing may grow under a hand that has just begun to drag.
        <span className={desk.moved ? undefined : styles.later}>
          <Button weight="word" onClick={desk.findAgain}>
            {words.again}
          </Button>
        </span>
      ) : null}
    </section>
  );
}

function Alone({ sentence }: { sentence: string }) {
  const { leave } = useCarryDesk();
  return (
    <section className={styles.controls} aria-label={words.offer}>
      <p role="status">{sentence}</p>
      <Sources />
      <Button weight="word" onClick={leave}>
        {words.leave}
      </Button>
    </section>
  );
}

/** Once there is something to take, the keys are on it, unless they are busy elsewhere. */
function useTakesKeys(bar: { current: HTMLElement | null }, ready: boolean): void {
  useEffect(() => {
    const free = document.activeElement === null || document.activeElement === document.body;
    if (ready && free) bar.current?.querySelector<HTMLElement>('[data-take]')?.focus({ preventScroll: true });
  }, [bar, ready]);
}

/** How sure the ridges are, or what is being done to them. */
function howSure({ doing, fit, trouble, doubts }: CarryDesk, planes: readonly PlaneView[]): string {
  if (doing) return words.fitting;
  if (!fit) return words.asLaid;
  if (trouble) return '';
  return doubts.length > 0 ? words.unsure(namesOf(doubts, planes)) : words.allSure;
}

/** What was found, or what stands in the way. */
function saidOf(desk: CarryDesk, planes: readonly PlaneView[]): string[] {
  const { carried, trouble, away, inHand, all } = desk;
  if (away) return [words.away];
  if (!carried) return [trouble ?? words.looking];
  const name = planes.find(({ id }) => id === inHand)?.name;
  return [
    trouble ?? (name === undefined ? words.ready : words.readyPlane(name)),
    howSure(desk, planes),
    carried.planes.length === 0 && !all ? words.allThere : '',
    ...carried.notes,
  ];
}

function Said() {
  const desk = useCarryDesk();
  const { planes } = useBoardLive();
  const troubled = desk.trouble !== null || desk.away;
  const now = saidOf(desk, planes).filter(Boolean).join(' ');
  // While a hand moves the planes the sentence stays: a line more or less would move the picture under it.
  const said = useRef(now);
  if (!desk.moving) said.current = now;
  return (
    <p role="status" className={troubled ? styles.trouble : undefined}>
      {said.current}
    </p>
  );
}

/** From which picture, and which of its planes. */
function Sources() {
  const { sources, sourceId, chooseSource, missing, all, setAll, wish } = useCarryDesk();
  const { outlinesOf } = useBoardLive();
  const { paintingId } = useTools();
  const some = paintingId !== null && outlinesOf(paintingId).size > 0 && missing.length > 0;
  return (
    <>
      {sources.length > 1 ? (
        <label className={styles.field}>
          {words.from}
          <select value={sourceId ?? ''} onChange={(event) => chooseSource(event.target.value)}>
            {sources.map(({ pictureId, name }) => (
              <option key={pictureId} value={pictureId}>
                {name}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {some && wish ? (
        <Choice
          label={words.which}
          options={[
            { value: false, name: words.missing(missing.length) },
            { value: true, name: words.all(wish.planes.length) },
          ]}
          chosen={all}
          onChoose={setAll}
        />
      ) : null}
    </>
  );
}

/** What the hand moves: everything, or one plane. */
function InHand() {
  const { carried, inHand, take } = useCarryDesk();
  const { planes } = useBoardLive();
  const there = planes.filter(({ id }) => carried?.planes.some((plane) => plane.id === id));
  if (there.length < 2) return null;
  return (
    <div className={styles.field}>
      <span aria-hidden="true">{words.move}</span>
      <fieldset className={styles.numbers} aria-label={words.move}>
        <button type="button" aria-pressed={inHand === null} onClick={() => take(null)}>
          {words.everything}
        </button>
        {there.map(({ id, number, name }) => (
          <button
            key={id}
            type="button"
            aria-pressed={inHand === id}
            aria-label={words.plane(number, name)}
            title={name}
            onClick={() => take(inHand === id ? null : id)}
          >
            {number}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
