/** German. Words of the list of keys besides what each letter of the board does: its parts, and keys of a place. Pure. */
import type * as en from '../en/keys.ts';
import type { Worded } from '../worded.ts';

export const keyListWords: Worded<typeof en.keyListWords> = {
  anywhere: 'Überall auf der Tafel',
  places: 'Auf einem Bild oder dem, was darauf liegt',
  pages: 'Auf anderen Seiten',
  points: 'Umriss: die Linie entlang zum nächsten Punkt',
  addPoint: 'Umriss: hier noch ein Punkt',
  takePoint: 'Umriss: diesen Punkt weg; Griff eines Plans: zurück zur Luft',
  finish: 'Begonnenes abschließen oder übernehmen',
  leave: 'Begonnenes lassen oder ein Feld schließen',
  back: 'einen Punkt der Linie zurück',
  size: 'Ebenen beim Übertragen: kleiner, größer',
  fine: 'mit den Pfeilen: weiter für das, was verschoben wird, feiner für das Kreuz',
  along: 'auf Anmerkungen: die erste, die letzte',
  alone: 'Plan: die Vorlage allein und zurück',
  hold: 'Stände, gedrückt gehalten: der Stand davor',
};
