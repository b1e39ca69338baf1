'use client';
/** A row of leaves, and a few things of which one holds. */
import { useState } from 'react';
import { Choice } from '#app/_look/choice.tsx';
import { Tabs } from '#app/_ui/tabs.tsx';
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

const LEAVES = ['talk', 'planes', 'photo'] as const;

export function Turning() {
  const [leaf, setLeaf] = useState<(typeof LEAVES)[number]>('talk');
  const [count, setCount] = useState(3);
  return (
    <div className={styles.table}>
      <Tabs
        label={words.choices}
        className={styles.row}
        names={LEAVES}
        open={leaf}
        wordOf={(name) => words.leaves[name]}
        panelOf={() => 'panel-leaf'}
        onTurn={(name) => setLeaf(name)}
      />
      <div id="panel-leaf" role="tabpanel" aria-labelledby={`tab-${leaf}`}>
        {words.leafText(words.leaves[leaf])}
      </div>
      <Choice
        label={words.choice}
        options={[2, 3, 4, 5].map((value) => ({ value, name: String(value) }))}
        chosen={count}
        onChoose={(value) => setCount(value)}
      />
    </div>
  );
}
