/** Made-up names of a colour or time of day and a bird, in the language of the house. In the flow: [made-up-names] -> school. */
import { LANGUAGE, type Language } from '../core/say/language.ts';

interface Words {
  first: readonly string[];
  second: readonly string[];
  /** German joins the two into one word, which spares it the agreement of an adjective. */
  between: string;
}

const WORDS: Readonly<Record<Language, Words>> = {
  en: {
    first: (
      'Amber Ashen Autumn Birch Blue Briar Calm Clay Cloud Copper Dawn Dusk Early Evening Fern Frost ' +
      'Golden Green Grey Harbour Hazel Heath Hill Ivory Late Lichen Marsh Meadow Mist Moss North Ochre ' +
      'Pale Quiet Rain Reed River Russet Sand Silver Slate Snow South Stone Straw Summer Umber Willow ' +
      'Winter Wood'
    ).split(' '),
    second: (
      'Avocet Bittern Bunting Coot Crane Curlew Dipper Dove Dunlin Eider Finch Gannet Godwit Grebe ' +
      'Grouse Gull Heron Hobby Jackdaw Jay Kestrel Kite Knot Lapwing Lark Linnet Magpie Martin Merlin ' +
      'Osprey Owl Petrel Pipit Plover Puffin Rail Raven Redstart Robin Rook Ruff Siskin Snipe Starling ' +
      'Stork Swallow Swift Teal Tern Wren'
    ).split(' '),
    between: ' ',
  },
  de: {
    first: (
      'Abend Ahorn Bach Bernstein Birken Blau Blüten Buchen Dämmer Efeu Elfenbein Erlen Farn Feld ' +
      'Flechten Fluss Frost Früh Gold Grün Hafen Hasel Heide Herbst Honig Hügel Kalk Kiesel Kupfer Lehm ' +
      'Licht Moor Moos Morgen Nebel Nord Ocker Regen Rost Sand Schiefer Schilf Schnee Silber Sommer ' +
      'Stroh Süd Tau Ufer Wolken'
    ).split(' '),
    second: (
      'Amsel Ammer Bachstelze Bekassine Brachvogel Buchfink Bussard Distelfink Dohle Drossel Eiderente ' +
      'Eisvogel Falke Fink Gimpel Girlitz Goldammer Grünfink Habicht Häher Hänfling Heckenbraunelle ' +
      'Kauz Kernbeißer Kiebitz Kleiber Kranich Kuckuck Lerche Meise Milan Möwe Nachtigall Pieper Pirol ' +
      'Rabe Regenpfeifer Reiher Rotkehlchen Schnäpper Schwalbe Schwan Segler Specht Sperling Stieglitz ' +
      'Storch Wachtel Zaunkönig Zeisig'
    ).split(' '),
    between: '-',
  },
};

const pick = (list: readonly string[]) => list[Math.floor(Math.random() * list.length)];

/** One of 2500, at random. */
export function madeUpName(): string {
  const { first, second, between } = WORDS[LANGUAGE];
  return `${pick(first)}${between}${pick(second)}`;
}
