'use client';
/**
 * Whom this person looks with, who looks with them, and who would like to speak.
 *
 * In the flow: presence and the class room -> [together] -> easel, faces, the strip beside the pictures. Whoever looks
 * with somebody tells so in presence; only then does the other's window tell what it looks at. Any move of one's own
 * lets go, and so does Escape.
 */
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from 'react';
import { useBoardLive, usePresenceLine } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { togetherWords as words } from '#words/together.ts';
import { type Following, type Gathering, gatheringOf } from './gathering.ts';
import { useBrought } from './use-brought.ts';
import { useGone } from './use-gone.ts';

export interface Together extends Gathering {
  following: Following | null;
  lookWith(person: { id: string; name: string }): void;
  letGo(): void;
  /** What became of looking with somebody who left, or null. */
  sentence: string | null;
}

const TogetherContext = createContext<Together | null>(null);

/** @throws Error outside `TogetherProvider`: a bug. */
export function useTogether(): Together {
  const together = useContext(TogetherContext);
  if (!together) throw new Error('useTogether is used outside TogetherProvider.');
  return together;
}

/** How long the sentence about somebody who left stands. */
const SENTENCE_MS = 12_000;

export function TogetherProvider({ children }: { children: ReactNode }) {
  const { board } = useBoardLive();
  const { hand } = useTools();
  const line = usePresenceLine();
  const gathering = useGathering(board.me.id);
  const [following, setFollowing] = useState<Following | null>(null);
  const [sentence, setSentence] = useState<string | null>(null);

  const letGo = useCallback(() => setFollowing(null), []);
  const follow = useCallback((next: Following) => {
    setSentence(null);
    setFollowing(next);
  }, []);
  const lookWith = useCallback(
    ({ id, name }: { id: string; name: string }) => follow({ personId: id, name, brought: false }),
    [follow],
  );
  const personId = following?.personId ?? null;
  useEffect(() => line.tell({ with: personId }), [line, personId]);
  useEffect(() => (personId === null ? undefined : hand.subscribe(letGo)), [hand, personId, letGo]);
  useEscape(personId !== null, letGo);
  useBrought({ gathering, following, follow, letGo });
  useGone(personId, () => {
    if (following) setSentence(words.left(following.name));
    letGo();
  });
  useEffect(() => {
    if (sentence === null) return;
    const timer = setTimeout(() => setSentence(null), SENTENCE_MS);
    return () => clearTimeout(timer);
  }, [sentence]);

  const together = useMemo<Together>(
    () => ({ ...gathering, following, lookWith, letGo, sentence }),
    [gathering, following, lookWith, letGo, sentence],
  );
  return <TogetherContext value={together}>{children}</TogetherContext>;
}

/** Who is here and what they wish; the same object while nothing of it changes, however much hands move. */
function useGathering(meId: string): Gathering {
  const line = usePresenceLine();
  const now = () => JSON.stringify(gatheringOf(line.presentNow(), meId));
  const text = useSyncExternalStore(line.subscribePresence, now, now);
  return useMemo(() => JSON.parse(text) as Gathering, [text]); // just written from one
}

/** Escape lets go, unless something nearer to the hand takes it. */
function useEscape(active: boolean, act: () => void): void {
  useEffect(() => {
    if (!active) return;
    const press = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      const { target } = event;
      const writes = target instanceof HTMLElement && target.closest('input, textarea, select, dialog[open]');
      if (!writes) act();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [active, act]);
}
