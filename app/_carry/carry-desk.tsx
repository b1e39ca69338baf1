'use client';
/**
 * The door to carrying planes over: begins it, and remembers what was carried last. What is being carried stands in
 * `carry-work`, which comes when it is first wanted.
 *
 * In the flow: carry button -> [carry-desk] -> carry-work -> layer, hand, controls -> live writers. Seen by nobody else
 * until it is taken; the others only see that somebody is placing planes.
 */
import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { CarryDesk, CarryTaken } from './carry-desk-types.ts';

const CarryWork = late(() => import('./carry-work.tsx').then((module) => module.CarryWork));

interface CarryDoor {
  begin(): void;
  /** Null while nothing is carried, and until the script is there. */
  work: CarryDesk | null;
  taken: CarryTaken | null;
  forgetTaken(): void;
}

const DoorContext = createContext<CarryDoor | null>(null);

/** @throws Error outside `CarryDeskProvider`: a bug. */
export function useCarryDoor(): CarryDoor {
  const door = useContext(DoorContext);
  if (!door) throw new Error('useCarryDoor is used outside CarryDeskProvider.');
  return door;
}

/** For parts that are shown while planes are carried. @throws Error while nothing is: a bug. */
export function useCarryDesk(): CarryDesk {
  const { work } = useCarryDoor();
  if (!work) throw new Error('useCarryDesk is used while nothing is carried.');
  return work;
}

/** Stands inside the live board and the tools. */
export function CarryDeskProvider({ children }: { children: ReactNode }) {
  const { tool, setTool, setSide } = useTools();
  const [fit, setFit] = useState(true);
  const [work, setWork] = useState<CarryDesk | null>(null);
  const [taken, setTaken] = useState<CarryTaken | null>(null);
  const begin = useCallback(() => {
    setTool('carry');
    setSide('painting');
  }, [setTool, setSide]);
  const carrying = tool === 'carry';
  const door = useMemo<CarryDoor>(
    () => ({ begin, work: carrying ? work : null, taken, forgetTaken: () => setTaken(null) }),
    [begin, carrying, work, taken],
  );
  return (
    <DoorContext value={door}>
      {carrying ? <CarryWork {...{ fit, setFit, setTaken }} tell={setWork} /> : null}
      {children}
    </DoorContext>
  );
}
