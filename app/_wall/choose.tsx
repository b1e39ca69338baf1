'use client';
import { copyAddress } from '#app/_easel/picture-copies.tsx';
/** Which paintings hang on this screen, and each in which state. In the flow: wall view -> [choose] -> choice. */
import { Dialog } from '#app/_ui/dialog.tsx';
import { LEAST_HUNG, MOST_HUNG, type WallPainting } from '#server/core/contract/wall.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './choose.module.css';
import { type Choice, chosenLetters, shownState } from './hung.ts';

interface ChooseProps {
  boardId: string;
  paintings: readonly WallPainting[];
  choice: Choice;
  setChoice(choice: Choice): void;
  open: boolean;
  onClose(): void;
}

export function Choose({ boardId, paintings, choice, setChoice, open, onClose }: ChooseProps) {
  const chosen = chosenLetters(paintings, choice);
  const turn = (letter: string) =>
    setChoice({
      ...choice,
      letters: chosen.includes(letter) ? chosen.filter((each) => each !== letter) : [...chosen, letter],
    });
  const limit =
    chosen.length >= MOST_HUNG && paintings.length > MOST_HUNG
      ? words.choose.most(MOST_HUNG)
      : chosen.length <= LEAST_HUNG
        ? words.choose.least
        : '';
  return (
    <Dialog open={open} onClose={onClose} title={words.choose.title} wide>
      <p>{words.choose.text}</p>
      <p role="status" className={styles.limit}>
        {limit}
      </p>
      <ul className={styles.list}>
        {paintings.map((painting) => (
          <One
            key={painting.letter}
            {...{ boardId, painting, choice, setChoice }}
            hangs={chosen.includes(painting.letter)}
            full={chosen.length >= MOST_HUNG}
            bare={chosen.length <= LEAST_HUNG}
            turn={turn}
          />
        ))}
      </ul>
    </Dialog>
  );
}

interface OneProps extends Pick<ChooseProps, 'boardId' | 'choice' | 'setChoice'> {
  painting: WallPainting;
  hangs: boolean;
  /** As many as can hang, or as few. */
  full: boolean;
  bare: boolean;
  turn(letter: string): void;
}

function One({ boardId, painting, choice, setChoice, hangs, full, bare, turn }: OneProps) {
  const { letter, states } = painting;
  const shown = shownState(painting, choice);
  if (!shown) return null;
  const take = (id: string) => setChoice({ ...choice, states: new Map(choice.states).set(letter, id) });
  return (
    <li className={styles.one}>
      <label className={styles.hang}>
        <input type="checkbox" checked={hangs} disabled={hangs ? bare : full} onChange={() => turn(letter)} />
        {/* biome-ignore lint/performance/noImgElement: copies come ready-made and must not be recoded. */}
        <img
          src={copyAddress(boardId, shown.id, 640)}
          alt=""
          width={shown.width}
          height={shown.height}
          loading="lazy"
        />
        <span>{words.choose.hang(letter)}</span>
      </label>
      {states.length > 1 ? (
        <select
          aria-label={words.choose.state(letter)}
          value={shown.id}
          onChange={({ target }) => take(target.value)}
        >
          {states.map(({ id }, at) => (
            <option key={id} value={id}>
              {at === states.length - 1 ? words.choose.newest : words.choose.stateNumber(at + 1)}
            </option>
          ))}
        </select>
      ) : null}
    </li>
  );
}
