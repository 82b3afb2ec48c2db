import type {
  FactWords,
  ListWords,
  StripeStretch,
  WorkWords,
  WrittenWords,
} from '../../../knit/written/written-words.ts';
import { nameIn } from '../../name-in.ts';
import { notOurs } from '../../not-ours.ts';
import { words as draft } from '../draft.ts';
import { rowWords } from '../row.ts';
import { abbreviations } from './abbreviations.ts';
import { joining } from './joining.ts';

const named = nameIn(draft);

const list: ListWords = {
  // '8.' of 'in jeder 8. Reihe', but not the 2 of '2 M re zusstr'
  figure: /\d+(?:,\d+)?(?:\.(?= folgenden))?(?![\da-z]| M (?:(?:re|li|verschr|abgeh|überz|mittig) )+zusstr)/g,
  between: '; ',
  to: ' bis ',
  many: (line) =>
    line.replace(/(?<![\d,])1 (Masche|Reihe)(?!n)/g, '1 $1n').replace(/(?<![\d,])1 Knopf(?!l)/g, '1 Knöpfe'),
  one: (line) =>
    line.replace(/(?<![\d,])1 (Masche|Reihe)n/g, '1 $1').replace(/(?<![\d,])1 Knöpfe/g, '1 Knopf'),
  sizes: (count, all) => `Größe${count > 1 ? 'n' : ''}: ${all}`,
  only: (names) =>
    names.length === 1
      ? `Nur Größe ${names[0]}: `
      : `Nur Größen ${names.slice(0, -1).join(', ')} und ${names.at(-1)}: `,
  isRows: /^(?:Nur Größen? [^:]+: )?Reihen? \d/,
};

const weightNames = [
  'Spitzengarn',
  'sehr fein',
  'fein',
  'leicht',
  'mittel',
  'dick',
  'sehr dick',
  'extra dick',
];

const facts: FactWords = {
  design: (by) => `Entwurf: ${by}`,
  licence: (licence) => `Lizenz: ${licence}`,
  pieces: 'In Teilen hin und her gestrickt und zusammengenäht.',
  kinds: { pullover: 'Pullover', cardigan: 'Jacke', vest: 'Pullunder', 'buttoned vest': 'Weste' },
  armholes: {
    drop: 'überschnittenen Schultern',
    indented: 'eingerückten Armlöchern',
    'set-in': 'ausgeformten Armlöchern',
    raglan: 'Raglan-Armlöchern',
  },
  necks: {
    V: 'V-Ausschnitt',
    round: 'rundem Ausschnitt',
    square: 'eckigem Ausschnitt',
    boat: 'U-Boot-Ausschnitt',
  },
  whatItIs: (kind, armhole, neck) =>
    `${kind} mit ${armhole} und ${neck}, in Teilen hin und her gestrickt und zusammengenäht.`,
  body: (length) => `Körper, Brustumfang: ${length}`,
  ease: (length, isWider) => `Zugabe: an der Brust ${length} ${isWider ? 'weiter' : 'enger'} als der Körper`,
  measures: {
    chest: 'Brustumfang',
    length: 'Länge',
    napeToCuff: 'Nacken bis Ärmelsaum',
    upperArm: 'Oberarm',
    wrist: 'Handgelenk',
    neck: 'Halsausschnitt, Umfang',
  },
  measure: (name, length) => `${name}: ${length}`,
  yarn: (what) => `Garn: ${what}`,
  anyYarn: 'passend zur Maschenprobe',
  weight: (weights) =>
    `Garnstärke ${weights.map(({ weight }) => `${weight} (${weightNames[weight]})`).join(' oder ')}`,
  strands: (count) => `Zusammen verstrickt: ${count} Fäden`,
  amount: (amounts) => `Menge, Reserve eingerechnet: ${amounts.join('; ')}`,
  yards: 'Yards',
  balls: (count) => `${count} Knäuel`,
  needles: (sizes) => `Nadeln: ${sizes.join(' und ')}`,
  longNeedle: (bands, needle, cm) => `Rundstricknadel (${bands.join(', ')}): ${needle}, ${cm} cm lang`,
  notions: (things) => `Zubehör: ${things.join(', ')}`,
  holders: 'Maschenraffer',
  rests: /stilllegen|stillgelegte/,
  markers: 'Markierer',
  tapestryNeedle: 'Wollnadel',
  buttons: (count, acrossMm) => `Knöpfe: ${count}${acrossMm ? `, ${acrossMm} mm Durchmesser` : ''}`,
  fabrics: {
    garter: 'kraus rechts',
    stocking: 'glatt rechts',
    'reverse stocking': 'glatt links',
    'rib 1x1': 'im Rippenmuster 1 re, 1 li',
    'rib 1x1 matched': 'im Rippenmuster 1 re, 1 li',
    'rib 2x2': 'im Rippenmuster 2 re, 2 li',
    moss: 'im Perlmuster',
  },
  gauge: (stitches, rows, over, fabric, needle) =>
    `Maschenprobe: ${stitches} M und ${rows} R = ${over}${fabric ? ` ${fabric}` : ''}${needle ? ` mit Nadeln ${needle} mm` : ''}.`,
  washed: 'Gewaschen und trocken gemessen.',
  striped: (of, stretches, boundOffIn) =>
    `Streifen, ${of}: ${[...stretches.map(striped), ...(boundOffIn ? [`abketten in ${boundOffIn}`] : [])].join('; ')}.`,
  care: [
    'Waschen und trocknen, wie es auf der Banderole des Garns steht und wie die Maschenprobe gewaschen wurde.',
    'Die Hände ausruhen, wenn sie müde werden; bei Schmerzen ärztlichen Rat holen.',
  ],
  forChild: (cautions) => `Für ein Kind: ${cautions.join('; ')}. Es gelten die Vorschriften vor Ort.`,
  noCords: 'keine Kordeln oder Bänder am Hals',
  buttonsHold: 'Knöpfe so annähen, dass sie halten',
  overHead: 'der Halsausschnitt muss bequem über den Kopf gehen',
};

