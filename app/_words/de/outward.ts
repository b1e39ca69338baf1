/** German. Pure. */
import type * as en from '../en/outward.ts';
import type { Worded } from '../worded.ts';

/** @param one With its article. */
const plural = (count: number, one: string, many: string) => (count === 1 ? one : `${count} ${many}`);
const pictures = (count: number) => (count === 0 ? 'kein Bild' : plural(count, 'ein Bild', 'Bilder'));
const remarks = (count: number) =>
  count === 0 ? 'keine Bemerkung' : plural(count, 'eine Bemerkung', 'Bemerkungen');

export const outwardWords: Worded<typeof en.outwardWords> = {
  board: {
    titleOf: (board) => `Mitnehmen von „${board}“`,
    lead: 'Was auf dieser Tafel steht, als Dateien für dich.',
    back: 'Zurück zur Tafel',
    figures: 'Zahlen',
    figuresText:
      'Jede Zahl jeder Ebene mit ihrer Einheit und ihrer Unsicherheit. Die Tabelle öffnet sich in jeder Tabellenkalkulation.',
    table: 'Tabelle (CSV)',
    json: 'Alles (JSON)',
    marks: 'Anmerkungen',
    marksText:
      'Bemerkungen, Linien und Farbproben, die du siehst, als Web Annotations (JSON-LD), nach einem Standard des W3C, den auch andere Programme lesen.',
    marksOut: 'Anmerkungen (JSON-LD)',
    marksIn: 'Anmerkungen hereinholen',
    marksInText:
      'Aus einer Datei mit Web Annotations. Sie werden zu deinen Anmerkungen; daneben steht der Name der Person, die es zuerst gesagt hat. Was hier ist, bleibt unberührt.',
    choose: 'Datei wählen',
    onto: 'Wohin mit Anmerkungen, deren Bild nicht auf dieser Tafel ist',
    ontoNone: 'Diese nicht hereinholen',
    bringing: 'Sie werden hereingeholt …',
    taken: (count) =>
      count === 0
        ? 'Keine Anmerkung ließ sich hereinholen.'
        : `${plural(count, 'Eine Anmerkung ist', 'Anmerkungen sind')} hereingeholt.`,
    leftOut: 'Ausgelassen',
    passedOver: 'Hereingeholt, bis auf einen Teil',
    whole: 'Die ganze Tafel',
    wholeText:
      'Eine Datei mit Bildern, Ebenen, Anmerkungen, Karten und Zahlen, die ein anderes Veilstep so aufnimmt, wie sie ist. Menschen stehen nur mit Namen darin. Unberührte Kameradateien, Anmeldungen, Adressen und Passwörter sind nie dabei.',
    wholeTake: 'Tafel mitnehmen',
    wholeCount: (count) =>
      count === 0 ? 'Kein Bild geht mit.' : `${plural(count, 'Ein Bild geht', 'Bilder gehen')} mit.`,
    behind: (count) =>
      count === 1
        ? 'Ein Bild bleibt zurück, mit allem, was dazu gesagt wurde:'
        : `${count} Bilder bleiben zurück, mit allem, was dazu gesagt wurde:`,
    behindHow:
      'Ein Gemälde geht mit, sobald erlaubt ist, dass es aufbewahrt und dass es anderen gezeigt wird. Das erlaubt, wer es gemalt hat (bei den Leuten der Tafel, unter „Was mit den Bildern geschehen darf“).',
    looking: 'Es wird nachgesehen, was mitgehen darf …',
    pictureBy: (caption, painter) => (caption ? `„${caption}“ von ${painter}` : `Ein Bild von ${painter}`),
  },
  boards: {
    open: 'Tafel aus einer Datei hereinholen',
    text: 'Aus einer Datei, die von diesem oder einem anderen Veilstep mitgenommen wurde. Die Tafel gehört dann dir; ihre Leute kommen als Namen mit.',
    taking: 'Sie wird hereingeholt …',
    done: (title, count) =>
      `„${title}“ ist da, ${count === 0 ? 'ohne Bild' : `mit ${plural(count, 'einem Bild', 'Bildern')}`}.`,
    behind: 'Diese waren beim Mitnehmen zurückgeblieben:',
    look: 'Öffnen',
  },
  person: {
    title: 'Meine Daten mitnehmen',
    text: 'Eine Datei mit allem, was dir gehört: wer du hier bist, deine Bilder und die Kameradateien, die du behalten hast, deine Anmerkungen, ersten Eindrücke, Wendungen und was du erlaubt hast. Bilder als Bilder, alles Übrige als Text.',
    take: 'Mitnehmen',
    endTitle: 'Mich löschen',
    endText:
      'Endgültig. Deine Bilder gehen mit allem, was dazu gesagt wurde; deine Bemerkungen, ersten Eindrücke, Wendungen, Bitten und Aufgaben gehen, und auch dein Name.',
    counts: (images, said) => `Das betrifft ${pictures(images)} und ${remarks(said)}.`,
    stays:
      'Was andere geschrieben haben, bleibt, auch Antworten auf deine Bemerkungen, die dann allein stehen. Karten und Ebenen tragen keinen Namen und bleiben bei ihrer Tafel. Sätze im Protokoll („Was getan wurde“) behalten Namen bis zu 365 Tage. Dateien, die andere mitgenommen haben, und Sicherungen dieses Servers sind nicht zu erreichen, bis sie gelöscht werden.',
    holds: 'Gib vorher weiter oder lösche, was dir gehört:',
    confirm: (name) => `Schreib zur Sicherheit deinen Namen: ${name}`,
    go: 'Mich endgültig löschen',
    going: 'Wird gelöscht …',
    look: 'Zeigen, was ginge',
    looking: 'Wird gezählt …',
    groupNamed: (name) => `die Gruppe „${name}“`,
    boardNamed: (title) => `die Tafel „${title}“`,
  },
};
