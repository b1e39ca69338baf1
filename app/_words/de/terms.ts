/** German. Pure. */
import type * as en from '../en/terms.ts';
import type { Worded } from '../worded.ts';

export const termWords: Worded<typeof en.termWords> = {
  title: 'Was die Wörter meinen',
  lead: 'So, wie sie hier gebraucht werden. Wo hinter einem Wort eine Zahl steht, steht ihre Einheit dabei.',
  groups: [
    {
      title: 'Hell und dunkel',
      terms: [
        ['Tonwert', 'Wie hell oder dunkel etwas ist, gleich welcher Farbe.'],
        [
          'Stufe',
          'Ein Zehntel des Weges von Schwarz nach Weiß: 10 L* in CIELAB (CIE 15), nahe einer Stufe der Munsell-Tonwertskala.',
        ],
        [
          'Lichter, Mitte, Dunkel',
          'Einer Ebene: 5 % von ihr sind heller als ihre Lichter, 5 % dunkler als ihr Dunkel, die Hälfte ist dunkler als ihre Mitte.',
        ],
        ['Umfang', 'Wie weit es vom Dunkelsten zum Hellsten ist.'],
        ['Grundton', 'Wo auf dem Weg von Schwarz nach Weiß ein ganzes Bild sitzt: hell oder dunkel.'],
        ['Aufgespartes', 'Die dunkelste und die hellste Farbe, aufgespart für dort, wo sie zählen.'],
        ['Blinzeln', 'Die Augen halb schließen: Kleines vergeht, große Formen bleiben.'],
        ['Große Formen', 'Was beim Blinzeln übrig bleibt: wenige große Flecken aus Hell, Mittel und Dunkel.'],
        ['Notan', 'Ein Bild in zwei Tonwerten, um sein Muster aus Dunkel und Hell zu sehen.'],
        ['Fleckig', 'Viele kleine helle und dunkle Flecken, wo wenige große tragen würden.'],
      ],
    },
    {
      title: 'Farbe',
      terms: [
        [
          'Farbton',
          'Zu welcher Familie eine Farbe gehört: Rot, Orange, Gelb, Grün, Blau, Violett. Gemessen als Winkel (°).',
        ],
        ['Buntheit', 'Wie kräftig eine Farbe ist, von Grau an aufwärts: C*ab in CIELAB (CIE 15).'],
        ['Vergraut', 'Eine Farbe, die schwächer gemacht ist, oft mit etwas von ihrem Gegenüber.'],
        [
          'Warm–kühl',
          'Wie warm eine Farbe wirkt, + wärmer, − kühler: nach dem, was Menschen über einzelne Farben sagten (Ou, Luo, Woodcock und Wright 2004). Es zählt, was daneben liegt.',
        ],
        ['Neutral', 'Ohne Farbton: Grau, Weiß, Schwarz.'],
        [
          'Lokalfarbe',
          'Die Farbe, die ein Ding von Nahem in einfachem Licht hat, ehe Luft und Lampe sie ändern.',
        ],
        ['Farbstich', 'Ein Ton über allem, von der Lampe oder der Kamera.'],
        ['Gebrochene Farbe', 'Mehrere Farben eines Tonwerts nebeneinander statt einer gemischten.'],
      ],
    },
    {
      title: 'Tiefe',
      terms: [
        ['Ebene', 'Alles, was gleich weit entfernt ist: Himmel, ferner Kamm, Wald, Wiese.'],
        [
          'Luftperspektive',
          'Luft hellt das Dunkel des Fernen auf, vergraut es, macht es weicher und bringt es der Farbe der Luft näher.',
        ],
        ['Luftfarbe', 'Die Farbe, der alles Ferne zustrebt; meist die des Himmels über dem fernsten Kamm.'],
        [
          'Abstand zur Luftfarbe',
          'Wie weit die Mitte einer Ebene von der Luftfarbe liegt: ΔE*ab (CIE 15). Mit der Entfernung wird er kleiner.',
        ],
        [
          'Luftanteil',
          'Wie viel von dem, was man von einer Ebene sieht, Luft davor ist (%), abgelesen an ihren dunkelsten Stellen: He, Sun und Tang 2009.',
        ],
        ['Kamm', 'Wo Land gegen das endet, was dahinter liegt.'],
        ['Kante', 'Wie eine Form in die nächste übergeht: hart, weich oder verloren, wo beide verschmelzen.'],
        ['Detail', 'Wie viel feiner Wechsel in einer Ebene ist, gemessen an ihrem Kontrast.'],
      ],
    },
    {
      title: 'Das Bild',
      terms: [
        ['Vorlage', 'Das Foto, nach dem gemalt wird.'],
        ['Stand', 'Ein Gemälde zu einem Zeitpunkt: übermalt ist es der nächste Stand.'],
        ['Ausschnitt', 'Der Teil des Fotos, der bleibt.'],
        ['Blickpunkt', 'Wo das Auge zur Ruhe kommen soll.'],
        [
          'Gewicht',
          'Wie stark ein Fleck das Auge zieht. Links und rechts antworten einander wie die Arme einer Waage.',
        ],
        ['Akzent', 'Ein kleiner, kräftiger Ton.'],
        [
          'Berührung',
          'Umrisse, die sich gerade eben berühren und so zwei verschieden weit entfernte Dinge zusammenziehen.',
        ],
        ['Überschneidung', 'Eine Form vor einer anderen: das einfachste Zeichen von Tiefe.'],
      ],
    },
    {
      title: 'Das Foto und die Farbe',
      terms: [
        ['Entzerrt', 'Gesehen, als hätte die Kamera gerade vor dem Gemälde gestanden.'],
        [
          'Graukarte',
          'Ein Neutral von bekannter Helligkeit neben dem Gemälde, damit sich die Lampe herausrechnen lässt.',
        ],
        [
          'Güte',
          'Wie verlässlich ein Foto ist: bei A auf eine Viertelstufe, bei B auf eine halbe Stufe, bei C nur in der Reihenfolge von Hell und Dunkel.',
        ],
        ['Unsicherheit (±)', 'In neun von zehn Fällen liegt das Wahre darin.'],
        ['Glanz', 'Licht, das nasse oder gefirnisste Farbe zurückwirft; es verdeckt, was darunter liegt.'],
        ['Ausgefressen, zugelaufen', 'So hell oder so dunkel, dass die Kamera keinen Unterschied behielt.'],
        ['Trockener Überzug', 'Eine dünne, helle, halb deckende Schicht, über trockene Farbe gezogen.'],
        ['Lasur', 'Eine dünne durchsichtige Schicht über trockener Farbe.'],
        ['Untermalung', 'Die erste große Schicht, auf der spätere ruhen.'],
      ],
    },
  ],
  care: 'Farben, Malmittel und Verdünner können schaden: Halte dich an das Etikett, an die Regeln deines Ortes und deiner Lehrperson, lüfte, und halte Farbe von Haut und Mund fern.',
};
