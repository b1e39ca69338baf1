/**
 * German. What is called for ("dir", a name) stands in the dative here, and every sentence that takes it is built so.
 *
 * Pure but for the reader's own time zone.
 */
import { dayOf, daysBetween } from '#server/core/own-time/days.ts';
import type * as en from '../en/queue.ts';
import type { Worded } from '../worded.ts';
import { VERDICTS } from './moves.ts';

type PictureName = Parameters<typeof en.pictureWords>[0];

const SMALL = 'kein,ein,zwei,drei,vier,fünf,sechs,sieben,acht,neun,zehn,elf,zwölf'.split(',');
/** Without their endings, which go by what follows. */
const NTH = ',erst,zweit,dritt,viert,fünft,sechst,siebt,acht,neunt,zehnt'.split(',');
const weekday = new Intl.DateTimeFormat('de-DE', { weekday: 'long' });
const date = new Intl.DateTimeFormat('de-DE', { weekday: 'long', day: 'numeric', month: 'long' });

const number = (count: number) => SMALL[count] ?? String(count);
const nth = (count: number, ending: 'er' | 'en' | 'e') =>
  NTH[count] ? `${NTH[count]}${ending}` : `${count}.`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** @param one With its article. @param many Without a number. */
function counted(count: number, one: string, many: string): string {
  return count === 1 ? one : `${number(count)} ${many}`;
}

