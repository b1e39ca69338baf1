/** German. Words of the plan: its page, its parts, the photograph it is made from. Pure. */
import type * as en from '../en/plan.ts';
import type { Worded } from '../worded.ts';

export const planWords: Worded<typeof en.planWords> = {
  link: 'Plan',
  title: 'Plan',
  titleOf: (board) => `Plan zu „${board}“`,
  back: 'Zurück zur Tafel',
  skip: 'Gleich zur Vorlage',
  stage: 'Die Vorlage',
  partsLabel: 'Was zu klären ist',
  parts: {
    frames: 'Ausschnitte',
    weight: 'Gewicht',
    values: 'Werte',
    rearrange: 'Umstellen',
    ladder: 'Leiter',
  },
  photograph: 'Geplant nach',
  of: 'Für',
  whole: 'Die ganze Vorlage',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  nothing:
    'Auf dieser Tafel ist noch keine Vorlage, nach der sich planen ließe. Stell das Foto ein, nach dem du malen willst, und komm dann wieder.',
  lookOn:
    'Du kannst hier alles ansehen und für dich ausprobieren. Was bleibt, legt fest, wer die Tafel führt oder auf ihr unterrichtet.',
  veiled:
    'Im Unterricht wird gerade nur das Gemälde angeschaut. Die Vorlage und ihr Plan kommen wieder, wenn der Unterricht so weit ist.',
};
