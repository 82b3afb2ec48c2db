import type { PlannedPart } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';
import { endOf, sideBits } from './boundary.ts';
import { chainAt, FoundSide } from './found-side.ts';
import type { Line, Stretch } from './joint.ts';
import { type PanelEdges, turnedRound, type Underarm } from './piece-edges.ts';
import { type OpenedBack, openedBack } from './sewn.ts';

/** What the other pieces tell of a panel. */
export interface AboutPanel {
  readonly piece: string;
  readonly make: number;
  readonly parts: readonly PlannedPart[];
  readonly isHalf: boolean;
  readonly isRaglan: boolean;
  /** it is parted below its neck, and banded along both edges */
  readonly hasPlacket?: boolean;
  /** the sleeve narrows towards its top: what narrows here above the side is the armhole */
  readonly isCapped: boolean;
  /** it has, unless said otherwise */
  readonly hasSleeve?: boolean;
  /** of a sleeve that is sewn in straight, half of its top; else as long as an armhole's band is, mm */
  readonly depthMm?: number | undefined;
  /** rows from its cast-on to its armhole, where a text tells them */
  readonly sideRows?: number | undefined;
  /** stitches of a shoulder of the piece that it is sewn to, where that one's is known */
  readonly shoulder?: number | undefined;
  /** a text tells them of this piece: of half a front what is left of its top is neck */
  readonly isShoulderTold?: boolean;
}

/** The edges of a back, a front or half a front as the shape of its plan tells them, whatever its parts are called. */
export class FoundPanel implements PanelEdges {
  private readonly sides = new Map<Edge, FoundSide>();

  constructor(private readonly about: AboutPanel) {}

  hem(): Line {
    return [this.stretch(this.about.parts[0], 'start')];
  }

  side(outer: Edge): Line {
    return this.at(outer).between(0, this.armholeAt(outer));
  }

  underarm(outer: Edge): Underarm | undefined {
    const [first] = this.armhole(outer, true);
    const level = this.at(outer).levelAt(this.armholeAt(outer));
    return first && level && { line: [{ ...first, level: 'only' }], stitches: level.stitches };
  }

  armhole(outer: Edge, whole: boolean): Line {
    const line = this.at(outer).between(this.armholeAt(outer), this.shoulderAt(outer));
    const isLevel = this.at(outer).levelAt(this.armholeAt(outer)) !== undefined;
    if (whole || !isLevel) return line;
    return line.map((stretch, i) => (i === 0 ? { ...stretch, level: 'without' as const } : stretch));
  }

  shoulder(outer: Edge): Line {
    if (this.about.isRaglan) return [];
    const side = this.at(outer);
    const slope = side.between(this.shoulderAt(outer), side.end);
    const top = this.stretch(this.leaf(outer), 'top');
    if (this.isParted(outer) && !this.isFlatHalf(outer))
      return [...slope, ...(outer === 'left' ? turnedRound([top]) : [top])];
    const rest = this.restOfShoulder(outer);
    if (rest === 0) return slope;
    const all = this.topStitches();
    const stitches = outer === 'right' ? { from: 0, to: rest } : { from: all - rest, to: all };
    const level: Line = [{ ...top, stitches }];
    return [...slope, ...(outer === 'left' ? turnedRound(level) : level)];
  }

  /** Stitches of a shoulder; undefined where its top does not tell where the neck begins. */
  shoulderStitches(outer: Edge): number | undefined {
    const side = this.at(outer);
    const inGroups = side.takenFrom(this.shoulderAt(outer));
    const leaf = this.leaf(outer);
    if (leaf && this.isParted(outer)) return inGroups + endOf(leaf, 'top').stitches;
    return undefined;
  }

  neckSide(outer: Edge, tip: boolean): Line {
    const inner = outer === 'right' ? 'left' : 'right';
    const leaf = this.leaf(outer);
    const own = this.stretch(leaf, inner);
    const side: Line =
      this.about.isHalf || this.about.hasPlacket
        ? [{ ...own, shaped: 'after' }]
        : outer === 'left' && this.beginsWithMiddle()
          ? [{ ...own, level: 'without' }]
          : [own];
    const last = this.stretch(leaf, 'top');
    const isFlat = this.isFlatHalf(outer);
    const [rest, all] = [this.restOfShoulder(outer), this.topStitches()];
    const neck = outer === 'right' ? { from: rest, to: all } : { from: 0, to: all - rest };
    const top: Line = tip ? [last] : isFlat ? [{ ...last, stitches: neck }] : [];
    return [...side, ...(outer === 'right' ? turnedRound(top) : top)];
  }

  front(outer: Edge): Line {
    const inner = outer === 'right' ? 'left' : 'right';
    const part = this.about.isHalf ? this.about.parts[0] : this.leaf(outer);
    return [{ ...this.stretch(part, inner), shaped: 'before' }];
  }

  middle(): Line {
    if (this.beginsWithMiddle()) return [{ ...this.stretch(this.leaf('left'), 'right'), level: 'only' }];
    return this.about.parts
      .filter(({ from }) => 'part' in from && from.edge === 'middle')
      .map((part) => this.stretch(part, 'top'));
  }

