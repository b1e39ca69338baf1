'use client';
/**
 * The wall of one board: every painting of the scene at one size, ways of looking, all ladders, how each said far.
 *
 * In the flow: page -> [wall-page] -> its parts. Results come over HTTP; live are only the names' being shown, the
 * question and what a class keeps back. IO: HTTP, live rooms, a worker.
 */
import { useEffect, useMemo, useState } from 'react';
import { TermsButton } from '#app/_terms/terms-button.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { LEAST_HUNG, MOST_HUNG, type WallView } from '#server/core/contract/wall.ts';
import { may } from '#server/core/permissions/may.ts';
import { wallWords as words } from '#words/wall.ts';
import { Beside } from './beside.tsx';
import { Choose } from './choose.tsx';
import { FarPart } from './far.tsx';
import { type Choice, chosenLetters, commonRatio, type Hung, shownState, USUAL_CHOICE } from './hung.ts';
import { HungPainting } from './hung-painting.tsx';
import { LaddersPart } from './ladders.tsx';
import { Question } from './question.tsx';
import { type Looking, USUAL_LOOKING } from './rows.ts';
import { Switches } from './switches.tsx';
import { useHungData } from './use-hung-data.ts';
import { useWall } from './use-wall.ts';
import { useWallLive, type WallLive } from './use-wall-live.ts';
import styles from './wall.module.css';
import { WallLine } from './wall-line.ts';

export function WallPage({ wall: first }: { wall: WallView }) {
  const live = useWallLive(first);
  const { wall, round, gone } = useWall(first, live);
  const [choice, setChoice] = useState<Choice>(USUAL_CHOICE);
  const hung = useHung(wall, choice, live.veiled, round);
  const mayRun = may(wall.role, 'room.setup');
  const few = wall.paintings.length < LEAST_HUNG;
  return (
    <div className={styles.page}>
      <header className={styles.head}>
        <a href={`/boards/${wall.boardId}`}>{words.back}</a>
        <h1>{wall.title}</h1>
      </header>
      <main className={styles.main}>
        <Notices wall={wall} live={live} gone={gone} />
        {few ? (
          <section className={styles.few}>
            <h2>{words.few.title}</h2>
            <p>{words.few.text}</p>
            <p>
              <a href={`/boards/${wall.boardId}`}>{words.back}</a>
            </p>
          </section>
        ) : (
          <>
            <Question question={live.question} mayRun={mayRun} ask={live.ask} />
            <Names named={live.named} mayRun={mayRun} show={live.showNames} />
            <Hanging {...{ wall, hung, choice, setChoice }} veiled={live.veiled} />
            <div>
              <TermsButton />
            </div>
          </>
        )}
      </main>
    </div>
  );
}

/** What hangs, with what is known of it. */
function useHung(wall: WallView, choice: Choice, veiled: boolean, round: number): Hung[] {
  const { boardId, paintings } = wall;
  const chosen = chosenLetters(paintings, choice);
  const shown = paintings.flatMap((painting) => {
    const state = chosen.includes(painting.letter) ? shownState(painting, choice) : undefined;
    return state ? [{ painting, state }] : [];
  });
  const pictureIds = shown.map(({ state }) => state.id);
  const data = useHungData({ boardId, pictureIds, veiled, round });
  return shown.map(({ painting: { letter, mine, painter }, state }) => {
    return { letter, mine, painter, state, data: data.get(state.id) ?? null };
  });
}

function Notices({ wall, live, gone }: { wall: WallView; live: WallLive; gone: string | null }) {
  const shut = gone ?? live.closed;
  return (
    <>
      {shut ? <Notice sentence={shut} trouble /> : null}
      {live.offline && !shut ? <Notice sentence={words.offline} /> : null}
      {live.refusals.map(({ id, sentence }) => (
        <Notice key={id} sentence={sentence} trouble>
          <Button weight="word" onClick={() => live.dismiss(id)}>
            {words.laidAside}
          </Button>
        </Notice>
      ))}
      {live.veiled ? <Notice sentence={words.veiled} /> : null}
      {wall.withheld ? <Notice sentence={words.withheld} /> : null}
    </>
  );
}

function Names({ named, mayRun, show }: { named: boolean; mayRun: boolean; show(shown: boolean): void }) {
  return (
    <div className={styles.names}>
      <p role="status">{named ? words.shown : words.hidden}</p>
      {mayRun ? (
        <Button weight={named ? 'word' : 'quiet'} onClick={() => show(!named)}>
          {named ? words.hide : words.show}
        </Button>
      ) : null}
    </div>
  );
}

interface HangingProps {
  wall: WallView;
  hung: readonly Hung[];
  choice: Choice;
  setChoice(choice: Choice): void;
  veiled: boolean;
}

function Hanging({ wall, hung, choice, setChoice, veiled }: HangingProps) {
  const { boardId, paintings, role } = wall;
  const [line] = useState(() => new WallLine());
  useEffect(() => () => line.close(), [line]);
  const [looking, setLooking] = useState<Looking>(USUAL_LOOKING);
  const [choosing, setChoosing] = useState(false);
  const [large, setLarge] = useState<string | null>(null);
  const ratio = useMemo(() => commonRatio(hung), [hung]);
  return (
    <>
      <div className={styles.tools}>
        <Switches {...{ looking, setLooking, veiled }} />
        <Button weight="word" onClick={() => setChoosing(true)}>
          {words.choose.open}
        </Button>
      </div>
      {paintings.length > MOST_HUNG ? <p className={styles.quiet}>{words.choose.more}</p> : null}
      <ul className={styles.wall} style={{ '--ratio': ratio, '--hung': hung.length } as React.CSSProperties}>
        {hung.map((each) => (
          <HungPainting
            key={each.letter}
            {...{ boardId, line, looking, veiled }}
            hung={each}
            onLarge={setLarge}
          />
        ))}
      </ul>
      {veiled ? null : (
        <>
          <section className={styles.part} aria-labelledby="ladders">
            <h2 id="ladders">{words.ladders.title}</h2>
            <p className={styles.quiet}>{words.ladders.about}</p>
            <LaddersPart hung={hung} />
          </section>
          <section className={styles.part} aria-labelledby="far">
            <h2 id="far">{words.far.title}</h2>
            <FarPart hung={hung} />
          </section>
        </>
      )}
      <Choose
        {...{ boardId, paintings, choice, setChoice }}
        open={choosing}
        onClose={() => setChoosing(false)}
      />
      {large ? (
        <Beside
          {...{ boardId, hung, line }}
          first={large}
          maySay={may(role, 'room.mark', 'own')}
          onClose={() => setLarge(null)}
        />
      ) : null}
    </>
  );
}
