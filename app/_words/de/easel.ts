/**
 * German. Every word of the easel, the planes and the talk, in one place.
 *
 * Names of planes stand in quotation marks, so that a sentence reads well whatever somebody called theirs. Pure.
 */
import type * as en from '../en/easel.ts';
import type { Worded } from '../worded.ts';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** As they stand after "auf". */
const SIDES = { reference: 'der Vorlage', painting: 'dem Gemälde' };

/** A caption is somebody's own words and gets quotation marks. */
const onPicture = (picture: string) =>
  Object.values(SIDES).includes(picture) ? `auf ${picture}` : `auf „${picture}“`;

export const words: Worded<typeof en.words> = {
  easel: {
    label: 'Staffelei',
    role: 'Bild',
    reference: (author) => `Vorlage, eingestellt von ${author}`,
    painting: (author) => `Gemälde von ${author}`,
    fromLife: 'Nach der Natur gemalt: Auf dieser Tafel ist keine Vorlage.',
    noPainting: 'Noch kein Gemälde. Stell eines ein, dann lassen sich die Ebenen gegen die Vorlage messen.',
    noPictures: 'Hier steht noch nichts. Stell eine Vorlage ein, ein Gemälde oder beides.',
    edge: 'Grenze zwischen den beiden Bildern, in Prozent der Breite',
    referenceShort: 'Vorlage',
    paintingShort: 'Gemälde',
    view: 'Ansicht und Schritte',
    zoomIn: 'Näher',
    zoomOut: 'Weiter weg',
    whole: 'Ganzes Bild',
    undo: 'Rückgängig',
    redo: 'Wiederholen',
    lookKeys:
      'Plus und Minus gehen näher und weiter weg, Null zeigt das ganze Bild, Pfeiltasten verschieben es.',
  },
  outline: {
    keys: 'Pfeiltasten bewegen das Kreuz, die Leertaste setzt einen Punkt entlang der Kante, Umschalt und Leertaste einen geraden, Eingabe schließt ab, die Rücktaste nimmt den letzten Punkt zurück, Esc gibt auf.',
    splitKeys:
      'Pfeiltasten bewegen das Kreuz, die Leertaste setzt einen Punkt der Linie, Eingabe teilt die Ebene, die Rücktaste nimmt den letzten Punkt zurück, Esc gibt auf.',
    paintKeys: {
      add: 'Pfeiltasten bewegen das Kreuz, die Leertaste nimmt das Stück darunter hinzu, Esc legt das Werkzeug weg.',
      away: 'Pfeiltasten bewegen das Kreuz, die Leertaste nimmt das Stück darunter weg, Esc legt das Werkzeug weg.',
    },
    keyList: {
      again: 'Umriss: der Reihe nach rücken, hinzunehmen, wegnehmen, teilen',
      straight: 'Umriss: gerade, nicht der Kante nach',
      space: 'Umriss: einen Punkt setzen oder das Stück unter dem Kreuz übermalen',
    },
    hand: 'Was die Hand tut',
    hands: { line: 'Linie rücken', add: 'Hinzunehmen', away: 'Wegnehmen', split: 'Teilen' },
    paintOver: 'Übermalen',
    addHow: (plane) =>
      `„${plane}“: Übermale, was dazugehört. Wenn du näher herangehst, sind die Stücke kleiner.`,
    awayHow: (plane) => `„${plane}“: Übermale, was nicht dazugehört. Jedes Stück geht an die Ebene daneben.`,
    splitHow: (plane) =>
      `„${plane}“: Klick eine Linie quer hindurch oder zieh sie in einem Zug. Was vor der Linie liegt, wird eine eigene Ebene.`,
    splitFinish: 'Hier teilen',
    partsNeedSetup:
      'Teilen und Verbinden ändert die Ebenen für alle. Das kann nur, wer die Tafel führt, auf ihr unterrichtet oder den Server betreibt.',
    partName: (plane, part) =>
      `${plane}, ${{ nearer: 'näherer', left: 'linker', right: 'rechter' }[part]} Teil`,
    splitDone: (plane, part) =>
      `„${plane}“ ist geteilt: „${part}“ ist jetzt eine eigene Ebene. Auf anderen Bildern braucht sie noch einen Umriss.`,
    notAcross: (plane) =>
      `Diese Linie teilt „${plane}“ nicht. Zieh sie von einer Seite der Ebene zur anderen.`,
    redraw: 'Neu zeichnen …',
    redrawHow: (plane) => `„${plane}“: Zeichne den Umriss neu oder entferne ihn.`,
    join: 'Verbinden …',
    joinWhich: (plane) => `Welche Nachbarebene wird Teil von „${plane}“?`,
    joinNot: 'Jetzt nicht',
    joined: (kept, gone, left) => {
      const done = `„${gone}“ ist jetzt Teil von „${kept}“.`;
      if (left === 0) return done;
      return left === 1
        ? `${done} Auf einem Gemälde, das nicht deines ist, bleibt der Umriss der Person überlassen, die es gemalt hat.`
        : `${done} Auf ${left} Gemälden, die nicht deine sind, bleibt der Umriss denen überlassen, die sie gemalt haben.`;
    },
    notTouching: (kept, gone, picture) =>
      `„${kept}“ und „${gone}“ berühren sich ${onPicture(picture)} nicht, darum kann kein Umriss beide fassen.`,
    sides: SIDES,
    painting: {
      nothing: (_, own) => `Das alles gehört schon zu „${own}“.`,
      apart: (_, own) => `Das berührt „${own}“ nicht. Beginne an der Kante und male nach außen.`,
      inside: (_, own, way) =>
        way === 'add'
          ? `Das liegt mitten in einer anderen Ebene. Beginne, wo „${own}“ endet, und male dorthin.`
          : `Das liegt mitten in „${own}“. Beginne an der Kante und male nach innen.`,
      cuts: (plane) =>
        `„${plane}“ würde in zwei Teile zerfallen. Nimm weniger davon oder teile die Ebene zuerst.`,
      swallows: (plane, own) =>
        plane === own
          ? `Von „${own}“ bliebe nichts übrig. Verbinde die Ebene lieber mit ihrer Nachbarin.`
          : `Von „${plane}“ bliebe nichts übrig. Verbinde die Ebene lieber mit „${own}“.`,
    },
    paintUnavailable: 'Das Bild ließ sich gerade nicht genau ansehen. Versuch es gleich noch einmal.',
    choose:
      'Wähle eine Ebene aus der Liste oder füg eine neue hinzu, dann zeichne, wo sie gegen das endet, was hinter ihr liegt.',
    onlyLook: 'Umrisse zeichnet hier, wer das Bild gemalt hat, hier unterrichtet oder den Server betreibt.',
    ridge: 'Nur den Kamm',
    round: 'Ringsherum',
    whole: 'Das ganze Bild',
    wholeWhy: 'Was hinter allem anderen liegt, darf das ganze Bild sein: Nähere Ebenen verdecken es.',
    how: 'Wie gezeichnet wird',
    drawRidge: (plane) =>
      `„${plane}“: Klick die obere Kante entlang, von einer Seite zur anderen, oder zieh sie in einem Zug. Unten schließt sich der Umriss von selbst.`,
    drawSky: (plane) =>
      `„${plane}“: Klick die untere Kante entlang, von einer Seite zur anderen, oder zieh sie in einem Zug. Oben schließt sich der Umriss von selbst.`,
    drawRound: (plane) => `„${plane}“: Klick ringsherum oder umfahre alles in einem Zug.`,
    soFar: (count) => plural(count, 'Punkt', 'Punkte'),
    follow: 'Der Kante nach',
    followWhy:
      'Zwischen zwei Klicks legt sich die Linie an die stärkste Kante. Halt beim Klicken Umschalt gedrückt, dann bleibt sie gerade.',
    finish: 'Abschließen',
    back: 'Punkt zurücknehmen',
    giveUp: 'Aufgeben',
    on: { reference: 'Auf der Vorlage:', painting: 'Auf dem Gemälde:' },
    again: 'Neu zeichnen',
    remove: 'Entfernen',
    nudge: (plane) =>
      `„${plane}“: Zieh an den Punkten, an der Zahl, um alles zu verschieben; ein Doppelklick auf die Linie setzt einen weiteren Punkt.`,
    point: (plane, at, of) =>
      `„${plane}“, Punkt ${at} von ${of}. Pfeiltasten rücken ihn, Komma und Punkt gehen die Linie entlang, I setzt einen Punkt dazu, Entf nimmt ihn weg.`,
    moveAll: (plane) => `„${plane}“, der ganze Umriss. Pfeiltasten verschieben ihn.`,
    heldBy: (person) => `${person} verschiebt diesen Umriss gerade. Warte, bis er wieder frei ist.`,
    movedBy: (person) => `wird gerade von ${person} verschoben`,
    short: 'Eine Linie braucht mindestens zwei Punkte. Klick die Kante entlang, dann schließ ab.',
  },
  planes: {
    title: 'Ebenen, von fern nach nah',
    add: 'Ebene hinzufügen',
    addNamed: (name) => `„${name}“ hinzufügen`,
    name: 'Name der Ebene',
    nameShort: 'Name',
    kind: 'Art',
    tilt: 'Lage zum Himmelslicht',
    kinds: {
      sky: 'Himmel',
      land: 'Land',
      wood: 'Wald',
      water: 'Wasser',
      snow: 'Schnee',
      built: 'Gebautes',
    },
    tilts: {
      flat: 'flach',
      slanted: 'schräg',
      upright: 'aufrecht',
    },
    noTilt: 'nicht angegeben',
    farther: (name) => `„${name}“ ferner rücken`,
    nearer: (name) => `„${name}“ näher rücken`,
    fartherShort: 'Ferner',
    nearerShort: 'Näher',
    remove: (name) => `„${name}“ löschen`,
    removeShort: 'Ebene löschen',
    removed: (name) => `„${name}“ ist gelöscht.`,
    undo: 'Rückgängig',
    drag: (name) => `„${name}“ an den richtigen Platz von fern nach nah ziehen`,
    change: (name) => `„${name}“ ändern`,
    choose: (number, name, where) => `Ebene ${number}, „${name}“. ${where}`,
    onBoth: 'auf beiden umrissen',
    onReference: 'nur auf der Vorlage',
    onPainting: 'nur auf dem Gemälde',
    outlined: 'umrissen',
    nowhere: 'noch nicht umrissen',
    unreliable: 'hier nicht verlässlich',
    suggestions: [
      { name: 'Himmel', kind: 'sky' },
      { name: 'Ferne Hügel', kind: 'land' },
      { name: 'Mittelgrund', kind: 'wood' },
      { name: 'Vordergrund', kind: 'land' },
    ],
    startHint: 'Übliche Anfänge:',
  },
  talk: {
    title: 'Gespräch',
    about: 'Worum es geht',
    aboutHint: 'Was wolltest du mit diesem Gemälde? Was hast du mit Absicht weggelassen oder geändert?',
    aboutNothing: 'Wer es gemalt hat, hat noch nichts dazu gesagt.',
    aboutWhose: (name) => `In den Worten von ${name}`,
    remarks: 'Bemerkungen',
    none: 'Noch keine Bemerkungen.',
    noneHow:
      'Nimm „Anmerken“ und klick auf einem Bild dorthin, wo dir etwas auffällt, zeig es mit einer Linie oder einem Pfeil oder kreise es ein.',
    here: 'Wer hier ist',
    you: 'du',
    reply: 'Antworten',
    replyTo: (name) => `Antwort an ${name}`,
    send: 'Senden',
    replies: (count) => plural(count, 'Antwort', 'Antworten'),
    change: 'Worte ändern',
    addWords: 'Worte hinzufügen',
    keep: 'Festhalten',
    cancel: 'Abbrechen',
    remove: 'Löschen',
    show: (number) => `Bemerkung ${number} auf dem Bild zeigen`,
    heard: (name, where, text) => `${name}, ${where}: ${text}`,
    shownPictures: 'Diese Bilder',
    allPictures: 'Alle Bilder',
    refusedTitle: 'Das wurde nicht angenommen.',
    draftKept: 'Was du geschrieben hattest:',
    copy: 'Worte kopieren',
    dismiss: 'Schließen',
  },
  line: {
    connecting: 'Verbindung zur Tafel wird hergestellt …',
    connected: 'Verbunden',
    'catching-up': 'Was die anderen getan haben, wird nachgeholt …',
    offline:
      'Die Verbindung ist unterbrochen. Was du tust, bleibt hier erhalten und wird gesendet, sobald sie wieder steht.',
    closed: 'Die Tafel hat ihre Verbindung zu dir geschlossen. Lade die Seite neu.',
  },
};
