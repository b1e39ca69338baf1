'use client';
/**
 * What pictures may be used for: one's own answer, or that for a minor one guards, to be changed in place; those
 * of the others as far as one may see them. IO: HTTP.
 */
import { useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchConsents, sayConsent } from '#app/_api/people.ts';
import { Notice } from '#app/_ui/notice.tsx';
import { dateTime } from '#app/_words/figures.ts';
import type { ConsentView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './people.module.css';

interface ConsentPartProps {
  boardId: string;
  meId: string;
}

/** Shows nothing where there is nobody to ask about. */
export function ConsentPart({ boardId, meId }: ConsentPartProps) {
  const [consents, setConsents] = useState<readonly ConsentView[]>([]);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [round, setRound] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round is the reason to fetch again.
  useEffect(() => {
    const controller = new AbortController();
    fetchConsents(boardId, controller.signal)
      .then(setConsents)
      .catch((thrown: unknown) => {
        if (!controller.signal.aborted) setTrouble(sentenceOf(thrown));
      });
    return () => controller.abort();
  }, [boardId, round]);
  const say = async (asked: ConsentView, given: boolean) => {
    const { person, use } = asked;
    setTrouble(null);
    // Shown at once; what the server then says stands.
    setConsents((before) => before.map((each) => (each === asked ? { ...each, allowed: given } : each)));
    try {
      await sayConsent(boardId, person.id, use, given);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    setRound((before) => before + 1);
  };
  const people = [...new Map(consents.map(({ person }) => [person.id, person])).values()];
  if (people.length === 0 && trouble === null) return null;
  return (
    <section className={styles.part}>
      <h3>{words.people.consent.title}</h3>
      {people.map((person) => {
        const theirs = consents.filter((each) => each.person.id === person.id);
        return theirs.some(({ mine }) => mine) ? (
          <Asked key={person.id} theirs={theirs} own={person.id === meId} onSay={say} />
        ) : (
          <p key={person.id} className={styles.quiet}>
            {words.people.consent.of(person.name, allowedUses(theirs))}
          </p>
        );
      })}
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}

function allowedUses(theirs: readonly ConsentView[]): string {
  const uses = theirs.filter(({ allowed }) => allowed).map(({ use }) => words.people.consent.uses[use]);
  return uses.join(', ') || words.people.consent.nothing;
}

interface AskedProps {
  theirs: readonly ConsentView[];
  own: boolean;
  onSay(consent: ConsentView, given: boolean): void;
}

function Asked({ theirs, own, onSay }: AskedProps) {
  const said = words.people.consent;
  const name = theirs[0]?.person.name ?? '';
  return (
    <fieldset className={styles.roles}>
      <legend>{own ? said.mine : said.ward(name)}</legend>
      {theirs.map((consent) => (
        <label key={consent.use} className={styles.role}>
          <input
            type="checkbox"
            checked={consent.allowed}
            onChange={(event) => onSay(consent, event.target.checked)}
          />
          <span>
            {said.uses[consent.use]}
            {consent.saidBy && consent.at ? (
              <small> ({said.said(consent.saidBy, dateTime(consent.at))})</small>
            ) : null}
          </span>
        </label>
      ))}
      <p className={styles.quiet}>{said.hidden}</p>
    </fieldset>
  );
}
