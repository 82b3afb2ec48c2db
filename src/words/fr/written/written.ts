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
  // but not the 2 of '2 m ens end'
  figure: /\d+(?:,\d+)?(?![\da-z]| m (?:ens|gliss))/g,
  between: '\u00a0; ',
  to: ' à ',
  many: (line) => line.replace(/(?<![\d,])1 (pelote|rang|maille|bouton)(?!s)/g, '1 $1s'),
  one: (line) => line.replace(/(?<![\d,])1 (pelote|rang|maille|bouton)s/g, '1 $1'),
  sizes: (count, all) => `Taille${count > 1 ? 's' : ''}\u00a0: ${all}`,
  only: (names) =>
    names.length === 1
      ? `Taille ${names[0]} seulement\u00a0: `
      : `Tailles ${names.slice(0, -1).join(', ')} et ${names.at(-1)} seulement\u00a0: `,
  isRows: /^(?:Tailles? [^:]+ seulement\u00a0: )?(?:Rang |Répéter )/,
};

const weightNames = ['dentelle', 'très fin', 'fin', 'léger', 'moyen', 'épais', 'très épais', 'extra épais'];

const facts: FactWords = {
  design: (by) => `Création\u00a0: ${by}`,
  licence: (licence) => `Licence\u00a0: ${licence}`,
  pieces: 'Se tricote à plat, en pièces cousues ensemble.',
  kinds: { pullover: 'Pull', cardigan: 'Gilet', vest: 'Débardeur', 'buttoned vest': 'Gilet sans manches' },
  armholes: {
    drop: 'à épaules tombantes',
    indented: 'à emmanchures en retrait',
    'set-in': 'à emmanchures arrondies',
    raglan: 'à emmanchures raglan',
  },
  necks: { V: 'en V', round: 'ronde', square: 'carrée', boat: 'bateau' },
  whatItIs: (kind, armhole, neck) =>
    `${kind} ${armhole} et encolure ${neck}, tricoté à plat en pièces cousues ensemble.`,
  body: (length) => `Corps, tour de poitrine\u00a0: ${length}`,
  ease: (length, isWider) =>
    `Aisance à la poitrine\u00a0: ${length} de ${isWider ? 'plus' : 'moins'} que le corps`,
  measures: {
    chest: 'Tour de poitrine',
    length: 'Longueur',
    napeToCuff: 'De la nuque au bas de la manche',
    upperArm: 'Haut du bras',
    wrist: 'Poignet',
    neck: 'Encolure, tout autour',
  },
  measure: (name, length) => `${name}\u00a0: ${length}`,
  yarn: (what) => `Fil\u00a0: ${what}`,
  anyYarn: 'adapté à l’échantillon',
  weight: (weights) =>
    `grosseur ${weights.map(({ weight }) => `${weight} (${weightNames[weight]})`).join(' ou ')}`,
  strands: (count) => `Tricotés ensemble\u00a0: ${count} fils`,
  amount: (amounts) => `Quantité, réserve comprise\u00a0: ${amounts.join('\u00a0; ')}`,
  yards: 'yd',
  balls: (count) => `${count} pelote${count < 2 ? '' : 's'}`,
  needles: (sizes) => `Aiguilles\u00a0: ${sizes.join(' et ')}`,
  longNeedle: (bands, needle, cm) =>
    `Aiguille circulaire (${bands.join(' et ')})\u00a0: ${needle}, ${cm} cm de long`,
  notions: (things) => `Accessoires\u00a0: ${things.join(', ')}`,
  holders: 'arrêts de mailles',
  rests: /en attente/,
  markers: 'marqueurs',
  tapestryNeedle: 'aiguille à laine',
  buttons: (count, acrossMm) => `Boutons\u00a0: ${count}${acrossMm ? `, ${acrossMm} mm de diamètre` : ''}`,
  fabrics: {
    garter: 'au point mousse',
    stocking: 'en jersey endroit',
    'reverse stocking': 'en jersey envers',
    'rib 1x1': 'en côtes 1 m end, 1 m env',
    'rib 1x1 matched': 'en côtes 1 m end, 1 m env',
    'rib 2x2': 'en côtes 2 m end, 2 m env',
    moss: 'au point de riz',
  },
  gauge: (stitches, rows, over, fabric, needle) =>
    `Échantillon\u00a0: ${stitches} m et ${rows} rg = ${over}${fabric ? ` ${fabric}` : ''}${needle ? ` avec les aiguilles ${needle} mm` : ''}.`,
  washed: 'Mesuré lavé et sec.',
  striped: (of, stretches, boundOffIn) =>
    `Rayures, ${of}\u00a0: ${[...stretches.map(striped), ...(boundOffIn ? [`rabattre en ${boundOffIn}`] : [])].join('\u00a0; ')}.`,
  care: [
    'Laver et sécher comme le dit l’étiquette du fil, et comme l’échantillon a été lavé.',
    'Reposer les mains quand elles fatiguent\u00a0; consulter un médecin si elles font mal.',
  ],
  forChild: (cautions) =>
    `Pour un enfant\u00a0: ${cautions.join('\u00a0; ')}. Suivre les règles en vigueur sur place.`,
  noCords: 'ni cordons ni rubans à l’encolure',
  buttonsHold: 'des boutons cousus pour tenir',
  overHead: 'une encolure qui passe facilement par-dessus la tête',
};

const faces = { RS: 'endroit', WS: 'envers' } as const;

const withNeedles = (needle: string | undefined, said: string): string =>
  needle === undefined
    ? said.charAt(0).toUpperCase() + said.slice(1)
    : `Avec les aiguilles ${needle} mm, ${said}`;

