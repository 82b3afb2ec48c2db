import { englishRowWords, type Terms } from '../row/row-words.ts';
import { englishAbbreviations } from './english-abbreviations.ts';
import { englishJoining } from './english-joining.ts';
import { LEFT_FIRST, TOP_DOWN } from './making-up-table.ts';
import { englishPictures } from './picture-words.ts';
import type { FactWords, ListWords, StripeStretch, WorkWords, WrittenWords } from './written-words.ts';

/** What `readPattern` reads back. US and UK words as leaflets of either side have them (American Thread; Patons & Baldwins). */
export const englishWritten = (terms: Terms): WrittenWords => ({
  tag: 'en',
  point: '.',
  inch: 'in',
  rows: englishRowWords(terms),
  name: (name) => name,
  size: (name) => name,
  headings: {
    fit: 'SIZE AND FIT',
    finished: 'FINISHED MEASUREMENTS',
    materials: 'MATERIALS',
    gauge: terms === 'US' ? 'GAUGE' : 'TENSION',
    abbreviations: 'ABBREVIATIONS',
    makingUp: 'MAKING UP',
    care: 'CARE AND CAUTIONS',
    licence: 'LICENCE',
  },
  abbreviations: englishAbbreviations,
  looksShort: /\b(?:[kp](?=\d*\b)|[kpsm]\w*\d\w*|ss[kp]|sssp|kfb|ds|foll|mm|rem|Rep|RS|WS|sl|sts?|tbl|yo)\b/g,
  foreign:
    terms === 'US'
      ? /\bcast off\b|\btension\b|stocking stitch/i
      : /\bbind off\b|\bbound off\b|\bgauge\b|stockinette/i,
  pictures: englishPictures,
  list,
  facts: facts(terms),
  work: work(terms),
  joining: englishJoining(terms),
});

const list: ListWords = {
  figure: /\d+(?:\.\d+)?(?:st|nd|rd|th)?(?![a-z\d])/g,
  between: ', ',
  to: ' to ',
  many: (line) =>
    line
      .replace(/\b1 st\b/g, '1 sts')
      .replace(/\b1 row:/g, '1 rows:')
      .replace(/\bto last st\b/g, 'to last 1 sts')
      .replace(/ once more\b/g, ', 1 times more'),
  one: (line) =>
    line
      .replace(/, 1 times more/g, ' once more')
      .replace(/to last 1 sts\b/g, 'to last st')
      .replace(/(^|[^\d.])1 rows:/g, (_, before: string) => `${before}1 row:`)
      .replace(/(^|[^\d.])1 sts\b/g, (_, before: string) => `${before}1 st`),
  sizes: (count, all) => `Size${count > 1 ? 's' : ''}: ${all}`,
  only: (names) => {
    const last = names.at(-1);
    return names.length === 1
      ? `Size ${last} only: `
      : `Sizes ${names.slice(0, -1).join(', ')} and ${last} only: `;
  },
  isRows: /^(?:Sizes? [^:]+ only: )?(?:Row |Rep )/,
};

const facts = (terms: Terms): FactWords => ({
  design: (by) => `Design: ${by}`,
  licence: (licence) => `Licence: ${licence}`,
  pieces: 'It is knitted flat in pieces and sewn together.',
  kinds: { pullover: 'Pullover', cardigan: 'Cardigan', vest: 'Vest', 'buttoned vest': 'Buttoned vest' },
  armholes: {
    drop: 'drop shoulders',
    indented: 'indented armholes',
    'set-in': 'set-in armholes',
    raglan: 'raglan armholes',
  },
  necks: { V: 'V', round: 'round', square: 'square', boat: 'boat' },
  whatItIs: (kind, armhole, neck) =>
    `${kind} with ${armhole} and a ${neck} neck, knitted flat in pieces and sewn together.`,
  body: (length) => `Body, round the chest: ${length}`,
  ease: (length, isWider) => `Ease: ${length} ${isWider ? 'wider' : 'narrower'} than the body at the chest`,
  measures: {
    chest: 'Chest',
    length: 'Length',
    napeToCuff: 'Nape to cuff',
    upperArm: 'Upper arm',
    wrist: 'Wrist',
    neck: 'Neck, round its edge',
  },
  measure: (name, length) => `${name}: ${length}`,
  yarn: (words) => `Yarn: ${words}`,
  anyYarn: `to suit the ${terms === 'US' ? 'gauge' : 'tension'}`,
  weight: (weights) => `weight ${weights.map(({ weight, name }) => `${weight} ${name}`).join(' or ')}`,
  strands: (count) => `Held together: ${count} strands`,
  amount: (amounts) => `Amount, reserve included: ${amounts.join('; ')}`,
  yards: 'yd',
  balls: (count) => `${count} balls`,
  needles: (sizes) => `Needles: ${sizes.join(' and ')}`,
  longNeedle: (bands, needle, cm) =>
    `Circular needle for ${bands.map((band) => `the ${band.toLowerCase()}`).join(' and ')}: ${needle}, ${cm} cm long`,
  notions: (things) => `Notions: ${things.join(', ')}`,
  holders: 'stitch holders',
  rests: /holder/,
  markers: 'markers',
  tapestryNeedle: 'tapestry needle',
  buttons: (count, acrossMm) => `Buttons: ${count}${acrossMm ? `, ${acrossMm} mm across` : ''}`,
  fabrics: {
    garter: 'garter stitch',
    stocking: terms === 'US' ? 'stockinette stitch' : 'stocking stitch',
    'reverse stocking': `reverse ${terms === 'US' ? 'stockinette' : 'stocking'} stitch`,
    'rib 1x1': 'k1, p1 rib',
    'rib 1x1 matched': 'k1, p1 rib',
    'rib 2x2': 'k2, p2 rib',
    moss: terms === 'US' ? 'seed stitch' : 'moss stitch',
  },
  gauge: (stitches, rows, over, fabric, needle) =>
    `${terms === 'US' ? 'Gauge' : 'Tension'}: ${stitches} sts and ${rows} rows = ${over}${fabric ? ` in ${fabric}` : ''}${needle ? ` on ${needle} mm needles` : ''}.`,
  washed: 'Measured washed and dry.',
  striped: (of, stretches, boundOffIn) =>
    `Stripes, ${of}: ${[...stretches.map(striped), ...(boundOffIn ? [`${terms === 'US' ? 'bind' : 'cast'} off in ${boundOffIn}`] : [])].join('; ')}.`,
  care: [
    'Wash and dry it as the label of its yarn says, and as the swatch was washed.',
    'Rest your hands when they tire; ask a doctor where they hurt.',
  ],
  forChild: (cautions) => `For a child: ${cautions.join('; ')}. Follow your local rules.`,
  noCords: 'no cords or ribbons at the neck',
  buttonsHold: 'buttons sewn so that they hold',
  overHead: 'a neck that goes over the head with ease',
});

