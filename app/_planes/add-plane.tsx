'use client';
/** Adds a plane, nearer than the others; for an empty board, the usual beginnings. In the flow: plane-list -> [add-plane]. */
import { type FormEvent, useState } from 'react';
import { troubleOf } from '#app/_easel/outline-trouble.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { PLANE_KINDS, type PlaneKind } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import styles from './planes.module.css';

export function AddPlane({ onAdded }: { onAdded(): void }) {
  const { planes, write } = useBoardLive();
  const { setPlaneId, setTool } = useTools();
  const [name, setName] = useState('');
  const [kind, setKind] = useState<PlaneKind>('land');
  const [trouble, setTrouble] = useState<string | null>(null);
  /** Adds it and takes the outline tool: drawing it is what comes next. The sky is always the farthest. */
  const add = (plane: { name: string; kind: PlaneKind }) => {
    const failed = troubleOf(() => {
      setPlaneId(plane.kind === 'sky' ? write.addPlane(plane, 0) : write.addPlane(plane));
      setTool('outline');
    });
    setTrouble(failed);
    if (failed !== null) return;
    setName('');
    setKind('land');
    onAdded();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    add({ name: name.trim(), kind });
  };
  const taken = new Set(planes.map((plane) => plane.name));
  const suggestions = words.planes.suggestions.filter((each) => !taken.has(each.name));
  return (
    <form className={styles.add} onSubmit={onSubmit}>
      {suggestions.length > 0 && planes.length < 4 ? (
        <p className={styles.suggestions}>
          <span>{words.planes.startHint}</span>
          {suggestions.map((each) => (
            <button
              key={each.name}
              type="button"
              aria-label={words.planes.addNamed(each.name)}
              onClick={() => add(each)}
            >
              {each.name}
            </button>
          ))}
        </p>
      ) : null}
      <div className={styles.addFields}>
        <input
          aria-label={words.planes.name}
          placeholder={words.planes.name}
          value={name}
          maxLength={80}
          onChange={(event) => setName(event.target.value)}
        />
        <select
          aria-label={words.planes.kind}
          value={kind}
          onChange={({ target }) => setKind(PLANE_KINDS.find((each) => each === target.value) ?? 'land')}
        >
          {PLANE_KINDS.map((each) => (
            <option key={each} value={each}>
              {words.planes.kinds[each]}
            </option>
          ))}
        </select>
        <Button type="submit" disabled={name.trim() === ''}>
          {words.planes.add}
        </Button>
      </div>
      <p role="alert">{trouble}</p>
    </form>
  );
}