/** "a", "a und b", "a, b und c". */
function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} und ${parts.at(-1)}`;
}

/** A day inside a sentence: a comma closes "Dienstag, 4. November". */
const mid = (day: string) => (day.includes(',') ? `${day},` : day);

/** When something was, inside a sentence: "heute", "gestern Abend", "am Dienstagabend", "am Dienstag, 4. November,". */
const on = (day: string) => (/^\p{Lu}/u.test(day) ? `am ${mid(day)}` : day);

/** "heute", "morgen", "gestern", "Dienstag", "Dienstag, 4. November". @param day, today 'YYYY-MM-DD'. */
export const dayWords: typeof en.dayWords = (day, today) => {
  const away = daysBetween(today, day);
  const noon = new Date(`${day}T12:00:00`);
  if (away === 0) return 'heute';
  if (away === 1) return 'morgen';
  if (away === -1) return 'gestern';
  return away > 1 && away < 7 ? weekday.format(noon) : date.format(noon);
};

/** "heute Morgen", "gestern Abend", "Dienstagabend", "in der Nacht zu Dienstag", "Montag, 3. November". */
export const momentWords: typeof en.momentWords = (iso, now) => {
  const at = new Date(iso);
  const hour = at.getHours();
  const ago = daysBetween(dayOf(at), dayOf(now));
  if (ago >= 7) return date.format(at);
  if (hour < 5) {
    if (ago <= 0) return 'letzte Nacht';
    return `in der Nacht zu ${ago === 1 ? 'gestern' : weekday.format(at)}`;
  }
  const part = hour < 12 ? 'Morgen' : hour < 18 ? 'Nachmittag' : 'Abend';
  if (ago <= 0) return `heute ${part}`;
  return ago === 1 ? `gestern ${part}` : `${weekday.format(at)}${part.toLowerCase()}`;
};

/** The day of a moment gone by, where it says since when something waits. */
export const sinceWords: typeof en.sinceWords = (iso, now) => dayWords(dayOf(new Date(iso)), dayOf(now));

/** "„Ebbe“", "dein Gemälde", "der zweite Stand des Gemäldes von Hedda", "die Vorlage". */
export const pictureWords: typeof en.pictureWords = ({ caption, kind, painter, mine, state }) => {
  if (caption) return state > 1 ? `„${caption}“, ${nth(state, 'er')} Stand` : `„${caption}“`;
  if (kind === 'reference') return 'die Vorlage';
  if (state > 1)
    return `der ${nth(state, 'e')} Stand ${mine ? 'deines Gemäldes' : `des Gemäldes von ${painter}`}`;
  return mine ? 'dein Gemälde' : `das Gemälde von ${painter}`;
};

/** The same after "on": "zu „Ebbe“", "zum zweiten Stand deines Gemäldes", "zur Vorlage". */
function toPicture({ caption, kind, painter, mine, state }: PictureName): string {
  const later = `zum ${nth(state, 'en')} Stand`;
  if (caption) return state > 1 ? `${later} von „${caption}“` : `zu „${caption}“`;
  if (kind === 'reference') return 'zur Vorlage';
  if (state > 1) return `${later} ${mine ? 'deines Gemäldes' : `des Gemäldes von ${painter}`}`;
  return mine ? 'zu deinem Gemälde' : `zum Gemälde von ${painter}`;
}

function postedWords({ kind, painter, state, caption }: PictureName): string {
  const called = caption ? ` „${caption}“` : '';
  if (kind === 'reference') return `eine neue Vorlage${called}`;
  return `${state > 1 ? 'ein neuer Stand' : 'ein neues Gemälde'}${called} von ${painter}`;
}

/** What came, picture by picture: "zwei neue Bemerkungen zu „Ebbe“; ein neuer Stand von Hedda". */
export const newsWords: typeof en.newsWords = (pictures) => {
  const parts = pictures.flatMap(({ name, posted, remarks, answers, cards }) => {
    const came = [
      ...(remarks > 0 ? [counted(remarks, 'eine neue Bemerkung', 'neue Bemerkungen')] : []),
      ...(cards > 0 ? [counted(cards, 'eine neue Karte', 'neue Karten')] : []),
      ...(answers > 0 ? [counted(answers, 'eine neue Antwort', 'neue Antworten')] : []),
    ];
    return [
      ...(posted ? [postedWords(name)] : []),
      ...(came.length > 0 ? [`${list(came)} ${toPicture(name)}`] : []),
    ];
  });
  return parts.join('; ');
};

/** What the reader calls somebody, in the dative: themselves "dir". */
export const calledBy: typeof en.calledBy = (person, meId) =>
  person && (person.id === meId ? 'dir' : person.name);

export const queueWords: Worded<typeof en.queueWords> = {
  quoted: (text) => `„${text}“`,
  page: {
    title: 'Wartet auf dich',
    lead: 'Gemälde, für die du um einen Blick gebeten wurdest; was zuerst zugesagt ist, steht oben.',
    loading: 'Es wird nachgesehen, was wartet …',
    none: 'Nichts wartet auf dich.',
    noneHow:
      'Bittet jemand auf einer Tafel, auf der du unterrichtest, um einen Blick, dann steht das Gemälde hier, bis du ihn gegeben hast.',
    notTeacher:
      'Blicke gibst du dort, wo du unterrichtest oder eine Tafel leitest; bisher gibt es keine solche Tafel. Worum du selbst gebeten hast, steht auf deinen Tafeln.',
    back: 'Zu den Tafeln',
    again: 'Neu nachsehen',
    passed: 'Der zugesagte Tag ist vorbei',
    today: 'Für heute zugesagt',
    promised: 'Zugesagt',
    open: 'Noch kein Tag zugesagt',
    others: 'An andere gerichtet',
  },

  row: {
    of: (painter, caption) => (caption ? `${painter}, „${caption}“` : `Gemälde von ${painter}`),
    on: (board, states) => (states > 1 ? `${board}, ${nth(states, 'er')} Stand` : board),
    open: 'Gemälde öffnen',
    openThis: (painter) => `Gemälde öffnen, von ${painter}`,
    picture: (painter) => `Gemälde von ${painter}`,
    reference: 'Vorlage',
    about: 'Absicht',
    asked: 'Bitte',
    last: (when, sameState) => (sameState ? `Schon gesagt, ${when}` : `Beim letzten Mal, ${when}`),
    nothingLast: 'Bisher wurde nichts dazu gesagt.',
    news: (when, news) => `Seit deinem letzten Besuch (${when}): ${news}.`,
    noNews: (when) => `Nichts Neues seit deinem letzten Besuch (${when}).`,
    never: 'Du hast dir diese Tafel noch nicht angesehen.',
    nothing: 'Bisher wurde nichts dazu gesagt, und du hast dir diese Tafel noch nicht angesehen.',
    newsOf: ({ remarks, states, answers }) =>
      list([
        ...(states > 0 ? [counted(states, 'ein neuer Stand', 'neue Stände')] : []),
        ...(remarks > 0 ? [counted(remarks, 'eine neue Bemerkung', 'neue Bemerkungen')] : []),
        ...(answers > 0
          ? [
              counted(
                answers,
                'eine Antwort auf eine Karte oder Bemerkung',
                'Antworten auf Karten oder Bemerkungen',
              ),
            ]
          : []),
      ]),
    repeated: ({ name, paintings }) => `Zum ${nth(paintings, 'en')} Mal: ${name}`,
    went: (verdict) => `Wie weit es ging: ${VERDICTS[verdict]}.`,
    saidSince: 'Seit der Bitte hast du etwas dazu gesagt. Ist sie damit erfüllt?',
  },

  states: {
    open: 'noch keine Antwort',
    accepted: 'wird gemacht',
    adapted: 'wird anders gemacht',
    declined: 'bleibt so',
    tried: 'versucht',
    done: 'erledigt',
    carried: 'geht mit zum nächsten Stand',
  },

  promise: {
    waits: (since, of) =>
      of === null
        ? `Gewünscht ist ein Blick, gleich von welcher Lehrperson, seit ${since}.`
        : `Gewünscht ist ein Blick von ${of}, seit ${since}.`,
    promised: (day, by) => `Zugesagt ${by ? `von ${by} ` : ''}für ${day}.`,
    passed: (day, by) => `Zugesagt war er ${by ? `von ${by} ` : ''}für ${day}; der Tag ist vorbei.`,
    none: 'Noch ist kein Tag zugesagt.',
    give: 'Tag zusagen',
    other: 'Anderer Tag',
    day: 'Tag des Blicks',
    usual: 'Zwei oder drei Tage sind üblich.',
    keep: 'Zusagen',
    takeBack: 'Zusage zurücknehmen',
    answered: 'Angesehen',
    answering: 'Wird vermerkt …',
  },

  ask: {
    title: 'Blick einer Lehrperson',
    begin: 'Um einen Blick bitten',
    beginAgain: 'Um noch einen Blick bitten',
    of: 'Wen bittest du?',
    any: 'Gleich welche Lehrperson',
    words: 'Was soll angesehen werden? (wenn du magst)',
    send: (of) => (of === null ? 'Um einen Blick bitten' : `${of} um einen Blick bitten`),
    sending: 'Wird gefragt …',
    mine: (since, of) => `Du hast ${of === null ? '' : `${of} `}${on(since)} um einen Blick gebeten.`,
    theirs: (who, since, of) =>
      `${who} hat sich ${on(since)} einen Blick ${of === null ? '' : `von ${of} `}gewünscht.`,
    promised: (day, by) =>
      by ? `${by} hat den Blick für ${mid(day)} zugesagt.` : `Der Blick ist für ${mid(day)} zugesagt.`,
    passed: (day, by) =>
      by
        ? `${by} hatte den Blick für ${mid(day)} zugesagt; der Tag ist vorbei.`
        : `Der Blick war für ${mid(day)} zugesagt; der Tag ist vorbei.`,
    waiting: 'Der Wunsch wartet; noch ist kein Tag zugesagt.',
    goesOn: 'Stellst du den nächsten Stand ein, geht die Bitte dorthin mit.',
    answered: (by, when, earlier) =>
      `${by} hat ${earlier ? 'einen früheren Stand' : 'dieses Gemälde'} angesehen, ${when}.`,
    change: 'Deine Bitte ändern',
    keep: 'Festhalten',
    withdraw: 'Zurückziehen',
    withdrawn: 'Zurückgezogen.',
  },

  home: {
    label: 'Erbetene Blicke',
    waits: (count) => `${capital(counted(count, 'ein Gemälde wartet', 'Gemälde warten'))} auf dich`,
    first: (day) => `das erste ist für ${mid(day)} zugesagt`,
    firstOne: (day) => `zugesagt für ${day}`,
    passed: (day) => `das erste war für ${mid(day)} zugesagt`,
    passedOne: (day) => `zugesagt war es für ${day}`,
    noDay: 'noch kein Tag zugesagt',
    open: 'Sieh, was wartet',
    own: {
      promised: (board, day) => `Dein Gemälde auf „${board}“: Ein Blick ist für ${mid(day)} zugesagt.`,
      waiting: (board, since) => `Dein Gemälde auf „${board}“ wartet seit ${mid(since)} auf einen Blick.`,
      answered: (board, by, when) => `${by} hat ${on(when)} dein Gemälde auf „${board}“ angesehen.`,
    },
  },

  since: {
    label: 'Seit deinem letzten Besuch',
    line: (when, news) => `Seit deinem letzten Besuch (${when}): ${news}.`,
    head: (when) => `Seit deinem letzten Besuch (${when})`,
    nothing: (when) => `Nichts Neues seit deinem letzten Besuch (${when}).`,
    fresh: 'Neu',
    freshAnswer: 'Neue Antwort',
  },

  phrases: {
    open: 'Wendungen',
    label: 'Deine eigenen Wendungen',
    private: 'Nur du kannst sie lesen.',
    search: 'Wendung suchen',
    none: 'Noch hast du keine Wendungen. Schreib, was du oft sagst, und halte es hier fest.',
    noMatch: 'Keine Wendung enthält diese Worte.',
    keepWritten: 'Geschriebenes als Wendung festhalten',
    keepSaid: (words) => `Eben Gesagtes festhalten: „${words}“`,
    kept: 'Festgehalten.',
    slots:
      'Lücken füllen sich, soweit bekannt: {plane} mit der Ebene, {part} mit ihrem Teil, {amount} mit dem Maß.',
    edit: 'Wendungen ordnen',
    title: 'Eigene Wendungen',
    add: 'Neue Wendung',
    addIt: 'Festhalten',
    change: 'Worte ändern',
    field: 'Worte der Wendung',
    save: 'Festhalten',
    remove: 'Löschen',
    up: 'Nach oben',
    down: 'Nach unten',
    moveLabel: (what, phrase) => `${what}: ${phrase}`,
    full: (most) => `Du hast ${most} Wendungen; mehr gehen nicht.`,
  },
  cancel: 'Abbrechen',
};
