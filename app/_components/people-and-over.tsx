/** Monograms and the sign; what lies over a picture, here over a strip from black to white. */
import { ProductSign } from '#app/_enter/product-sign.tsx';
import edge from '#app/_ui/edge.module.css';
import { Monogram } from '#app/_ui/monogram.tsx';
import over from '#app/_ui/over-picture.module.css';
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

export function People() {
  return (
    <div className={styles.row}>
      <Monogram name={words.persons.own} />
      <Monogram name={words.persons.guide} guide />
      <Monogram name={words.persons.away} away />
      <ProductSign />
    </div>
  );
}

export function Over() {
  return (
    <figure>
      <div className={styles.strip}>
        <span className={`${edge.edge} ${styles.edge}`} />
        {['15%', '50%', '85%'].map((left) => (
          <span key={left} className={over.ring} style={{ left, top: '50%' }} />
        ))}
      </div>
      <figcaption className={styles.note}>{words.edge}</figcaption>
    </figure>
  );
}
