'use client';
/** Makes an invitation: as what, for how long, and the link to send. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { type At, createInvite } from '#app/_api/people.ts';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { InviteView, PersonView } from '#server/core/contract/responses.ts';
import { INVITE_ROLES, type InviteRole } from '#server/core/contract/roles.ts';
import { PRIVATE_INVITE_HOURS } from '#server/core/contract/school.ts';
import { words } from '#words/shell.ts';
import { MadeLink } from './made-link.tsx';
import styles from './people.module.css';

const HOURS = Object.keys(words.people.hours).map(Number);
const A_DAY = 24;
const A_WEEK = 168;

const USES = Object.keys(words.people.uses).map(Number);

interface InvitePartProps {
  at: At;
  /** Whom a guardian may be invited for: those who paint or mark here. */
  wards: readonly PersonView[];
  /** Whether an invitation lets in one person alone, and soon ends: the school setting. */
  alone: boolean;
  onMade(): void;
}

export function InvitePart({ at, wards, alone, onMade }: InvitePartProps) {
  const [role, setRole] = useState<InviteRole>('painter');
  const [hours, setHours] = useState(alone ? A_DAY : A_WEEK);
  const [uses, setUses] = useState(alone ? 1 : 0);
  const [wardId, setWardId] = useState('');
  const [made, setMade] = useState<InviteView | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const guards = role === 'guardian';
  const limits = () => ({
    ...(uses > 0 ? { uses } : {}),
    ...(guards ? { ward: wardId || (wards[0]?.id ?? '') } : {}),
  });
  const make = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      setMade(await createInvite(at, { role, hours, ...limits() }));
      onMade();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <section className={styles.part}>
      <h3>{'boardId' in at ? words.people.inviteTitle : words.people.inviteToGroup}</h3>
      <fieldset className={styles.roles}>
        <legend>{words.people.roleLabel}</legend>
        {INVITE_ROLES.filter((name) => name !== 'guardian' || wards.length > 0).map((name) => (
          <label key={name} className={styles.role}>
            <input type="radio" name="role" checked={role === name} onChange={() => setRole(name)} />
            <span>
              <b>{words.people.inviteRole[name].name}</b>: {words.people.inviteRole[name].may}
            </span>
          </label>
        ))}
      </fieldset>
      {guards ? (
        <ChoiceField
          label={words.people.wardLabel}
          value={wardId}
          onChange={(event) => setWardId(event.target.value)}
        >
          {wards.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </ChoiceField>
      ) : null}
      <ChoiceField
        label={words.people.hoursLabel}
        value={hours}
        onChange={(event) => setHours(Number(event.target.value))}
      >
        {HOURS.filter((count) => !alone || count <= PRIVATE_INVITE_HOURS).map((count) => (
          <option key={count} value={count}>
            {words.people.hours[count]}
          </option>
        ))}
      </ChoiceField>
      <ChoiceField
        label={words.people.usesLabel}
        value={uses}
        onChange={(event) => setUses(Number(event.target.value))}
      >
        {USES.filter((count) => !alone || count === 1).map((count) => (
          <option key={count} value={count}>
            {words.people.uses[count]}
          </option>
        ))}
      </ChoiceField>
      <div className={styles.acts}>
        <Button weight="main" busy={busy} busyWord={words.people.makingLink} onClick={make}>
          {words.people.makeLink}
        </Button>
      </div>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
      {made ? (
        <MadeLink
          key={made.token}
          url={made.url}
          label={words.people.linkLabel}
          hint={words.people.linkHint}
        />
      ) : null}
    </section>
  );
}
