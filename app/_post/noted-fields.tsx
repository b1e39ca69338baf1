'use client';
/** Three fields about a painting that nobody has to fill in: paint, wet or dry, light. */
import { useId } from 'react';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import {
  DRYINGS,
  type Drying,
  PHOTO_LIGHTS,
  type PhotoLight,
} from '#server/core/contract/picture-choices.ts';
import { notedText } from '#words/noted.ts';
import styles from './post.module.css';

/** As written on the sheet; `medium` is what was typed. */
export interface NotedDraft {
  medium: string;
  drying: Drying | null;
  light: PhotoLight | null;
}

interface NotedFieldsProps {
  noted: NotedDraft;
  onChange(change: Partial<NotedDraft>): void;
}

export function NotedFields({ noted, onChange }: NotedFieldsProps) {
  const list = useId();
  const chosen = <Choice extends string>(choices: readonly Choice[], value: string) =>
    choices.find((choice) => choice === value) ?? null;
  return (
    <div className={styles.noted}>
      <TextField
        label={notedText.medium}
        hint={notedText.mediumHint}
        value={noted.medium}
        maxLength={60}
        list={list}
        autoComplete="off"
        onChange={(event) => onChange({ medium: event.target.value })}
      />
      <datalist id={list}>
        {Object.values(notedText.media).map((word) => (
          <option key={word} value={word} />
        ))}
      </datalist>
      <ChoiceField
        label={notedText.drying}
        value={noted.drying ?? ''}
        onChange={(event) => onChange({ drying: chosen(DRYINGS, event.target.value) })}
      >
        <option value="">{notedText.notSaid}</option>
        {DRYINGS.map((drying) => (
          <option key={drying} value={drying}>
            {notedText.dryings[drying]}
          </option>
        ))}
      </ChoiceField>
      <ChoiceField
        label={notedText.light}
        value={noted.light ?? ''}
        onChange={(event) => onChange({ light: chosen(PHOTO_LIGHTS, event.target.value) })}
      >
        <option value="">{notedText.notSaid}</option>
        {PHOTO_LIGHTS.map((light) => (
          <option key={light} value={light}>
            {notedText.lights[light]}
          </option>
        ))}
      </ChoiceField>
    </div>
  );
}
