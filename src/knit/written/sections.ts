import type { Design } from '../garment/design.ts';
import { garmentKinds } from '../garment/kinds/garments.ts';
import { yarnWeights } from '../garment/yarn-weight.ts';
import type { MakingUpStep } from '../making-up/step.ts';
import type { SaysLength } from './says-length.ts';
import type { WorkedSize } from './work-size.ts';

/** A part of the written pattern; its lines are laid beside those of the other sizes. */
export interface WrittenSection {
  readonly title: string;
  readonly lines: readonly string[];
}

const armholeWords = {
  drop: 'drop shoulders',
  indented: 'indented armholes',
  'set-in': 'set-in armholes',
  raglan: 'raglan armholes',
} as const;

/** 'Pullover with set-in armholes and a round neck, knitted flat in pieces and sewn together.' */
function whatItIs({ design }: WorkedSize): string {
  const made = 'knitted flat in pieces and sewn together.';
  if (!design) return `It is ${made}`;
  const kind = design.kind.charAt(0).toUpperCase() + design.kind.slice(1);
  return `${kind} with ${armholeWords[design.armhole]} and a ${design.neck.shape} neck, ${made}`;
}

/** What it is and whom it fits. */
export function sizeAndFit(size: WorkedSize, length: SaysLength): WrittenSection {
  const lines = [whatItIs(size)];
  const { design } = size;
  if (design) {
    lines.push(`Body, round the chest: ${length(design.body.chest)}`);
    lines.push(easeLine(design, length));
  }
  return { title: 'SIZE AND FIT', lines };
}

const easeLine = ({ ease: { chest } }: Design, length: SaysLength): string =>
  chest < 0
    ? `Ease: ${length(-chest)} narrower than the body at the chest`
    : `Ease: ${length(chest)} wider than the body at the chest`;

/** Made up, seams deducted. */
export function finishedMeasures({ finished }: WorkedSize, length: SaysLength): WrittenSection {
  const all = [
    ['Chest', finished.chest],
    ['Length', finished.length],
    ['Nape to cuff', finished.napeToCuff],
    ['Upper arm', finished.upperArm],
    ['Wrist', finished.wrist],
    ['Neck, round its edge', finished.neckWithBand ?? finished.neck],
  ] as const;
  return {
    title: 'FINISHED MEASUREMENTS',
    lines: all.flatMap(([name, mm]) => (mm === undefined ? [] : [`${name}: ${length(mm)}`])),
  };
}

const METRES_PER_YARD = 0.9144;

/** Yarn to buy, its reserve included, to the next 10 m, and what is needed beside it. */
export function materials(
  size: WorkedSize,
  text: readonly string[],
  number: NeedleNumber = () => undefined,
): WrittenSection {
  const { garment, yarn } = size;
  const [first] = garment.yarns ?? [];
  const metres = Math.ceil(yarn.metresToBuy / 10) * 10;
  const perGram = first?.grams && first.metres ? first.metres / first.grams : undefined;
  const amounts = [
    `${metres} m / ${Math.ceil(metres / METRES_PER_YARD / 10) * 10} yd`,
    ...(perGram ? [`${Math.ceil(metres / perGram / 10) * 10} g`] : []),
    ...(yarn.balls === undefined ? [] : [`${yarn.balls} balls`]),
  ];
  const strands = (first?.strands ?? 1) > 1 ? [`Held together: ${first?.strands} strands`] : [];
  return {
    title: 'MATERIALS',
    lines: [
      yarnLine(size),
      ...strands,
      `Amount, reserve included: ${amounts.join('; ')}`,
      needleLine(size, number),
      ...notions(size, text),
      ...longNeedles(size),
    ],
  };
}

function yarnLine({ garment: { yarns, pieces } }: WorkedSize): string {
  const [first] = yarns ?? [];
  const gauge = pieces.find(({ recipe }) => recipe.gauge)?.recipe.gauge;
  const isPlain = gauge?.fabric === undefined || gauge.fabric === 'stocking';
  const weights = gauge && isPlain ? yarnWeights(gauge.stitches) : [];
  const words = [
    first?.name,
    first?.fibre,
    first?.grams && first.metres ? `${first.grams} g = ${first.metres} m` : undefined,
    weights.length > 0
      ? `weight ${weights.map(({ weight, name }) => `${weight} ${name}`).join(' or ')}`
      : undefined,
  ].filter((word) => word);
  return `Yarn: ${words.join(', ') || 'to suit the gauge'}`;
}

