import type { Line, Stretch } from '../../making-up/joint.ts';
import { type SleeveEdges, turnedRound, type Underarm } from '../../making-up/piece-edges.ts';
import type { Edge, PartRecipe, Recipe } from '../../piece/recipe.ts';
import { sleeveTops } from '../kinds/sleeve-tops.ts';
import { levelStitches } from './panel-lines.ts';

const CAPS: readonly string[] = [...new Set(Object.values(sleeveTops).map(({ rows }) => rows))];

/** The edges of a drafted sleeve, by the names that the draft gives its sections. */
export class SleeveLines implements SleeveEdges {
  private readonly part: PartRecipe | undefined;

  constructor(
    private readonly recipe: Recipe,
    private readonly make: number,
    private readonly isTopDown: boolean,
  ) {
    this.part = recipe.parts[0];
  }

  cuff = (): Line => [this.stretch(this.isTopDown ? 'top' : 'start')];

  /** From the right edge to the left. */
  top = (): Line => [this.stretch(this.isTopDown ? 'start' : 'top')];

  /** The sleeve's own seam. */
  seam(edge: Edge): Line {
    const sections = this.names().filter((name) => !CAPS.includes(name));
    const own: Stretch = { ...this.stretch(edge), sections };
    return this.up([this.isTopDown && this.level(edge) > 0 ? { ...own, level: 'without' } : own]);
  }

  /** What is bound off (or cast on) at the underarm; undefined where nothing is. */
  underarm(edge: Edge): Underarm | undefined {
    const stitches = this.level(edge);
    if (stitches === 0) return undefined;
    const own: Stretch = { ...this.stretch(edge), sections: [this.levelIn()], level: 'only' };
    return { line: this.up([own]), stitches };
  }

  /** One side of the cap, of the raglan, or what is sewn into an indent; nothing of a straight top. */
  cap(edge: Edge, whole: boolean): Line {
    const sections = this.names().filter((name) => CAPS.includes(name));
    if (sections.length === 0) return [];
    const own: Stretch = { ...this.stretch(edge), sections };
    if (this.isTopDown) return [...(whole ? (this.underarm(edge)?.line ?? []) : []), ...this.up([own])];
    return [!whole && this.level(edge) > 0 ? { ...own, level: 'without' } : own];
  }

  private names = (): readonly string[] => this.part?.sections.map(({ name }) => name) ?? [];

  private up = (line: Line): Line => (this.isTopDown ? turnedRound(line) : line);

  /** The section with whose first rows the underarm is bound off, or cast on from the top down. */
  private levelIn(): string {
    const isCap = (name: string) => CAPS.includes(name);
    const names = this.names();
    return (this.isTopDown ? names.find((name) => !isCap(name)) : names.find(isCap)) ?? '';
  }

  private level(edge: Edge): number {
    const hasCap = this.names().some((name) => CAPS.includes(name));
    return this.part && hasCap ? levelStitches(this.part, this.levelIn(), edge) : 0;
  }

  private stretch(edge: Stretch['edge']): Stretch {
    return { piece: this.recipe.name, make: this.make, part: this.part?.name ?? '', edge };
  }
}
