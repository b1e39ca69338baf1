'use client';
/** Talk, planes and the photo at the side; on a narrow screen these and the ladder are leaves under the picture. */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { usePhotoDesk } from '#app/_photo/photo-desk.tsx';
import { useProposeDesk } from '#app/_propose/propose-desk.tsx';
import { SinceProvider } from '#app/_since/since-state.tsx';
import { OwnTime } from '#app/_talk/own-time.tsx';
import { Talk } from '#app/_talk/talk.tsx';
import { TogetherStrip } from '#app/_together/together-strip.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import { Tabs } from '#app/_ui/tabs.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import { Scenario } from './scenario.tsx';
import { useTools } from './tools-here.tsx';
import { useWide } from './use-wide.ts';
import styles from './workspace.module.css';

const PlaneList = late(() => import('#app/_planes/plane-list.tsx').then((module) => module.PlaneList));
const PhotoLeaf = late(() => import('#app/_photo/photo-leaf.tsx').then((module) => module.PhotoLeaf));

const LEAVES = ['ladder', 'talk', 'planes', 'photo'] as const;
type Leaf = (typeof LEAVES)[number];

interface SidePanelsProps {
  board: BoardView;
  lower: 'ladder' | 'side';
  onLower(lower: 'ladder' | 'side'): void;
}

export function SidePanels({ board, lower, onLower }: SidePanelsProps) {
  const [side, setSide] = useState<Exclude<Leaf, 'ladder'>>('talk');
  const wide = useWide();
  const { veiled } = useBoardLive().class;
  const { tool, taken, markId } = useTools();
  const { asked } = usePhotoDesk();
  const { asked: askedForPlanes } = useProposeDesk();
  const photoShown = useEver(side === 'photo');
  const planesShown = useEver(side === 'planes');
  const leaf: Leaf = veiled ? 'talk' : !wide && lower === 'ladder' ? 'ladder' : side;
  const turnTo = (next: Leaf) => {
    onLower(next === 'ladder' ? 'ladder' : 'side');
    if (next !== 'ladder') setSide(next);
  };
  // The hand's tool brings the leaf it works with, also when it is taken anew; a mark that is opened brings the talk.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only taking a tool or a new mark turns the leaf.
  useEffect(() => {
    if (tool === 'outline') turnTo('planes');
    if (tool === 'photo') turnTo('photo');
    if (tool === 'mark') setSide('talk');
  }, [tool, taken]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above.
  useEffect(() => {
    if (markId) turnTo('talk');
  }, [markId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above; each asking turns the leaf again.
  useEffect(() => {
    if (asked > 0) turnTo('photo');
  }, [asked]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above.
  useEffect(() => {
    if (askedForPlanes > 0) turnTo('planes');
  }, [askedForPlanes]);

  useLeafOfStep(turnTo);
  // While a class looks at the painting alone, planes, photo and ladder would tell of the reference.
  const leaves = LEAVES.filter((name) => (veiled ? name === 'talk' : !(wide && name === 'ladder')));
  return (
    <aside className={styles.side} aria-label={words.board.aside}>
      <div className={styles.together}>
        <TogetherStrip />
      </div>
      <Tabs
        label={wide ? words.board.sideTabs : words.board.lowerTabs}
        className={styles.tabs}
        names={leaves}
        open={leaf}
        wordOf={(name) => words.board[name]}
        panelOf={(name) => `panel-${name}`}
        onTurn={turnTo}
      />
      <div
        id="panel-talk"
        role="tabpanel"
        aria-labelledby="tab-talk"
        className={styles.panel}
        hidden={side !== 'talk' && !veiled}
      >
        <Scenario board={board} />
        <SinceProvider>
          {veiled ? null : <OwnTime />}
          <Talk />
        </SinceProvider>
      </div>
      <div
        id="panel-planes"
        role="tabpanel"
        aria-labelledby="tab-planes"
        className={styles.panel}
        hidden={side !== 'planes' || veiled}
      >
        {planesShown && !veiled ? <PlaneList shown={leaf === 'planes'} /> : null}
      </div>
      <div
        id="panel-photo"
        role="tabpanel"
        aria-labelledby="tab-photo"
        className={styles.panel}
        hidden={side !== 'photo' || veiled}
      >
        {photoShown && !veiled ? <PhotoLeaf /> : null}
      </div>
    </aside>
  );
}

/** Each step of a class brings the leaf that it works with. */
function useLeafOfStep(turnTo: (leaf: Leaf) => void) {
  const step = useBoardLive().class.state.now?.step ?? null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new step turns the leaf.
  useEffect(() => {
    if (step !== null) turnTo(step === 'reference' ? 'ladder' : 'talk');
  }, [step]);
}