/** What a needle of so many mm is called in another system, 'US 6'; undefined where it has no name there. */
export type NeedleNumber = (mm: number) => string | undefined;

function needleLine({ garment }: WorkedSize, number: NeedleNumber): string {
  const rows = garment.pieces.flatMap(({ makes }) => makes[0]?.parts.flatMap((part) => part.rows) ?? []);
  const sizes = [...new Set(rows.map(({ needle }) => needle))].sort((a, b) => b - a);
  const said = sizes.map((mm) => {
    const other = number(mm);
    return other === undefined ? `${mm} mm` : `${mm} mm (${other})`;
  });
  return `Needles: ${said.join(' and ')}`;
}

/** A straight needle holds so wide a band at the most, mm; a longer one is worked in rows on a circular needle; common practice, no published source. */
const ON_STRAIGHT_MM = 500;
/** Circular needles as they are sold, cm; stitches are crowded on them to three quarters of their width; common practice, no published source. */
const CIRCULAR_CM = [60, 80, 100, 120, 150] as const;
const CROWDED = 0.75;

/** The bands with more stitches than a straight needle holds, on lines of their own: a small size may have none. */
function longNeedles({ garment }: WorkedSize): string[] {
  const bands = garment.pieces.flatMap(({ recipe, makes }) => {
    const part = makes[0]?.parts[0];
    const row = part?.rows[0];
    const wideMm = (part?.start ?? 0) * (part?.cells[row?.section ?? 0]?.width ?? 0);
    if (!recipe.role?.endsWith('band') || !row || wideMm <= ON_STRAIGHT_MM) return [];
    const cm = CIRCULAR_CM.find((length) => 10 * length >= CROWDED * wideMm) ?? CIRCULAR_CM.at(-1);
    return [{ band: recipe.name.toLowerCase(), needle: `${row.needle} mm, ${cm} cm long` }];
  });
  return [...new Set(bands.map(({ needle }) => needle))].map((needle) => {
    const own = bands.filter((one) => one.needle === needle).map(({ band }) => `the ${band}`);
    return `Circular needle for ${own.join(' and ')}: ${needle}`;
  });
}

/** Buttons on a line of their own: a small size may have none. */
function notions({ steps, design }: WorkedSize, text: readonly string[]): string[] {
  const buttons = steps.reduce((sum, step) => sum + buttonsOf(step), 0);
  const across = steps.some(({ kind }) => kind === 'buttons') ? design?.frontBand.buttonMm : undefined;
  const words = [
    ...(text.some((line) => line.includes('holder')) ? ['stitch holders'] : []),
    ...(steps.some(({ kind }) => kind === 'set in sleeves') ? ['markers'] : []),
    'tapestry needle',
  ];
  const sewnOn = `Buttons: ${buttons}${across ? `, ${across} mm across` : ''}`;
  return [`Notions: ${words.join(', ')}`, ...(buttons > 0 ? [sewnOn] : [])];
}

function buttonsOf(step: MakingUpStep): number {
  if (step.kind === 'buttons') return step.stitches.length;
  return step.kind === 'opening' ? 1 : step.kind === 'lap' ? (step.buttons ?? 0) : 0;
}

/** A head of grown people, mm: below it a garment is a child's; common practice, no published source. */
const GROWN_HEAD_MM = 550;

/** Common practice, no published source. */
export function care({ design, steps }: WorkedSize): WrittenSection {
  const lines = [
    'Wash and dry it as the label of its yarn says, and as the swatch was washed.',
    'Rest your hands when they tire; ask a doctor where they hurt.',
  ];
  // of what was not drafted nobody knows whom it is for
  if (design === undefined || design.body.head < GROWN_HEAD_MM) {
    const opens = steps.some(({ kind }) => kind === 'buttons' || kind === 'opening' || kind === 'lap');
    const isOpen = design ? garmentKinds[design.kind].open : false;
    const cautions = [
      'no cords or ribbons at the neck',
      ...(opens ? ['buttons sewn so that they hold'] : []),
      ...(isOpen ? [] : ['a neck that goes over the head with ease']),
    ];
    lines.push(`For a child: ${cautions.join('; ')}. Follow your local rules.`);
  }
  return { title: 'CARE AND CAUTIONS', lines };
}
