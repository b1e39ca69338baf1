'use client';
/** The school setting of a group or of the whole server. IO: HTTP. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { setSchool } from '#app/_api/decency.ts';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { SchoolRules } from '#server/core/contract/school.ts';
import { decencyWords } from '#words/decency.ts';
import styles from './decency.module.css';

const { school: words } = decencyWords;

const SWITCHES = [
  ['noPublicLinks', words.noPublicLinks, words.noPublicLinksWhy],
  ['noMixingHints', words.noMixingHints, words.noMixingHintsWhy],
  ['aliases', words.aliases, words.aliasesWhy],
] as const;

interface SchoolFormProps {
  /** Null = the whole server. */
  groupId: string | null;
  rules: SchoolRules;
}

export function SchoolForm({ groupId, rules: before }: SchoolFormProps) {
  const router = useRouter();
  const [rules, setRules] = useState(before);
  const [busy, setBusy] = useState(false);
  const [kept, setKept] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const change = (part: Partial<SchoolRules>) => {
    setKept(false);
    setRules({ ...rules, ...part });
  };
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setTrouble(null);
    try {
      await setSchool(groupId, rules);
      setKept(true);
      router.refresh();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <form className={`${styles.sheet} ${styles.form}`} onSubmit={keep}>
      <h2>{groupId === null ? words.house : words.title}</h2>
      <p className={styles.quiet}>
        {words.lead} {words.noMessages}
      </p>
      {SWITCHES.map(([key, label, why]) => (
        <label key={key} className={styles.rule}>
          <input
            type="checkbox"
            checked={rules[key]}
            onChange={(event) => change({ [key]: event.target.checked })}
          />
          <span>
            <b>{label}</b>
            <small>{why}</small>
          </span>
        </label>
      ))}
      <TextField
        label={words.days}
        hint={words.daysHint}
        type="number"
        min={1}
        max={3650}
        value={rules.deleteAfterDays ?? ''}
        onChange={({ target }) =>
          change({ deleteAfterDays: target.value === '' ? null : Number(target.value) })
        }
      />
      <TextField
        label={words.day}
        hint={words.dayHint}
        type="date"
        value={rules.deleteOn ?? ''}
        onChange={({ target }) => change({ deleteOn: target.value || null })}
      />
      <p className={styles.quiet}>{words.stays}</p>
      <Button weight="main" type="submit" busy={busy} busyWord={words.keeping}>
        {words.keep}
      </Button>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
      {kept ? <Notice sentence={words.kept} /> : null}
    </form>
  );
}
