'use client';
/** Everything that is one's own, as a file. */
import { filesOf } from '#app/_api/outward.ts';
import plain from '#app/_enter/plain.module.css';
import { buttonClass } from '#app/_ui/button.tsx';
import { outwardWords } from '#words/outward.ts';

const { person: words } = outwardWords;

export function OwnData() {
  return (
    <section className={`${plain.sheet} ${plain.form}`}>
      <h2>{words.title}</h2>
      <p>{words.text}</p>
      <a className={buttonClass('quiet')} href={filesOf.own} download>
        {words.take}
      </a>
    </section>
  );
}
