import type { Line, Stretch } from '../../making-up/joint.ts';
import { type PanelEdges, turnedRound, type Underarm } from '../../making-up/piece-edges.ts';
import { type OpenedBack, openedBack } from '../../making-up/sewn.ts';
import { counts } from '../../piece/counts.ts';
import type { Edge, PartRecipe, Recipe } from '../../piece/recipe.ts';
import { armholes } from '../kinds/armholes.ts';

/**
 * The edges of a drafted back, front or half a front, by the names that the draft gives its parts and sections.
 */
export class PanelLines implements PanelEdges {
  private readonly name: string;
  private readonly body: PartRecipe | undefined;

  /**
   * @param make of the piece, from 1
   * @param neck stitches of its neck that are bound off with the shoulders, where the neck is not shaped
   * @param hasPlacket it is parted below its neck, and banded along both edges
   */
  constructor(
    private readonly recipe: Recipe,
    private readonly make: number,
    private readonly isHalf: boolean,
    private readonly neck: number,
    private readonly hasPlacket = false,
  ) {
    this.name = recipe.name;
    this.body = recipe.parts[0];
  }

  hem(): Line {
    return [this.stretch(this.body, 'start')];
  }

  side = (outer: Edge): Line => this.along(outer, ['hem', 'body']);

  /** What is bound off first of an armhole or a raglan; undefined where nothing is. */
  underarm(outer: Edge): Underarm | undefined {
    const [part, section] = this.armholeBegins(outer);
    const stitches = part && section ? levelStitches(part, section, this.asRecipe(outer)) : 0;
    if (!part || !section || stitches === 0) return undefined;
    return { line: [{ ...this.stretch(part, outer), sections: [section], level: 'only' }], stitches };
  }

  /** @param whole with what is bound off first */
  armhole(outer: Edge, whole: boolean): Line {
    const line = this.along(outer, ARMHOLES);
    if (whole || this.underarm(outer) === undefined) return line;
    return line.map((stretch, i) => (i === 0 ? { ...stretch, level: 'without' as const } : stretch));
  }

  shoulder(outer: Edge): Line {
    const top = this.stretch(this.leaf(outer), 'top');
    const [from, to] = this.shoulderOfTop(outer);
    const level: Stretch = this.isParted() ? top : { ...top, stitches: { from, to } };
    return [...this.along(outer, ['shoulder']), ...(outer === 'left' ? turnedRound([level]) : [level])];
  }

  /** The neck edge beside the shoulder at this edge, upwards; with the tip that a raglan front keeps. */
  neckSide(outer: Edge, tip: boolean): Line {
    const leaf = this.leaf(outer);
    const inner = outer === 'right' ? 'left' : 'right';
    const own = this.stretch(leaf, inner);
    const side: Stretch =
      this.isHalf || this.hasPlacket
        ? { ...own, shaped: 'after' }
        : outer === 'left' && this.boundOffInRow() > 0
          ? { ...own, level: 'without' }
          : own;
    const top = this.stretch(leaf, 'top');
    const isFlat = this.isHalf && this.neck > 0;
    const [from, to] = this.neckOfTop(outer);
    const last: Line = tip ? [top] : isFlat ? [{ ...top, stitches: { from, to } }] : [];
    return [side, ...(outer === 'right' ? turnedRound(last) : last)];
  }

  /** Of half a front, or of one with a placket: the edge below its neck. */
  front(outer: Edge): Line {
    const inner = outer === 'right' ? 'left' : 'right';
    return [{ ...this.stretch(this.isHalf ? this.body : this.leaf(outer), inner), shaped: 'before' }];
  }

  /** What is bound off or rests at the middle of a neck. */
  middle(): Line {
    const part = this.recipe.parts.find(({ from }) => 'part' in from && from.edge === 'middle');
    if (part) return [this.stretch(part, 'top')];
    return this.boundOffInRow() > 0 ? [{ ...this.stretch(this.leaf('left'), 'right'), level: 'only' }] : [];
  }