const count = (stitches: number): string => `${stitches} ${stitches === 1 ? 'st' : 'sts'}`;

/** 'With 4 mm needles, cast on 92 sts.' */
const withNeedles = (needle: string | undefined, said: string): string =>
  needle === undefined ? said.charAt(0).toUpperCase() + said.slice(1) : `With ${needle} mm needles, ${said}`;

const work = (terms: Terms): WorkWords => ({
  makes: (times, { mirrored, asWorn, isTopDown }) =>
    ` (make ${times}${mirrored ? `, the second as a mirror image${asWorn ? `: ${LEFT_FIRST}` : ''}` : ''}${isTopDown ? `, ${TOP_DOWN}` : ''})`,
  count,
  section: (name, fabric, rows) =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)}, in ${fabric}, ${rows} ${rows === 1 ? 'row' : 'rows'}:`,
  castOn: (stitches, needle) => withNeedles(needle, `cast on ${stitches} sts.`),
  pickUp: (edges, total, needle) => {
    const said = edges.map(
      ({ along, stitches, held }) =>
        `${held ? 'knit' : 'pick up and knit'} ${count(stitches)}${held ? ' from holder' : ''} along ${along}`,
    );
    return withNeedles(needle, `with RS facing, ${said.join(', ')}. (${count(total)})`);
  },
  hold: (stitches, rest) => `Place ${rest ? `rem ${stitches} sts` : `next ${count(stitches)}`} on a holder.`,
  divide: (side, stitches, rest) =>
    `Divide: work on ${side} ${count(stitches)} only; place rem ${count(rest)} on a holder.`,
  rejoin: (side, stitches) => `With ${side} facing, rejoin yarn to next ${count(stitches)}.`,
  change: (needle) => `Change to ${needle} mm needles.`,
  row: (n, side, said) => `Row ${n} (${side}): ${said}.`,
  bindOffAll: (isLoose, how) =>
    `${terms === 'US' ? 'Bind' : 'Cast'} off all sts${isLoose ? ' loosely' : ''}${how}`,
  rib: (stitches) => `rib ${stitches}`,
  ribAfterGap: (stitches) => `rib until ${count(stitches)} on needle after gap`,
  ribToEnd: 'rib to end',
  repeat: (first, last, more) => {
    const which =
      first === last ? `row ${first}` : `rows ${first}${last === first + 1 ? ' and ' : '–'}${last}`;
    // 'rows 1 and 2 7 times' would be read as twenty-seven
    return `Rep ${which}${more === 1 ? ' once' : `, ${more} times`} more.`;
  },
  rhythm: (row, beats) => {
    const said = beats.map(
      ({ every, to }) =>
        `on every foll ${every}${every % 10 === 2 && every % 100 !== 12 ? 'nd' : 'th'} row to ${count(to)}`,
    );
    return `Rep row ${row} ${said.join(', then ')}.`;
  },
});

/** 'rows 5 to 12: 2 rows in sand, 2 rows in woad, in turn' */
function striped({ first, last, turn }: StripeStretch): string {
  const rows = first === last ? `row ${first}` : `rows ${first} to ${last}`;
  const [one] = turn;
  if (turn.length === 1 && one) return `${rows} in ${one.colour}`;
  const stripes = turn.map((s) => `${s.rows} ${s.rows === 1 ? 'row' : 'rows'} in ${s.colour}`);
  return `${rows}: ${stripes.join(', ')}, in turn`;
}
