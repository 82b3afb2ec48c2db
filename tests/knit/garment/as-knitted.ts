import type { FabricName } from '../../../src/knit/fabric.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import type { Draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import type { Measure } from '../../../src/knit/garment/roundings.ts';
import type { Gauge } from '../../../src/knit/gauge.ts';
import type { Plan, PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';

/** What somebody measures who lays the knitted pieces on a table: counts and rows of the plans, by the swatches. */
export class AsKnitted {
  constructor(
    private readonly design: Design,
    private readonly draft: Draft,
    private readonly plans: readonly Plan[],
  ) {}

  /** mm, or undefined where the piece as knitted does not show it by itself */
  made(measure: Measure): number | undefined {
    // the first edition of the rules had no stitch for the seam at a straight top
    const isFirst = this.design.edition === undefined;
    const flat = isFirst && (this.design.armhole === 'drop' || this.design.armhole === 'indented');
    switch (measure) {
      case 'width at the underarm':
        return this.sewn(this.underarm());
      case 'width above the hem':
        return this.sewn(this.aboveRib('Back', 'hem', 'body'));
      case 'width across the shoulders':
        return this.sewn(this.across());
      case 'neck width':
        return this.design.armhole === 'raglan'
          ? this.wide(this.upTo('Back', 'raglan')?.after)
          : this.wide(this.betweenShoulders());
      case 'length':
        return this.high('Back', ['hem', 'body', 'armhole', 'raglan', 'shoulder']);
      case 'hem height':
        return this.high('Back', ['hem']);
      case 'armhole depth':
        return this.high('Back', ['armhole']);
      case 'raglan depth':
        return this.high('Back', ['raglan']);
      case 'shoulder drop':
        return this.high('Back', ['shoulder']);
      case 'neck depth':
        return this.highBesideNeck('Front');
      case 'back neck depth':
        return this.highBesideNeck('Back');
      case 'cuff height':
        return this.high('Sleeve', ['cuff']);
      case 'sleeve length':
        return this.high('Sleeve', ['cuff', 'sleeve']);
      case 'cuff width':
        return this.design.sleeve.direction === 'cuff up' || isFlat(this.design)
          ? undefined
          : this.sewn(this.aboveCuff()?.after);
      case 'sleeve width':
        return this.design.sleeve.direction === 'cuff up'
          ? flat
            ? this.wide(this.upTo('Sleeve', 'sleeve')?.after)
            : this.sewn(this.upTo('Sleeve', 'sleeve')?.after)
          : undefined;
      default:
        return undefined;
    }
  }

  /** What a sleeve was asked to measure that is to end no lower than the wrist from the nape, and keeps two thirds of the arm; mm. */
  askedSleeve(): number | undefined {
    const { armhole, body, sleeve } = this.design;
    const flat = armhole === 'drop' || armhole === 'indented';
    if (flat || !sleeve.endsAtWrist || sleeve.lengthMm !== undefined) return undefined;
    const across = armhole === 'raglan' ? (this.upTo('Back', 'raglan')?.after ?? 0) : this.across();
    const above = this.level(across / 2 - 1) + this.high('Sleeve', ['cap', 'raglan']);
    return Math.min(body.arm, Math.max((2 * body.arm) / 3, body.napeToWrist - above));
  }

  /**
   * Half a cap, from the underarm to its middle, and the armhole that it is sewn to, from the underarm to the shoulder,
   * mm along the knitted edge.
   */
  seam(): { cap: number; armhole: number } {
    const takenIn = (piece: string, section: string): readonly number[] =>
      this.rowsOf(piece, [section]).map(({ row }) => Math.abs(off(row)));
    const [down, ...back] = takenIn('Back', 'armhole');
    const cap = takenIn('Sleeve', 'cap');
    const [sleeve] = this.along('Sleeve');
    const cuffUp = this.design.sleeve.direction === 'cuff up';
    // from the top down the cap begins at its middle, and its underarm is cast on where the sleeve begins
    const [underarm = 0] = cuffUp ? cap : takenIn('Sleeve', 'sleeve').filter((by) => by > 0);
    const slant = cuffUp ? [0, ...cap.slice(1)] : cap;
    const top = (cuffUp ? sleeve?.rows.findLast(({ after }) => after > 0)?.after : sleeve?.start) ?? 0;
    return {
      cap: this.level(underarm) + this.slanting(slant) + this.level(top / 2),
      armhole: this.level(down ?? 0) + this.slanting([0, ...back]),
    };
  }

  /** Widths of pieces that have a stitch for the seam at either edge. */
  private readonly sewn = (stitches: number | undefined): number | undefined =>
    stitches === undefined ? undefined : this.wide(stitches - (this.design.seamStitch ? 2 : 0));

  private readonly level = (stitches: number): number =>
    (stitches * 100) / this.gauge(this.design.fabric).stitches;

  /** Along an edge that takes in so many stitches on each row: one slant from each pair of rows that takes some in to the next. */
  private slanting(rows: readonly number[]): number {
    const up = 200 / this.gauge(this.design.fabric).rows;
    const pairs = Array.from(
      { length: Math.ceil(rows.length / 2) },
      (_, i) => (rows[2 * i] ?? 0) + (rows[2 * i + 1] ?? 0),
    );
    const taking = pairs.flatMap((by, i) => (by === 0 ? [] : [i]));
    const slants = taking.map((at, i) =>
      Math.hypot(this.level(pairs[at] ?? 0), up * ((taking[i + 1] ?? pairs.length) - at)),
    );
    return up * (taking[0] ?? pairs.length) + slants.reduce((sum, mm) => sum + mm, 0);
  }

  gauge(fabric: FabricName): Gauge {
    const found =
      this.design.gauges[fabric] ?? this.draft.assumed.find((one) => one.fabric === fabric)?.gauge;
    if (!found) throw new Error(`${fabric} has no gauge`);
    return found;
  }

  /** The parts that lie one above the other along the right edge. */
  private along(piece: string): readonly PlannedPart[] {
    const parts = this.plans.find(({ name }) => name === piece)?.parts ?? [];
    return parts.filter(({ from }) => !('part' in from) || from.edge === 'right');
  }

  private rowsOf(piece: string, names: readonly string[]): { row: PlannedRow; fabric: FabricName }[] {
    return this.along(piece).flatMap((part) =>
      part.rows.flatMap((row) => {
        const section = part.sections[row.section];
        return section && names.includes(section.name) ? [{ row, fabric: section.fabric }] : [];
      }),
    );
  }

  private upTo(piece: string, section: string): PlannedRow | undefined {
    return this.rowsOf(piece, [section]).at(-1)?.row;
  }

  /** From the top down the last row before the one in which the cuff's count is made up. */
  private aboveCuff(): PlannedRow | undefined {
    const rows = this.rowsOf('Sleeve', ['sleeve']).map(({ row }) => row);
    const made = rows.findIndex(({ shaping }) => shaping.some(({ kind }) => kind === 'across'));
    return made > 0 ? rows[made - 1] : rows.at(-1);
  }

  private aboveRib(piece: string, rib: string, above: string): number | undefined {
    const [first] = this.rowsOf(piece, [above]);
    return this.rowsOf(piece, [rib]).length > 0 ? first?.row.after : first?.row.before;
  }

  /** Of a back; one whose neck opens below its underarm is in two halves there, with what lies between them. */
  private underarm(): number | undefined {
    const last = this.upTo('Back', 'body');
    const part = this.along('Back').find(({ rows }) => last !== undefined && rows.includes(last));
    if (!last || !part || !('part' in part.from)) return last?.after;
    const parts = this.plans.find(({ name }) => name === 'Back')?.parts ?? [];
    const middle = parts.find(({ from }) => 'part' in from && from.edge === 'middle');
    return 2 * last.after + (middle?.start ?? 0);
  }

  private across(): number {
    const underarm = this.underarm() ?? 0;
    return underarm - 2 * this.rowsOf('Back', ['armhole']).reduce((sum, { row }) => sum + off(row), 0);
  }

  /** A back that is not parted binds off its neck and the last of both shoulders in one row: it does not show which is which. */
  private betweenShoulders(): number | undefined {
    const [, shoulder] = this.along('Back');
    if (!shoulder) return undefined;
    const inSteps = this.rowsOf('Back', ['shoulder']).reduce((sum, { row }) => sum + off(row), 0);
    return this.across() - 2 * (inSteps + (shoulder.rows.at(-1)?.after || shoulder.rows.at(-1)?.before || 0));
  }

  private wide(stitches: number | undefined): number | undefined {
    return stitches === undefined ? undefined : this.level(stitches);
  }

  private high(piece: string, names: readonly string[]): number {
    return this.rowsOf(piece, names).reduce((sum, { fabric }) => sum + 100 / this.gauge(fabric).rows, 0);
  }

  /** Closed pieces are parted where the neck begins; of an open front the edge is shaped. */
  private highBesideNeck(piece: string): number | undefined {
    const [, beside] = this.along(piece);
    if (!beside) return undefined;
    const rows = beside.rows.filter((row) => beside.sections[row.section]?.name !== 'bind off');
    // a panel that opens is parted so many pairs of rows before its neck begins
    const { opening, openingMm = 0, depthMm, shape } = this.design.neck;
    const hasPlacket = opening === 'placket' && depthMm > 0 && (shape === 'round' || shape === 'boat');
    const parted = piece === 'Back' ? opening === 'back' : hasPlacket;
    const opens = parted && !garmentKinds[this.design.kind].open;
    const asked = Math.round((openingMm * this.gauge(this.design.fabric).rows) / 200);
    // a placket that is asked for parts the front, by one pair at least
    const pairs = opens ? Math.max(piece === 'Back' ? 0 : 1, asked) : 0;
    return ((rows.length - 2 * pairs) * 100) / this.gauge(this.design.fabric).rows;
  }
}

/** Its sleeve ends straight, sewn along its whole width. */
export const isFlat = ({ armhole }: Pick<Design, 'armhole'>): boolean =>
  armhole === 'drop' || armhole === 'indented';

/** Stitches that a row takes from the right edge. */
const off = (row: PlannedRow): number =>
  row.shaping.reduce((sum, mark) => ('edge' in mark && mark.edge === 'right' ? sum - mark.by : sum), 0);

/** What a finished garment was asked to measure, mm, by the design's own figures; undefined where it is made to fit another piece. */
export function asked({ body, ease, ...design }: Design, measure: Measure): number | undefined {
  const flat = design.armhole === 'drop' || design.armhole === 'indented';
  const underarm = (body.chest + ease.chest) / 2;
  // what an indent takes where none is asked for: common practice, no published source
  const indent = design.underarmMm ?? 0.085 * underarm;
  const across = {
    drop: underarm,
    indented: underarm - 2 * indent,
    'set-in': body.crossBack + ease.crossBack,
    raglan: design.neck.widthMm,
  }[design.armhole];
  const figures: Partial<Record<Measure, number>> = {
    'width at the underarm': underarm,
    'width above the hem': (body.hip + ease.hip) / 2,
    'width at the waist': (body.waist + ease.waist) / 2,
    'width across the shoulders': across,
    'neck width': design.neck.widthMm,
    length: design.lengthMm,
    'hem height': design.hem.heightMm,
    'armhole depth': body.armholeDepth + ease.armholeDepth,
    'raglan depth': body.armholeDepth + ease.armholeDepth + design.shoulderDropMm,
    'shoulder drop': design.shoulderDropMm,
    'neck depth': design.neck.depthMm,
    'back neck depth': design.neck.backDepthMm,
    'cuff width': body.wrist + ease.wrist,
    'cuff height': design.cuff.heightMm,
    'sleeve length': design.sleeve.lengthMm ?? (flat ? body.napeToWrist - underarm / 2 : body.arm),
    ...(flat ? {} : { 'sleeve width': body.upperArm + ease.upperArm }),
  };
  return figures[measure];
}
