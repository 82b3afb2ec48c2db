import { type FabricName, fabrics, fits } from '../fabric.ts';
import { type Fault, fault, ok, placed, type Result, refuse } from '../fault.ts';
import { type Run, shorten } from '../row/shorten.ts';
import { otherSide, type Side, type Step } from '../row/step.ts';
import { stepWeight } from '../row/step-weight.ts';
import { stitchOf } from '../row/stitches-of-steps.ts';
import { workRow } from '../row/work.ts';
import { type Gap, withGaps } from './gaps.ts';
import { type Columns, freshColumns, grownLeft } from './needle.ts';
import type { PlannedRow, PlannedSection, ShapingMark } from './planned.ts';
import type { Edge, PartRecipe, Section } from './recipe.ts';
import { buildRow } from './row-of.ts';
import { allWorked, type RowSetting, type Unworked } from './row-setting.ts';
import { groupOnWrongSide, type RowShaping, shapingByRow } from './row-shaping.ts';
import type { TurnWay } from './turn-way.ts';
import { marksOfSteps, turnsOfSteps } from './worded-marks.ts';
import { takeRow, type WorkBudget } from './work-budget.ts';
import { behindTurn } from './yarn-end.ts';

/** The needle and its history while a part is spelled out; a later part goes on from it. */
export interface Needle {
  columns: Columns;
  side: Side;
  /** rows of the piece worked so far; even before an RS row */
  phase: number;
  /** mm above the piece's cast-on */
  height: number;
  fabric: FabricName | undefined;
  /** stitches left unworked by short rows; a section without a turn is worked over all of them again */
  unworked: Unworked;
  /** stitches behind the turn of the last row: the yarn hangs before them, and the next row begins there */
  turned: number;
  /** the same of the row before it */
  turnedBefore: number;
  /** turns that no row has gone over yet */
  gaps: readonly Gap[];
  /** needle last worked with, mm */
  mm: number | undefined;
}

export interface SpelledOut {
  readonly rows: readonly PlannedRow[];
  readonly sections: readonly PlannedSection[];
}

/** Spells out a part's sections row by row, moving the needle along. `heights` are mm a row, by section. */
export function spellOut(
  part: PartRecipe,
  needle: Needle,
  heights: readonly number[],
  budget: WorkBudget,
): Result<SpelledOut> {
  const rows: PlannedRow[] = [];
  const sections: PlannedSection[] = [];
  for (const [index, section] of part.sections.entries()) {
    const first = rows.length + 1;
    const trouble = new SectionInWork(
      part,
      section,
      index,
      heights[index] ?? 0,
      needle,
      rows,
      budget,
    ).spellOut();
    if (trouble) return refuse(placed(trouble, { sectionIndex: index }));
    const { name, fabric, needle: needleMm, onNeedle } = section;
    const counted = onNeedle === undefined ? {} : { onNeedle };
    const read = {
      ...(section.own ? { own: section.own } : {}),
      ...(section.length ? { length: section.length } : {}),
    };
    sections.push({ name, fabric, needle: needleMm, first, last: rows.length, ...counted, ...read });
  }
  return ok({ rows, sections });
}

class SectionInWork {
  private readonly plainSteps = new Map<number, readonly Step[]>();
  private centres: ReadonlyMap<number, number> = new Map();

  constructor(
    private readonly part: PartRecipe,
    private readonly section: Section,
    private readonly index: number,
    private readonly rowHeight: number,
    private readonly needle: Needle,
    private readonly rows: PlannedRow[],
    private readonly budget: WorkBudget,
  ) {}

  spellOut(): Fault | undefined {
    const shaped = shapingByRow(this.section);
    if (!shaped.ok) return shaped.faults[0];
    const shaping = shaped.value;
    this.takeAsFound();
    const misfit = this.layFabric(shaping.get(1));
    if (misfit) return misfit;
    for (let row = 1; row <= this.section.rows; row += 1) {
      const wrong = this.row(row, shaping.get(row));
      // of all the rows together: the one at which it was found has nothing to do with it
      if (wrong) return wrong.code === 'too much to plan' ? wrong : placed(wrong, { row });
      if (row === 1 && shaping.get(1)?.across !== undefined) {
        const late = this.misfit();
        if (late) return late;
      }
    }
    return undefined;
  }

