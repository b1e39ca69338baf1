/**
 * A painter's path over boards, in words: what comes back, what helped, what is being tried, the paintings themselves.
 *
 * In the flow: page -> [path]. The painter and whoever teaches them read the very same; the painter also reads who may.
 * Drawn on the server, no script of its own.
 */
import Link from 'next/link';
import { pictureAddress } from '#app/_api/client.ts';
import { boardOn } from '#app/_queue/board-on.ts';
import { dateTime } from '#app/_words/figures.ts';
import type { MoveVerdict } from '#server/core/contract/moves.ts';
import type {
  PathPainting,
  PathPerson,
  PathReading,
  PathTried,
  PathView,
} from '#server/core/contract/states.ts';
import { VERDICTS } from '#words/moves.ts';
import { pathWords as words } from '#words/path.ts';
import styles from './path.module.css';

const HELPED: readonly MoveVerdict[] = ['all', 'half', 'past', 'that-way'];
const helped = ({ went }: PathTried) => went !== null && HELPED.includes(went);

const called = ({ caption, postedAt }: PathPainting) => words.painting(caption, dateTime(postedAt));
const stateAddress = ({ board, pictureId }: PathPainting) => `/boards/${board.id}/paintings/${pictureId}`;

export function Path({ view, people }: { view: PathView; people: readonly PathPerson[] }) {
  const { mine, person, paintings, readings, tried } = view;
  return (
    <div className={styles.path}>
      <p className={styles.lead}>{mine ? words.lead : words.leadOf(person.name)}</p>
      {paintings.length === 0 ? (
        <p>{mine ? words.nothing : words.nothingOf}</p>
      ) : (
        <>
          <Readings readings={readings} />
          <Tried tried={tried} />
          <Paintings paintings={paintings} />
        </>
      )}
      {mine ? <SeenBy seenBy={view.seenBy} /> : null}
      {mine && people.length > 0 ? <People people={people} /> : null}
    </div>
  );
}

function Readings({ readings }: { readings: readonly PathReading[] }) {
  return (
    <section className={styles.part} aria-labelledby="comes-back">
      <h2 id="comes-back">{words.readings.title}</h2>
      {readings.length === 0 ? <p>{words.readings.none}</p> : <ReadingList readings={readings} />}
    </section>
  );
}

function ReadingList({ readings }: { readings: readonly PathReading[] }) {
  return (
    <ul className={styles.list}>
      {readings.map(({ id, name, why, on }) => (
        <li key={id}>
          <h3>{name}</h3>
          <p className={styles.quiet}>{why}</p>
          <ul>
            {on.map(({ painting, stands }) => (
              <li key={painting.pictureId}>
                <a href={stateAddress(painting)}>{called(painting)}</a>
                {words.readings.on(painting.board.title, standsWords(painting, stands))}
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ul>
  );
}

function standsWords({ hasStates }: PathPainting, stands: boolean): string {
  if (!hasStates) return words.readings.single;
  return stands ? words.readings.stands : words.readings.gone;
}

function Tried({ tried }: { tried: readonly PathTried[] }) {
  const good = tried.filter(helped);
  const rest = tried.filter((each) => !helped(each));
  return (
    <>
      <section className={styles.part} aria-labelledby="helped">
        <h2 id="helped">{words.tried.helped}</h2>
        {good.length === 0 ? <p>{words.tried.helpedNone}</p> : <TriedList tried={good} />}
      </section>
      {rest.length > 0 ? (
        <section className={styles.part} aria-labelledby="trying">
          <h2 id="trying">{words.tried.trying}</h2>
          <TriedList tried={rest} />
        </section>
      ) : null}
    </>
  );
}

function TriedList({ tried }: { tried: readonly PathTried[] }) {
  return (
    <ul className={styles.list}>
      {tried.map(({ painting, where, what, state, went }) => (
        <li key={`${painting.pictureId} ${where} ${what}`}>
          <p>
            {words.tried.where(where, what)}:{' '}
            <span className={styles.strong}>{went ? VERDICTS[went] : words.tried.not}</span>
          </p>
          <p className={styles.quiet}>
            <a href={stateAddress(painting)}>{called(painting)}</a> {painting.board.title},{' '}
            {words.states[state]}
          </p>
        </li>
      ))}
    </ul>
  );
}

function Paintings({ paintings }: { paintings: readonly PathPainting[] }) {
  return (
    <section className={styles.part} aria-labelledby="paintings">
      <h2 id="paintings">{words.paintings.title}</h2>
      <ul className={styles.paintings}>
        {paintings.map((painting) => (
          <li key={painting.pictureId}>
            {/* biome-ignore lint/performance/noImgElement: our own renditions; Next's image part would shift their colours. */}
            <img
              src={pictureAddress(painting.board.id, painting.pictureId, 640)}
              width={painting.width}
              height={painting.height}
              alt={called(painting)}
              loading="lazy"
            />
            <span>{painting.board.title}</span>
            <a href={boardOn(painting.board.id, painting.pictureId)}>{words.paintings.board}</a>
            {painting.hasStates ? <a href={stateAddress(painting)}>{words.paintings.states}</a> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

function SeenBy({ seenBy }: Pick<PathView, 'seenBy'>) {
  if (seenBy.length === 0) return null;
  return (
    <section className={styles.part} aria-labelledby="who-reads">
      <h2 id="who-reads">{words.seen.title}</h2>
      <ul>
        {seenBy.map(({ board, names }) => (
          <li key={board.id}>{words.seen.on(board.title, names)}</li>
        ))}
      </ul>
    </section>
  );
}

function People({ people }: { people: readonly PathPerson[] }) {
  return (
    <section className={styles.part} aria-labelledby="taught">
      <h2 id="taught">{words.people.title}</h2>
      <ul className={styles.list}>
        {people.map(({ id, name, boards }) => (
          <li key={id}>
            <Link href={`/path?person=${encodeURIComponent(id)}`}>{words.linkOf(name)}</Link>
            <span className={styles.quiet}>{words.people.on(boards)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
