/** German. Words of being on a board at the same time: looking with somebody, asking to speak, the line. Pure. */
import type * as en from '../en/together.ts';
import type { Worded } from '../worded.ts';

/** As they stand before words like "Bemerkung" and "Änderung". */
const SMALL = ['keine', 'eine', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];

/** "eine Bemerkung", "drei Änderungen", "12 Änderungen". @param thing Feminine, and many of it end in -en. */
function counted(count: number, thing: string): string {
  return `${SMALL[count] ?? count} ${thing}${count === 1 ? '' : 'en'}`;
}

/** "Pia", "Pia und Tove", "Pia, Tove und Nils". */
function listed(names: readonly string[]): string {
  const [last, ...before] = [...names].reverse();
  return before.length > 0 ? `${before.reverse().join(', ')} und ${last}` : (last ?? '');
}

const capital = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1);

export const togetherWords: Worded<typeof en.togetherWords> = {
  label: 'Gemeinsam',
  lookWith: (name) => `Mit ${name} schauen`,
  lookingWith: (name) => `Du schaust mit ${name}.`,
  broughtTo: (name) => `${name} zeigt allen etwas: Du schaust mit.`,
  letGo: 'Loslassen',
  letGoHow: 'Loslassen (Esc). Wenn du selbst das Bild bewegst, lässt du auch los.',
  left: (name) => `${name} ist nicht mehr hier. Was du siehst, bleibt, wie es war.`,
  lookers: (names) => `${capital(listed(names))} ${names.length === 1 ? 'schaut' : 'schauen'} mit dir.`,
  bring: 'Alle herholen',
  bringHow: 'Alle hier schauen mit dir, bis sie loslassen',
  bringAgain: 'Noch einmal herholen',
  setFree: 'Alle freigeben',
  quiet: 'Anmerkungen aus',
  quietHow: 'Auf keinem Bildschirm sind Anmerkungen zu sehen',
  closeMarking: 'Anmerken schließen',
  closeMarkingHow:
    'Bis es wieder geöffnet wird, kann nur anmerken und Anmerkungen ändern, wer hier unterrichtet oder den Server betreibt',
  quieted: 'Die Anmerkungen sind gerade auf allen Bildschirmen ausgeblendet.',
  closed: 'Das Anmerken ist gerade geschlossen: Schaut und sprecht.',
  ask: 'Zu Wort melden',
  asked: 'Du hast dich zu Wort gemeldet.',
  takeBack: 'Zurücknehmen',
  wishes: (names) => `${listed(names)} ${names.length === 1 ? 'möchte' : 'möchten'} etwas sagen.`,
  thank: (name) => `Danke, ${name}`,
  thankHow: (name) => `${name} hat gesprochen; die Wortmeldung ist damit erledigt`,

  line: {
    down: (since) =>
      `Die Verbindung ist seit ${since} Uhr unterbrochen. Was du tust, bleibt hier erhalten und wird gesendet, sobald sie wieder steht; das wird von selbst immer wieder versucht.`,
    /** Said once to those who listen. */
    downSaid:
      'Die Verbindung ist unterbrochen. Was du tust, bleibt erhalten und wird gesendet, sobald sie wieder steht.',
    backSaid: 'Die Verbindung steht wieder.',
    catchingUp: 'Die Verbindung steht wieder. Das Versäumte wird nachgeholt …',
    waiting: (remarks, others) => {
      const change = remarks > 0 ? 'weitere Änderung' : 'Änderung';
      const things = [
        ...(remarks > 0 ? [counted(remarks, 'Bemerkung')] : []),
        ...(others > 0 ? [counted(others, change)] : []),
      ];
      if (things.length === 0) return 'Bisher wartet nichts.';
      const one = remarks + others === 1;
      return `${capital(listed(things))} ${one ? 'wartet' : 'warten'} darauf, gesendet zu werden.`;
    },
    closedHow: 'Von dieser Seite wird nichts mehr gesendet.',
    toBoards: 'Zu den Tafeln',
  },
};