const work: WorkWords = {
  makes: (count, { mirrored, asWorn, isTopDown }) =>
    ` (à tricoter ${count} fois${mirrored ? `, la seconde en vis-à-vis${asWorn ? '\u00a0: d’abord le devant gauche une fois porté, puis le droit' : ''}` : ''}${isTopDown ? ', de haut en bas' : ''})`,
  count: (stitches) => `${stitches} m`,
  section: (name, fabric, rows) =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)}, ${fabric}, ${rows} ${rows === 1 ? 'rang' : 'rangs'}\u00a0:`,
  castOn: (stitches, needle) => withNeedles(needle, `monter ${stitches} m.`),
  pickUp: (edges, total, needle) => {
    const said = edges.map(
      ({ along, stitches, held }) => `${stitches} m${held ? ' en attente' : ''} (${along})`,
    );
    return withNeedles(
      needle,
      `endroit face à soi, relever et tricoter à l’endroit\u00a0: ${said.join(', ')}. (${total} m)`,
    );
  },
  hold: (stitches, rest) =>
    rest
      ? `Mettre en attente les m restantes\u00a0: ${stitches} m.`
      : `Mettre en attente les m suivantes\u00a0: ${stitches} m.`,
  divide: (side, stitches, rest) =>
    `Partager\u00a0: ne continuer que sur les ${side === 'first' ? 'premières' : 'dernières'} ${stitches} m\u00a0; mettre en attente les m restantes, ${rest} m.`,
  rejoin: (side, stitches) => `Sur l’${faces[side]}, rattacher le fil aux ${stitches} m suivantes.`,
  change: (needle) => `Prendre les aiguilles ${needle} mm.`,
  row: (n, side, said) => `Rang ${n} (${faces[side]})\u00a0: ${said}.`,
  bindOffAll: (isLoose, how) =>
    `rab toutes les m${isLoose ? ' souplement' : ''}${how === '' ? '' : how === ' in rib' ? ' en côtes' : ' dans le motif'}`,
  rib: (stitches) => `${stitches} m en côtes`,
  ribAfterGap: (stitches) => `continuer en côtes jusqu’à avoir ${stitches} m sur l’aiguille après le trou`,
  ribToEnd: 'en côtes jusqu’à la fin',
  repeat: (first, last, more) => {
    const which =
      first === last ? `le rang ${first}` : `les rangs ${first}${last === first + 1 ? ' et ' : '–'}${last}`;
    return `Répéter ${which} encore ${more} fois.`;
  },
  rhythm: (row, beats) => {
    const said = beats.map(({ every, to }) => `tous les ${every} rangs jusqu’à ${to} m`);
    return `Répéter le rang ${row} ${said.join(', puis ')}.`;
  },
};

/** How French leaflets have it; what is no abbreviation is common practice, no published source. */
export const writtenWords: WrittenWords = {
  tag: 'fr',
  point: ',',
  inch: 'po',
  rows: rowWords({ rows: 'abbreviated' }),
  name: named,
  size: (name) => name.replace(/ months$/, ' mois'),
  headings: {
    fit: 'TAILLE ET AISANCE',
    finished: 'MESURES FINIES',
    materials: 'FOURNITURES',
    gauge: 'ÉCHANTILLON',
    abbreviations: 'ABRÉVIATIONS',
    makingUp: 'ASSEMBLAGE',
    care: 'ENTRETIEN ET PRÉCAUTIONS',
    licence: 'LICENCE',
  },
  abbreviations,
  looksShort:
    /[23] m gliss ens (?:end|env)|1 surj double(?: centré)?(?: env)?|1 aug (?:interc(?: (?:G|D|env)(?!\p{L}))?|barrée)|m double|(?<![\p{L}\d])(?:m|rg|end|env|ens|rab|gliss|att|dern|torse|mm|jeté)(?![\p{L}\d])/gu,
  foreign: notOurs,
  pictures: {
    schematics: 'SCHÉMAS',
    asKnitted: 'Mesuré tel que tricoté\u00a0: une couture prend une maille à chaque bord.',
    assembly: 'ASSEMBLAGE DES PIÈCES',
    measures: {
      'at its beginning': 'Largeur au début',
      'at its widest': 'Largeur au plus large',
      'in all': 'Hauteur totale',
      neck: 'Largeur de l’encolure',
      shoulder: 'Largeur d’une épaule',
      'neck depth': 'Profondeur de l’encolure',
      top: 'Largeur en haut',
    },
    section: (name, toTop) => `Hauteur\u00a0: ${named(name)}${toTop ? ', jusqu’en haut' : ''}`,
    seams: {
      shoulders: 'Épaules',
      'pick up': 'Relevé pour une bordure',
      close: 'Fermé à la bordure',
      raglan: 'Coutures de raglan',
      'set in sleeves': 'Manches montées',
      'side seams': 'Coutures de côté',
      'sleeve seams': 'Coutures de manche',
      opening: 'Ouverture',
      lap: 'Superposé',
      join: 'Joint',
    },
  },
  list,
  facts,
  work,
  joining,
};

/** 'rangs 5 à 12 : 2 rangs en sable, 2 rangs en bleu, en alternance' */
function striped({ first, last, turn }: StripeStretch): string {
  const rows = first === last ? `rang ${first}` : `rangs ${first} à ${last}`;
  const [one] = turn;
  if (turn.length === 1 && one) return `${rows} en ${one.colour}`;
  const stripes = turn.map((s) => `${s.rows} ${s.rows === 1 ? 'rang' : 'rangs'} en ${s.colour}`);
  return `${rows}\u00a0: ${stripes.join(', ')}, en alternance`;
}
