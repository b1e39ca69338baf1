'use client';
/** The parts in one column under each other, on the surround that is chosen at the head. */
import { type ReactNode, useState } from 'react';
import { Choice } from '#app/_look/choice.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { componentWords as words } from '#words/components.ts';
import { Buttons } from './buttons.tsx';
import styles from './components.module.css';
import { Fields } from './fields.tsx';
import { Greys } from './greys.tsx';
import { Over, People } from './people-and-over.tsx';
import { Said } from './said.tsx';
import { Steps } from './steps.tsx';
import { Turning } from './turning.tsx';

const SURROUNDS = ['mid', 'dark', 'light'] as const;

export function AllParts({ name }: { name: string }) {
  const [surround, setSurround] = useState<(typeof SURROUNDS)[number]>('mid');
  return (
    <div className={styles.ground} data-surround={surround}>
      <div className={styles.page}>
        <PageHead name={name} />
        <main className={styles.main}>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
          <Choice
            label={words.surround}
            options={SURROUNDS.map((value) => ({ value, name: words.surrounds[value] }))}
            chosen={surround}
            onChoose={(value) => setSurround(value)}
          />
          {/* Mounted anew, since the greys are read from the page. */}
          <Part title={words.greys}>
            <Greys key={surround} />
          </Part>
          <Part title={words.type}>
            <Steps of="type" />
          </Part>
          <Part title={words.space}>
            <Steps of="space" />
          </Part>
          <Part title={words.buttons}>
            <Buttons />
          </Part>
          <Part title={words.fields}>
            <Fields />
          </Part>
          <Part title={words.choices}>
            <Turning />
          </Part>
          <Part title={words.said}>
            <Said />
          </Part>
          <Part title={words.people}>
            <People />
          </Part>
          <Part title={words.over}>
            <Over />
          </Part>
        </main>
      </div>
    </div>
  );
}

function Part({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section className={styles.part} aria-label={title}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