  /** The stitches in the middle of the neck are bound off in the first row of its left side, not as a part of their own. */
  private beginsWithMiddle(): boolean {
    const leaf = this.leaf('left');
    if (!leaf || this.about.isHalf || !this.isParted('left')) return false;
    if (this.about.parts.some(({ from }) => 'part' in from && from.edge === 'middle')) return false;
    const [first] = sideBits(leaf, 'right');
    return first?.level === true && first.row === 1;
  }

  /** Of a back that is parted below its neck: its halves, and the edges of the opening from the right one to the left. */
  opened(): OpenedBack {
    const inner = (outer: Edge) => this.stretch(this.leaf(outer), outer === 'right' ? 'left' : 'right');
    return openedBack(inner, this.middle());
  }

  wholeNeck(): Line {
    if (this.isParted('right'))
      return [
        ...turnedRound(this.neckSide('right', false)),
        ...this.middle(),
        ...this.neckSide('left', false),
      ];
    const top = this.stretch(this.about.parts[0], 'top');
    const rest = this.restOfShoulder('right');
    return [rest === 0 ? top : { ...top, stitches: { from: rest, to: this.topStitches() - rest } }];
  }

  /** Its neck parts it in two. */
  isFlat = (): boolean => !this.about.isHalf && !this.isParted('right');

  /** mm of what is bound off first at the underarm. */
  indentMm = (outer: Edge): number => this.at(outer).levelAt(this.armholeAt(outer))?.mm ?? 0;

  /** It narrows up to its top, and no shoulder is bound off there. */
  looksRaglan(outer: Edge): boolean {
    const side = this.at(outer);
    return side.slope() === side.end && side.narrows(side.end) >= 0 && side.plainAtTop() <= RAGLAN_TOP;
  }

  /** Half a front whose neck is not shaped: it lies beside the shoulder. */
  private isFlatHalf(outer: Edge): boolean {
    const { isHalf, isShoulderTold, shoulder = 0, isRaglan } = this.about;
    if (!isHalf || !isShoulderTold || isRaglan) return false;
    return shoulder < this.at(outer).takenFrom(this.shoulderAt(outer)) + this.topStitches();
  }

  private isParted = (outer: Edge): boolean =>
    this.about.isHalf || chainAt(this.about.parts, outer).length > 1;

  private leaf = (outer: Edge): PlannedPart | undefined => chainAt(this.about.parts, outer).at(-1);

  private topStitches(): number {
    const [body] = this.about.parts;
    return body ? endOf(body, 'top').stitches : 0;
  }

  /** What of a shoulder is bound off in one row with the neck between both. */
  private restOfShoulder(outer: Edge): number {
    const { shoulder, isRaglan, parts, isHalf } = this.about;
    if (shoulder === undefined || isRaglan) return 0;
    const taken = this.at(outer).takenFrom(this.shoulderAt(outer));
    if (isHalf) return Math.max(0, shoulder - taken);
    // what rests behind shoulders that are bound off is the neck; where nothing is bound off all of it rests
    if (parts[0]?.end === 'hold' && taken > 0) return 0;
    const rest = shoulder - taken;
    return rest > 0 && 2 * rest < this.topStitches() ? rest : 0;
  }

  private at(outer: Edge): FoundSide {
    const { piece, make, parts } = this.about;
    const side = this.sides.get(outer) ?? new FoundSide(piece, make, parts, outer);
    this.sides.set(outer, side);
    return side;
  }

  private shoulderAt(outer: Edge): number {
    const { isRaglan, isShoulderTold, shoulder = 0 } = this.about;
    const side = this.at(outer);
    if (isRaglan) return side.end;
    const named = side.begins(SHOULDER);
    if (named !== undefined) return named;
    // rows that are called the armhole's up to the top have no shoulder above them
    if (isShoulderTold && side.ends(ARMHOLE) !== undefined) return side.end;
    const leaf = this.leaf(outer);
    const inGroups =
      leaf && isShoulderTold && this.isParted(outer) ? shoulder - endOf(leaf, 'top').stitches : 0;
    return side.taking(inGroups) ?? side.slope(isShoulderTold);
  }

  private armholeAt(outer: Edge): number {
    const side = this.at(outer);
    const { sideRows } = this.about;
    const named = side.begins(ARMHOLE);
    if (named !== undefined) return named;
    if (sideRows !== undefined) return side.behindRows(sideRows);
    const top = this.shoulderAt(outer);
    const level = side.firstLevel(top, -1);
    if (level >= 0) return level;
    const { isCapped, hasSleeve = true, depthMm } = this.about;
    const narrows = isCapped || !hasSleeve ? side.narrows(top) : -1;
    // of a vest: a body that is taken in lower down has no armhole there
    if (narrows >= 0 && (isCapped || narrows > side.end / 3)) return narrows;
    return depthMm === undefined ? top : side.below(top, depthMm);
  }

  private stretch(part: PlannedPart | undefined, edge: Stretch['edge']): Stretch {
    return { piece: this.about.piece, make: this.about.make, part: part?.name ?? '', edge };
  }
}

/** What rows are called, in a draft and in what is written of it. */
const ARMHOLE = ['armhole', 'raglan'] as const;
const SHOULDER = ['shoulder'] as const;

/** Rows without a decrease that a raglan may have at its top. */
const RAGLAN_TOP = 4;
