/** German. Pure. */
import { STEP_L, stepsInWords } from '#server/core/look/nine-steps.ts';
import type * as en from '../en/look.ts';
import { figure } from '../figures.ts';
import type { Worded } from '../worded.ts';
import { lookShownWords } from './look-shown.ts';

/** Steps to the next quarter, in words. */
const about = (steps: number) => stepsInWords(steps * STEP_L, 0.25);

export const lookWords: Worded<typeof en.lookWords> = {
  ...lookShownWords,
  tools: { patch: 'Probe', guess: 'Erst schätzen' },
  toLadder: 'Leiter zeigen',
  unavailable: 'Die kleine Kopie dieses Bildes war nicht zu holen. Versuch es gleich noch einmal.',

  keys: {
    patch: 'Farbproben nehmen',
    guess: 'erst schätzen: ein Tonwert, bevor er gezeigt wird',
    squint: 'blinzeln: mit halb geschlossenen Augen sehen',
    values: 'die Bilder in wenigen Tonwerten',
    two: 'in zwei Tonwerten',
    three: 'in drei Tonwerten',
    four: 'in vier Tonwerten',
    five: 'in fünf Tonwerten',
    nine: 'neun Stufen neben den Bildern',
    mirror: 'die Bilder spiegeln',
    half: 'halbe Größe',
    ways: 'Sicht',
  },

  ways: {
    title: 'Sicht: Sehweisen',
    groups: { less: 'Weniger sehen', anew: 'Neu sehen', stand: 'Wie sie stehen', eye: 'Für das Auge selbst' },
    squint: ['Blinzeln', 'Halb geschlossene Augen: Kleines verschwindet, große Formen bleiben.'],
    grey: ['Grau', 'Nur der Tonwert: jede Farbe als Grau in ihrer wahren Helligkeit.'],
    values: ['Tonwerte', 'Zwei bis fünf Tonwerte, und wie viel vom Bild jeder einnimmt.'],
    nine: ['Neun Stufen', 'Eine gleichmäßige Grauskala neben jedem Bild, zum Vergleich mit dem Auge.'],
    mirror: ['Spiegeln', 'Links und rechts vertauscht: Was kippt, zeigt sich.'],
    half: ['Halbe Größe', 'Als wärst du zurückgetreten.'],
    over: ['Übereinander', 'Mit einer Kante dazwischen, die du ziehst.'],
    guess: ['Erst schätzen', 'Schätze einen Tonwert, bevor er gezeigt wird.'],
    check: ['Bildschirm prüfen', 'Hält er das dunkelste und das hellste Grau auseinander?'],
    surround: 'Grau um die Bilder',
    closed: 'Wie weit die Augen geschlossen sind',
    closedNames: ['ein wenig', 'halb', 'weit', 'fast ganz'],
  },

  values: {
    title: 'Tonwerte',
    number: 'Wie viele Tonwerte',
    cuts: 'Wo geteilt wird',
    own: 'Jedes Bild für sich',
    same: 'Beide gleich',
    again: 'Neu teilen',
    how: 'Verschieb eine Teilung mit der Hand oder den Pfeiltasten. Die Balken zeigen, wie viel von jedem Bild ein Tonwert einnimmt.',
    squint: 'Blinzle dazu, und kleine Flecken gehen in die großen Formen ein.',
    cut: (picture, lower, upper) => `${picture}: Teilung zwischen ${lower} und ${upper}`,
    cutAt: (lightness) => `Tonwert ${figure(lightness / 10, 1)}`,
    both: 'Beide Bilder',
    shares: (picture) => `${picture}, von dunkel nach hell`,
    names: {
      2: ['dunkel', 'hell'],
      3: ['dunkel', 'mittel', 'hell'],
      4: ['dunkel', 'halbdunkel', 'halbhell', 'hell'],
      5: ['dunkel', 'halbdunkel', 'mittel', 'halbhell', 'hell'],
    },
    waiting: 'Wird angesehen …',
    note: 'Die ersten Teilungen gliedern das Bild in Gruppen, die in sich möglichst ähnlich und untereinander möglichst verschieden sind (Otsu, 1979).',
    unlit:
      'Im Foto des Gemäldes ist keine Graukarte: Seine Tonwerte können eine Stufe zu hell oder zu dunkel sein. Teile deshalb jedes Bild für sich.',
  },

  patch: {
    title: 'Zwei Farbproben',
    keys: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe nimmt eine Probe.',
    how: 'Tippe auf ein Bild, um eine Farbprobe zu nehmen. Die nächste steht daneben.',
    names: ['A', 'B'],
    take: (name) => `${name} neu nehmen`,
    taking: (name) => `Der nächste Tipp nimmt ${name}`,
    empty: 'noch nicht genommen',
    clear: 'Von vorn',
    where: (picture, plane) => (plane ? `${picture}, ${plane}` : picture),
    sides: { reference: 'Vorlage', painting: 'Gemälde' },
    value: 'Tonwert',
    bound: { blown: 'mindestens', crushed: 'höchstens' },
    unknown: 'Das Licht dieses Fotos ist nicht bekannt (Güte C), darum steht hier keine Zahl.',
    uncorrected:
      'Im Foto ist keine Graukarte: Die Worte sagen nur die Reihenfolge. Markiere unter „Entzerren“ eine graue oder weiße Karte, dann gibt es Zahlen.',
    graded: (grade) =>
      `Das Foto des Gemäldes hat Güte ${grade}; hinter ± steht, wie weit es danebenliegen kann.`,
    /** Each part stands by itself, so that a tie in value reads as well as a difference. */
    second: (words) => `B gegenüber A: ${words.join(', ')}.`,
    difference: { lightness: 'Tonwert', chroma: 'Buntheit', warmCool: 'warm–kühl', dE00: 'Unterschied' },
    units: { steps: 'Stufen', chroma: 'C*ab', dE00: 'ΔE00' },
    caption: 'Von A nach B',
  },

  guess: {
    title: 'Erst schätzen',
    keys: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe wählt die Stelle.',
    how: 'Wähle eine Stelle in einem Bild oder eine Ebene. Schätze ihren Tonwert, 0 schwarz bis 10 weiß, und sieh ihn dann.',
    any: 'Eine Stelle auslosen',
    planesOf: { reference: 'Ebenen der Vorlage', painting: 'Ebenen des Gemäldes' },
    about: (side, plane) =>
      plane ? `${side}: „${plane}“, die ganze Ebene` : `${side}: die markierte Stelle`,
    slider: 'Deine Schätzung des Tonwerts, 0 schwarz bis 10 weiß',
    show: 'Zeigen',
    next: 'Noch eine',
    guessed: 'geschätzt',
    shown: 'Tonwert',
    asSeen: 'Es ist der Tonwert, den dieser Bildschirm zeigt, wie auch das Licht des Fotos war.',
    told: (guessed, shown) => {
      const error = guessed - shown;
      const start = `Geschätzt ${figure(guessed, 1)}, gezeigt ${figure(shown, 1)}`;
      return Math.abs(error) < 0.25
        ? `${start}: Näher kommt ein Auge kaum.`
        : `${start}: etwa ${about(error)} zu ${error < 0 ? 'dunkel' : 'hell'} gesehen.`;
    },
    tendencyTitle: 'Wohin dein Auge neigt',
    tendency: (zone, lean, miss) =>
      Math.abs(lean) < 0.25
        ? `Du siehst ${zone} ungefähr richtig, meist auf etwa ${about(miss)} genau.`
        : `Du siehst ${zone} eher etwa ${about(lean)} zu ${lean < 0 ? 'dunkel' : 'hell'}.`,
    tooFew: 'Nach ein paar Schätzungen steht hier, wohin dein Auge neigt.',
    counted: (count) => (count === 1 ? 'Bisher eine Schätzung.' : `Bisher ${count} Schätzungen.`),
    kept: 'Nur in diesem Browser aufgehoben, für dich allein. Niemand sonst sieht es.',
    forget: 'Schätzungen vergessen',
    forgotten: 'Vergessen.',
    zones: { darks: 'das Dunkle', middles: 'die Mitte', lights: 'die Lichter' },
  },

  check: {
    title: 'Bildschirm prüfen',
    lead: 'In jedem Feld weicht ein Quadrat um eine halbe Stufe von den drei anderen ab. Welches? Sitz so wie sonst auch.',
    dark: 'Die zwei dunkelsten Grautöne',
    light: 'Die zwei hellsten Grautöne',
    squares: ['erste', 'zweite', 'dritte', 'vierte'],
    square: (name) => `das ${name} Quadrat`,
    none: 'Ich sehe keinen Unterschied',
    good: 'Dieser Bildschirm hält beide Enden auseinander. Im Dunkel wie in den Lichtern ist er verlässlich.',
    lostDark: 'Das Dunkle läuft hier ineinander.',
    lostLight: 'Die Lichter laufen hier ineinander.',
    todo: [
      'Stell den Bildschirm etwa so hell wie ein Blatt Papier daneben, und schalte ab, was die Helligkeit von selbst ändert.',
      'Schalte warme Abendfarben und jede „lebhafte“ oder „Lese“-Einstellung des Bildes ab.',
      'Lass keine Lampen und Fenster auf den Bildschirm scheinen, und schau gerade darauf.',
      'Stell den Kontrast zurück, wie er neu war; heb bei einem getrennten Bildschirm den Schwarzwert ein wenig, bis sich das Dunkle trennt.',
    ],
    measures:
      'Die Zahlen hängen nicht davon ab: Sie sind an den Bildern gemessen, nicht an diesem Bildschirm.',
    again: 'Noch einmal prüfen',
    done: 'Fertig',
    kept: 'Nur in diesem Browser gemerkt.',
    state: {
      none: 'Noch nicht geprüft.',
      good: (when) => `Geprüft ${when}: Beide Enden sind auseinanderzuhalten.`,
      lost: (when) => `Geprüft ${when}: Ein Ende der Skala läuft ineinander.`,
    },
  },
};