const sides = { RS: 'Hin-R', WS: 'Rück-R' } as const;
const faces = { RS: 'rechte', WS: 'linke' } as const;

const withNeedles = (needle: string | undefined): string =>
  needle === undefined ? '' : `Mit Nadeln ${needle} mm: `;

const work: WorkWords = {
  makes: (count, { mirrored, asWorn, isTopDown }) =>
    ` (${count}-mal stricken${mirrored ? `, das zweite gegengleich${asWorn ? ': zuerst das linke Vorderteil, wie man es trägt, dann das rechte' : ''}` : ''}${isTopDown ? ', von oben nach unten' : ''})`,
  count: (stitches) => `${stitches} M`,
  section: (name, fabric, rows) =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)}, ${fabric}, ${rows} ${rows === 1 ? 'Reihe' : 'Reihen'}:`,
  castOn: (stitches, needle) => `${withNeedles(needle)}${stitches} M anschlagen.`,
  pickUp: (edges, total, needle) => {
    const said = edges.map(
      ({ along, stitches, held }) => `${stitches} ${held ? 'stillgelegte ' : ''}M (${along})`,
    );
    const begun = needle === undefined ? 'Rechte' : `Mit Nadeln ${needle} mm, rechte`;
    return `${begun} Seite vorn, auffassen und re stricken: ${said.join(', ')}. (${total} M)`;
  },
  hold: (stitches, rest) => `${rest ? 'Restliche' : 'Nächste'} ${stitches} M stilllegen.`,
  divide: (side, stitches, rest) =>
    `Teilen: nur über die ${side === 'first' ? 'ersten' : 'letzten'} ${stitches} M weiterstricken; restliche ${rest} M stilllegen.`,
  rejoin: (side, stitches) =>
    `Die ${faces[side]} Seite liegt vorn; den Faden an den nächsten ${stitches} M neu ansetzen.`,
  change: (needle) => `Zu Nadeln ${needle} mm wechseln.`,
  row: (n, side, said) => `Reihe ${n} (${sides[side]}): ${said}.`,
  bindOffAll: (isLoose, how) =>
    `alle M${isLoose ? ' locker' : ''}${how === '' ? '' : how === ' in rib' ? ' im Rippenmuster' : ' im Muster'} abketten`,
  rib: (stitches) => `${stitches} M im Rippenmuster`,
  ribAfterGap: (stitches) => `im Rippenmuster, bis nach der Lücke ${stitches} M auf der Nadel sind`,
  ribToEnd: 'im Rippenmuster bis zum Ende',
  repeat: (first, last, more) =>
    `${first === last ? `Reihe ${first}` : `Reihen ${first}${last === first + 1 ? ' und ' : '–'}${last}`} noch ${more}-mal wiederholen.`,
  rhythm: (row, beats) => {
    const said = beats.map(
      ({ every, to }, i) =>
        `in jeder ${every}. folgenden Reihe${i === 0 ? ' wiederholen' : ''}, bis es ${to} M sind`,
    );
    return `Reihe ${row} ${said.join(', dann ')}.`;
  },
};

/** How German leaflets have it; what is no abbreviation is common practice, no published source. */
export const writtenWords: WrittenWords = {
  tag: 'de',
  point: ',',
  inch: 'Zoll',
  rows: rowWords({ rows: 'abbreviated' }),
  name: named,
  size: (name) => name.replace(/ months$/, ' Monate'),
  headings: {
    fit: 'GRÖSSE UND PASSFORM',
    finished: 'FERTIGE MASSE',
    materials: 'MATERIAL',
    gauge: 'MASCHENPROBE',
    abbreviations: 'ABKÜRZUNGEN',
    makingUp: 'FERTIGSTELLUNG',
    care: 'PFLEGE UND VORSICHT',
    licence: 'LIZENZ',
  },
  abbreviations,
  looksShort:
    /[23] M (?:abgeh|überz|mittig)(?: re| li)? zusstr|1 M (?:(?:re |li )?gen |li )?zun(?!\p{L})|1 M re verdopp|Doppelmasche|(?:Hin|Rück)-R(?!\p{L})|(?<![\p{L}\d-])(?:R|M|re|li|verschr|zusstr|abh|U|mm)(?![\p{L}\d-])/gu,
  foreign: notOurs,
  pictures: {
    schematics: 'SCHNITTZEICHNUNGEN',
    asKnitted: 'Maße wie gestrickt: Eine Naht nimmt an jeder Kante eine Masche.',
    assembly: 'ZUSAMMENNÄHEN',
    measures: {
      'at its beginning': 'Breite am Anfang',
      'at its widest': 'Breite an der weitesten Stelle',
      'in all': 'Höhe insgesamt',
      neck: 'Breite des Halsausschnitts',
      shoulder: 'Schulterbreite',
      'neck depth': 'Tiefe des Halsausschnitts',
      top: 'Breite oben',
    },
    section: (name, toTop) => `Höhe: ${named(name)}${toTop ? ', bis oben' : ''}`,
    seams: {
      shoulders: 'Schulternähte',
      'pick up': 'Für eine Blende aufgefasst',
      close: 'An der Blende geschlossen',
      raglan: 'Raglannähte',
      'set in sleeves': 'Ärmel eingesetzt',
      'side seams': 'Seitennähte',
      'sleeve seams': 'Ärmelnähte',
      opening: 'Öffnung',
      lap: 'Übereinandergelegt',
      join: 'Verbunden',
    },
  },
  list,
  facts,
  work,
  joining,
};

/** 'Reihen 5 bis 12: 2 Reihen in Sand, 2 Reihen in Blau, im Wechsel' */
function striped({ first, last, turn }: StripeStretch): string {
  const rows = first === last ? `Reihe ${first}` : `Reihen ${first} bis ${last}`;
  const [one] = turn;
  if (turn.length === 1 && one) return `${rows} in ${one.colour}`;
  const stripes = turn.map((s) => `${s.rows} ${s.rows === 1 ? 'Reihe' : 'Reihen'} in ${s.colour}`);
  return `${rows}: ${stripes.join(', ')}, im Wechsel`;
}
