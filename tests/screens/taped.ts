import type { PlannedPart } from '../../src/knit/piece/planned.ts';

/**
 * A piece measured with a tape, apart from its drawing: by counting stitches and rows of its plan, each as wide and as
 * high as its fabric is. mm, by what a schematic calls it.
 */
export function taped(parts: readonly PlannedPart[]): ReadonlyMap<string, number> {
  const [body] = parts;
  const found = new Map<string, number>();
  if (!body || knitted(body).length === 0) return found;
  const [first] = knitted(body);
  const wide = Math.max(
    ...knitted(body).flatMap((row) => [row.from, row.after].map((n) => n * stitchIn(body, row))),
  );
  if (first) found.set('Width where it begins', first.from * stitchIn(body, first));
  found.set('Width at the widest', wide);
  const last = knitted(body).at(-1);
  if (last) found.set('Width at the top', last.after * stitchIn(body, last));
  const sides = parts.filter((part) => part.parent === body.name && knitted(part).length > 0);
  const whole = heightOf(body) + Math.max(0, ...sides.map(heightOf));
  found.set('Height in all', whole);
  // from the first row of a name to the last, whatever lies between: a band with its button holes
  const upTo = (row: number) => rowsMm(body, knitted(body).slice(0, row));
  for (const { name } of body.sections) {
    const own = body.sections.filter((section) => section.name === name && section.last >= section.first);
    const [low, high] = [
      Math.min(...own.map((section) => section.first)),
      Math.max(...own.map((section) => section.last)),
    ];
    if (own.length === 0) continue;
    found.set(`Height of the ${name}`, upTo(high) - upTo(low - 1));
    found.set(`Height of the ${name}, to the top`, whole - upTo(low - 1));
  }
  const [one, other] = sides;
  if (one && other && sides.length === 2) {
    const [right, left] = insideOf(one) === 'left' ? [one, other] : [other, one];
    found.set('Depth of the neck', Math.max(heightOf(one), heightOf(other)));
    found.set('Width of the neck', neckMm(body, right, left));
    found.set('Width of a shoulder', shoulderMm(body, right));
  } else if (parts.length === 1 && named(body, 'shoulder')) {
    // the left front as worn, which is the first, has its arm at the right edge
    found.set('Width of a shoulder', outerMm(body, 'right'));
  }
  return found;
}

const isKnitted = (part: PlannedPart, n: number): boolean =>
  !(part.end === 'bind off' && n === part.rows.length);

/** Rows that have a height, with the stitches that lie in them when they are begun: what is bound off at an edge is none of them any more, what is cast on there is. */
const knitted = (part: PlannedPart) =>
  part.rows
    .filter(({ n }) => isKnitted(part, n))
    .map((row) => ({
      ...row,
      from:
        row.before +
        row.shaping.reduce((n, { kind, by }) => n + (kind === 'bind off' || kind === 'cast on' ? by : 0), 0),
    }));

const stitchIn = ({ cells }: PlannedPart, { section }: { readonly section: number }): number =>
  cells[section]?.width ?? 0;

const rowsMm = ({ cells }: PlannedPart, rows: readonly { readonly section: number }[]): number =>
  rows.reduce((mm, { section }) => mm + (cells[section]?.height ?? 0), 0);

const heightOf = (part: PlannedPart): number => rowsMm(part, knitted(part));

const named = ({ sections }: PlannedPart, wanted: string) =>
  sections.find(({ name, first, last }) => name === wanted && last >= first);

type Edge = 'left' | 'right';
const otherEdge = (edge: Edge): Edge => (edge === 'left' ? 'right' : 'left');

/** What the rows from `first` on take off at an edge, in stitches' widths. */
const takenMm = (part: PlannedPart, edge: Edge, first = 1): number =>
  knitted(part)
    .filter(({ n }) => n >= first)
    .reduce(
      (mm, row) =>
        mm +
        row.shaping
          .filter((mark) => mark.edge === edge && mark.kind !== 'turn')
          .reduce((sum, { by }) => sum - by * stitchIn(part, row), 0),
      0,
    );

/** A side of the neck is named for the worn side that it is: the edge at the neck is where its parent's stitches lay. */
const insideOf = ({ from }: PlannedPart): Edge =>
  'edge' in from && from.edge === 'right' ? 'left' : 'right';

const lastWidth = (part: PlannedPart): number => {
  const last = knitted(part).at(-1);
  return last ? last.after * stitchIn(part, last) : 0;
};

/** From edge to edge when the neck parts them, without what both sides keep at last and lose at their arms. */
function neckMm(body: PlannedPart, right: PlannedPart, left: PlannedPart): number {
  return (
    lastWidth(body) -
    [right, left].reduce((mm, side) => mm + lastWidth(side) + takenMm(side, otherEdge(insideOf(side))), 0)
  );
}

/** What is kept at last, and what the shoulder took off it at the arm. */
function shoulderMm(body: PlannedPart, right: PlannedPart): number {
  const begun = named(body, 'shoulder');
  if (begun) return lastWidth(right) + takenMm(right, 'right') + takenMm(body, 'right', begun.first);
  const own = named(right, 'shoulder');
  return lastWidth(right) + (own ? takenMm(right, 'right', own.first) : 0);
}

const outerMm = (body: PlannedPart, outer: Edge): number =>
  lastWidth(body) + takenMm(body, outer, named(body, 'shoulder')?.first);