  /** The whole neck, from the right to the left; of a whole panel only. */
  wholeNeck(): Line {
    if (this.isParted())
      return [
        ...turnedRound(this.neckSide('right', false)),
        ...this.middle(),
        ...this.neckSide('left', false),
      ];
    const top = this.stretch(this.body, 'top');
    const [from] = this.neckOfTop('left');
    const [, to] = this.neckOfTop('right');
    return [from === 0 ? top : { ...top, stitches: { from, to } }];
  }

  /** Of a back that is parted below its neck: its halves, and the edges of the opening from the right one to the left. */
  opened(): OpenedBack {
    const inner = (outer: Edge) => this.stretch(this.leaf(outer), outer === 'right' ? 'left' : 'right');
    return openedBack(inner, this.middle());
  }

  /** Stitches in the middle of a neck that the left side begins with: it takes so many more than the right one. */
  private boundOffInRow(): number {
    const shares = (['left', 'right'] as const).map((edge) => {
      const from = this.recipe.parts.find((part) => 'part' in part.from && part.from.edge === edge)?.from;
      return from && 'part' in from ? from.stitches : 0;
    });
    return (shares[0] ?? 0) - (shares[1] ?? 0);
  }

  private isParted = (): boolean => this.recipe.parts.length > 1 || (this.isHalf && this.neck === 0);

  private top = (): number => counts(this.recipe)[0]?.left ?? 0;

  /** Where an unparted top has the shoulder of this edge, and the neck beside it: stitches from the right edge. */
  private shoulderOfTop(outer: Edge): readonly [number, number] {
    const each = this.shoulderStitches();
    return outer === 'right' ? [0, each] : [this.top() - each, this.top()];
  }

  private neckOfTop(outer: Edge): readonly [number, number] {
    const each = this.shoulderStitches();
    if (this.isHalf) return outer === 'right' ? [each, this.top()] : [0, this.top() - each];
    return [each, this.top() - each];
  }

  private shoulderStitches = (): number => (this.top() - this.neck) / (this.isHalf ? 1 : 2);

  /** Parts of a mirrored make are called as the recipe's; what they do at one edge stands there for the other. */
  private asRecipe(edge: Edge): Edge {
    if (!this.recipe.mirrored || this.make % 2 === 1) return edge;
    return edge === 'right' ? 'left' : 'right';
  }

  /** The parts that lie one above the other along an outer edge. */
  private chain(outer: Edge): readonly PartRecipe[] {
    return this.recipe.parts.filter(
      ({ from }, i) => i === 0 || ('part' in from && from.edge === outer && !this.isHalf),
    );
  }

  private leaf = (outer: Edge): PartRecipe | undefined => this.chain(outer).at(-1);

  private along(outer: Edge, sections: readonly string[]): Line {
    return this.chain(outer).flatMap((part): Stretch[] => {
      const own = [...new Set(part.sections.map(({ name }) => name))].filter((name) =>
        sections.includes(name),
      );
      return own.length === 0 ? [] : [{ ...this.stretch(part, outer), sections: own }];
    });
  }

  private armholeBegins(outer: Edge): readonly [PartRecipe | undefined, string | undefined] {
    for (const part of this.chain(outer)) {
      const section = part.sections.find(({ name }) => ARMHOLES.includes(name));
      if (section) return [part, section.name];
    }
    return [undefined, undefined];
  }

  private stretch(part: PartRecipe | undefined, edge: Stretch['edge']): Stretch {
    return { piece: this.name, make: this.make, part: part?.name ?? '', edge };
  }
}

const ARMHOLES: readonly string[] = [...new Set(Object.values(armholes).map(({ rows }) => rows))];

/** Stitches that are bound off or cast on at once in the first pair of rows of a section; 0 where none are. */
export function levelStitches(part: PartRecipe, section: string, edge: Edge): number {
  const found = part.sections.find(({ name }) => name === section);
  return (found?.shaping ?? [])
    .flatMap((s) => ((s.kind === 'bind off' || s.kind === 'cast on') && s.edge === edge ? s.groups : []))
    .reduce((sum, { row, stitches }) => sum + (row <= 2 ? stitches : 0), 0);
}