  /** What was counted and measured on the piece itself goes before what the rows so far ought to have made. */
  private takeAsFound(): void {
    const { onNeedle, measured } = this.section;
    const { columns } = this.needle;
    if (onNeedle !== undefined) {
      const kept = columns.slice(0, onNeedle);
      this.needle.columns = grownLeft(kept, onNeedle - kept.length);
    }
    if (measured?.atMm !== undefined) this.needle.height = measured.atMm;
  }

  /** A new fabric is laid out from the right edge; the same one goes on as established. */
  private layFabric(firstRow: RowShaping | undefined): Fault | undefined {
    const { fabric } = this.section;
    const goesOn = this.needle.fabric === fabric && !this.section.words;
    if (!goesOn) this.needle.columns = freshColumns(this.needle.columns.length);
    this.needle.fabric = this.section.words ? undefined : fabric;
    this.centres = this.centresNow();
    if (!this.turns) this.needle.unworked = this.wayBack(firstRow);
    const spreadFirst = firstRow?.across !== undefined;
    return goesOn || spreadFirst || this.section.words ? undefined : this.misfit();
  }

  private centresNow(): ReadonlyMap<number, number> {
    const { columns } = this.needle;
    return new Map(
      this.section.shaping.flatMap((s) => {
        const column = s.kind === 'middle' ? columns[s.from] : undefined;
        return s.kind === 'middle' && column !== undefined ? [[s.from, column]] : [];
      }),
    );
  }

  private get turns(): boolean {
    return this.section.shaping.some((s) => s.kind === 'turn');
  }

  /**
   * After a turn the first row works back from the yarn; those after it are worked over all stitches. A first row that
   * shapes the edge beyond the yarn is worked from there: it says that the yarn is joined.
   */
  private wayBack(firstRow: RowShaping | undefined): Unworked {
    const { side, turned } = this.needle;
    const edge: Edge = side === 'RS' ? 'right' : 'left';
    const atEdge =
      firstRow &&
      [firstRow[edge], firstRow.across, firstRow.boundOff, firstRow.castOn].some((one) => one !== undefined);
    return atEdge ? allWorked : { ...allWorked, [edge]: turned };
  }

  private misfit(): Fault | undefined {
    const { fabric } = this.section;
    const count = this.needle.columns.length;
    const near = fits(fabric, count);
    if (near.fits || this.section.rows === 0) return undefined;
    return fault(
      'fabric multiple',
      { fabric, stitches: count, belowStitches: near.below, aboveStitches: near.above },
      { field: 'fabric' },
    );
  }

  private row(row: number, shaping: RowShaping | undefined): Fault | undefined {
    const { needle } = this;
    const wrongSide = shaping ? groupOnWrongSide(shaping, needle.side, row) : undefined;
    if (wrongSide) return wrongSide;
    const before = needle.columns.length;
    const tooMuch = takeRow(this.budget, this.weightOf(row, before));
    if (tooMuch) return tooMuch;
    const made = this.section.words ? this.wordedRow(row, before) : this.fabricRow(shaping);
    if (!made.ok) return made.faults[0];
    const { steps, columns, marks } = made.value;
    needle.columns = columns;
    needle.height += this.rowHeight;
    this.rows.push({
      n: this.rows.length + 1,
      side: needle.side,
      section: this.index,
      needle: this.section.needle,
      steps,
      before,
      after: columns.length,
      shaping: marks,
      height: needle.height,
    });
    needle.mm = this.section.needle;
    needle.turnedBefore = needle.turned;
    needle.turned = behindTurn(steps, before);
    if (row === 1 && !this.turns) this.allWorkedAgain();
    needle.side = otherSide(needle.side);
    needle.phase += 1;
    return undefined;
  }

