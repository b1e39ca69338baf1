'use client';
/** Where patches were taken and which spot is guessed, as small rings. In the flow: stage -> [look marks] -> screen. */
import { useStage } from '#app/_easel/stage-context.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { lookWords } from '#words/look.ts';
import styles from './layers.module.css';
import { useLooking } from './look-state.tsx';

export function LookMarks() {
  const { picture } = useStage();
  const { tool } = useTools();
  const { patches, spot } = useLooking();
  if (tool === 'patch') {
    return patches.map((taken, which) =>
      taken?.pictureId === picture.id ? (
        <Ring
          key={lookWords.patch.names[which]}
          point={taken.point}
          name={lookWords.patch.names[which] ?? ''}
        />
      ) : null,
    );
  }
  return tool === 'guess' && spot?.pictureId === picture.id ? <Ring point={spot.point} name="?" /> : null;
}

function Ring({ point, name }: { point: FractionPoint; name: string }) {
  const { frame } = useStage();
  const [x, y] = frame.shown(point);
  return (
    <span className={styles.ring} style={{ left: `${x * 100}%`, top: `${y * 100}%` }} aria-hidden="true">
      <span>{name}</span>
    </span>
  );
}
