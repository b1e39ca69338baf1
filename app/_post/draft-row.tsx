'use client';
/** One chosen picture and what is asked about it before it is sent. */
import { useEffect, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import { fileSize } from '#app/_words/figures.ts';
import { RIGHTS } from '#server/core/contract/picture-choices.ts';
import { notedText } from '#words/noted.ts';
import { words } from '#words/shell.ts';
import type { DraftPicture } from './draft-picture.ts';
import { NotedFields } from './noted-fields.tsx';
import styles from './post.module.css';

interface DraftRowProps {
  draft: DraftPicture;
  /** Painters post paintings only, and are not asked. */
  mayReference: boolean;
  /** Paintings that may be earlier states of this one, with their names. */
  earlier: readonly { id: string; name: string }[];
  trouble: string | null;
  onChange(change: Partial<DraftPicture>): void;
  onLeaveOut(): void;
}

export function DraftRow({ draft, mayReference, earlier, trouble, onChange, onLeaveOut }: DraftRowProps) {
  return (
    <li className={styles.draft}>
      <div>
        <SmallPicture file={draft.file} />
        <p className={styles.fileName}>
          {draft.file.name}, {fileSize(draft.file.size)}
        </p>
        <Button weight="word" onClick={onLeaveOut}>
          {words.post.leaveOut}
        </Button>
      </div>
      <div className={styles.asked}>
        {mayReference ? (
          <Choices
            legend={words.post.whatIsIt}
            name={`${draft.key}-kind`}
            options={[
              ['reference', words.post.reference],
              ['painting', words.post.painting],
            ]}
            chosen={draft.kind}
            onChoose={(kind) => onChange({ kind })}
          />
        ) : null}
        {draft.kind === 'reference' ? <Rights draft={draft} onChange={onChange} /> : null}
        {draft.kind === 'painting' && earlier.length > 0 ? (
          <ChoiceField
            label={words.post.follows}
            value={draft.follows ?? ''}
            onChange={(event) => onChange({ follows: event.target.value || null })}
          >
            <option value="">{words.post.followsNone}</option>
            {earlier.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </ChoiceField>
        ) : null}
        {draft.kind === 'painting' ? (
          <details className={styles.noting}>
            <summary>{notedText.summary}</summary>
            <NotedFields noted={draft} onChange={onChange} />
          </details>
        ) : null}
        <p role="alert" className={styles.trouble}>
          {trouble}
        </p>
      </div>
    </li>
  );
}

function Rights({ draft, onChange }: Pick<DraftRowProps, 'draft' | 'onChange'>) {
  const { rights, credit } = draft;
  return (
    <>
      <Choices
        legend={words.post.rightsLabel}
        name={`${draft.key}-rights`}
        options={RIGHTS.map((right) => [right, words.rights[right]])}
        chosen={rights}
        asks
        onChoose={(chosen) => onChange({ rights: chosen })}
      />
      {rights === 'free' || rights === 'permission' ? (
        <TextField
          label={rights === 'free' ? words.post.creditFree : words.post.creditPermission}
          value={credit}
          maxLength={300}
          required={rights === 'free'}
          onChange={(event) => onChange({ credit: event.target.value })}
        />
      ) : null}
    </>
  );
}

interface ChoicesProps<Option extends string> {
  legend: string;
  name: string;
  options: readonly (readonly [Option, string])[];
  chosen: Option | null;
  /** Nothing can be guessed here: the keys go to it first. */
  asks?: boolean;
  onChoose(option: Option): void;
}

function Choices<Option extends string>({
  legend,
  name,
  options,
  chosen,
  asks = false,
  onChoose,
}: ChoicesProps<Option>) {
  return (
    <fieldset className={styles.choices}>
      <legend>{legend}</legend>
      {options.map(([option, label], at) => (
        <label key={option} className={styles.choice}>
          <input
            type="radio"
            name={name}
            checked={chosen === option}
            data-autofocus={(asks && at === 0) || undefined}
            onChange={() => onChoose(option)}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}

/** The file as it lies on this device; some kinds (HEIC, TIFF) browsers cannot show. */
function SmallPicture({ file }: { file: File }) {
  const [address, setAddress] = useState<string | null>(null);
  const [unseeable, setUnseeable] = useState(false);
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setAddress(made);
    setUnseeable(false);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  if (unseeable) return <div className={`${styles.small} ${styles.unseeable}`}>{words.post.noPreview}</div>;
  if (!address) return <div className={styles.small} />;
  // biome-ignore lint/performance/noImgElement: a file of this device; Next's own image part would send it through the server.
  return <img className={styles.small} src={address} alt="" onError={() => setUnseeable(true)} />;
}