  private allWorkedAgain(): void {
    if (this.needle.unworked.right + this.needle.unworked.left === 0) return;
    this.needle.unworked = allWorked;
    this.plainSteps.clear();
  }

  /** A row in words may take more steps than it has stitches: repeats can stand in repeats. */
  private weightOf(row: number, before: number): number {
    const { words } = this.section;
    return words ? Math.max(before, stepWeight(words[(row - 1) % words.length] ?? [], before)) : before;
  }

  private wordedRow(row: number, before: number): Result<RowMade> {
    const words = this.section.words ?? [];
    const steps = this.afterTurn(words[(row - 1) % words.length] ?? [], before);
    const worked = workRow(steps, before);
    if (!worked.ok) return worked;
    // words say themselves what becomes of a turn
    this.needle.gaps = [];
    const by = worked.value.after - before;
    const { side } = this.needle;
    const changes = marksOfSteps(steps, before, side);
    const turns = this.leavesAsBefore(steps, before) ? [] : turnsOfSteps(steps, before, side);
    const marks = [...changes, ...turns];
    return ok({ steps, columns: by === 0 ? this.needle.columns : freshColumns(worked.value.after), marks });
  }

  /** It ends where the last row of its side did: nothing more is left. */
  private leavesAsBefore = (steps: readonly Step[], before: number): boolean =>
    behindTurn(steps, before) === this.needle.turnedBefore;

  /** The row after a turn works back over what was turned, whether or not its words name what lies before it. */
  private afterTurn(steps: readonly Step[], before: number): readonly Step[] {
    const { turned } = this.needle;
    const [first] = steps;
    if (turned === 0 || first === undefined || stitchOf(first) === 'unworked') return steps;
    const back: readonly Step[] = [{ work: 'unworked', times: turned }, ...steps];
    return workRow(back, before).ok ? back : steps;
  }

  private fabricRow(shaping: RowShaping | undefined): Result<RowMade> {
    const { needle, part, section } = this;
    const setting: RowSetting = {
      fabric: section.fabric,
      phase: needle.phase,
      side: needle.side,
      slipped: part.selvedge === 'slipped',
      centres: this.centres,
      unworked: needle.unworked,
    };
    if (!shaping) return this.plainRow(setting);
    this.plainSteps.clear();
    const built = buildRow(needle.columns, shaping, setting);
    if (!built.ok) return built;
    if (shaping.turn) needle.unworked = left(needle.unworked, shaping.turn);
    const { runs, columns, marks } = built.value;
    return ok({ steps: this.inWords(runs, shaping.turn?.way), columns, marks });
  }

  /** The row's words, with what a turn asks for. */
  private inWords(runs: readonly Run[], turned?: TurnWay): readonly Step[] {
    const { needle } = this;
    const made = withGaps(runs, needle.side, needle.gaps, turned);
    needle.gaps = made.gaps;
    return shorten(made.runs);
  }

  /** Rows without shaping recur every few rows; each wording is made once. */
  private plainRow(setting: RowSetting): Result<RowMade> {
    const { needle } = this;
    const { columns } = needle;
    const phases = 2 * fabrics[setting.fabric].rows.length;
    const key = setting.phase % phases;
    const known = needle.gaps.length > 0 ? undefined : this.plainSteps.get(key);
    if (known) return ok({ steps: known, columns, marks: noMarks });
    const built = buildRow(columns, undefined, setting);
    if (!built.ok) return built;
    const fresh = needle.gaps.length > 0;
    const steps = this.inWords(built.value.runs);
    if (!fresh) this.plainSteps.set(key, steps);
    return ok({ steps, columns, marks: noMarks });
  }
}

interface RowMade {
  readonly steps: readonly Step[];
  readonly columns: Columns;
  readonly marks: readonly ShapingMark[];
}

const left = (unworked: Unworked, turn: { edge: Edge; stitches: number }): Unworked => ({
  ...unworked,
  [turn.edge]: unworked[turn.edge] + turn.stitches,
});

const noMarks: readonly ShapingMark[] = [];
