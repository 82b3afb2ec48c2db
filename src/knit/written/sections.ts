import type { Design } from '../garment/design.ts';
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
export function materials(size: WorkedSize, text: readonly string[]): WrittenSection {
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
      needleLine(size),
      ...notions(size, text),
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

function needleLine({ garment }: WorkedSize): string {
  const rows = garment.pieces.flatMap(({ makes }) => makes[0]?.parts.flatMap((part) => part.rows) ?? []);
  const sizes = [...new Set(rows.map(({ needle }) => needle))].sort((a, b) => b - a);
  return `Needles: ${sizes.map((mm) => `${mm} mm`).join(' and ')}`;
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

/** Common practice, no published source. */
export function care({ design, steps }: WorkedSize): WrittenSection {
  const opens = steps.some(({ kind }) => kind === 'buttons' || kind === 'opening' || kind === 'lap');
  const isChild = design !== undefined && design.body.head < 550;
  const lines = [
    'Wash and dry it as the label of its yarn says, and as the swatch was washed.',
    'Rest your hands when they tire; ask a doctor where they hurt.',
  ];
  if (isChild)
    lines.push(
      `No cords or ribbons at a child’s neck${opens ? '; sew buttons so that they hold' : ''}. Follow your local rules.`,
    );
  return { title: 'CARE AND CAUTIONS', lines };
}
