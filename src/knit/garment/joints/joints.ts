import type { Joint, Line, SeamWay } from '../../making-up/joint.ts';
import type { Edge, Recipe } from '../../piece/recipe.ts';
import { type ArmholeKind, type Design, garmentKinds } from '../design.ts';
import { type BandLines, bandJoints, closingsOf, freeBandEdges } from './band-joints.ts';
import { PanelLines, turnedRound, type Underarm, type Worn } from './panel-lines.ts';
import { SleeveLines } from './sleeve-lines.ts';

/** What a draft knows of its edges beside its recipes. */
export interface Sewn {
  readonly armhole: ArmholeKind;
  readonly isOpen: boolean;
  readonly isTopDown: boolean;
  /** stitches of the neck that are bound off with the shoulders: of the back, of the front (half of it where it is open); 0 where the neck is shaped */
  readonly neck: { readonly back: number; readonly front: number };
  /** how much longer a set-in cap is than its armhole, in hundredths */
  readonly capEase: number;
}

/** The making up of a drafted garment, stated in its order. Each edge of each of its pieces is used or left free. */
export function jointsOf(design: Design, recipes: readonly Recipe[], neck: Sewn['neck']): readonly Joint[] {
  return new Statement(recipes, {
    armhole: design.armhole,
    isOpen: garmentKinds[design.kind].open,
    isTopDown: design.sleeve.direction === 'top down',
    neck,
    capEase: design.armhole === 'set-in' ? design.sleeve.capEase : 0,
  }).joints();
}

const WORN = ['right', 'left'] as const;

class Statement {
  private readonly back: PanelLines;
  private readonly sleeves: Readonly<Record<Worn, SleeveLines>> | undefined;
  private readonly fronts: Readonly<Record<Worn, PanelLines>>;
  private readonly bands: readonly Recipe[];
  private readonly held: boolean;

  constructor(
    recipes: readonly Recipe[],
    private readonly sewn: Sewn,
  ) {
    const [back, front] = recipes as readonly [Recipe, Recipe];
    const half = (make: number) => new PanelLines(front, make, sewn.isOpen, sewn.neck.front);
    this.back = new PanelLines(back, 1, false, sewn.neck.back);
    // the first of two fronts is the left one as worn
    this.fronts = { left: half(1), right: sewn.isOpen ? half(2) : half(1) };
    const sleeve = recipes.find(({ role }) => role === 'sleeve');
    const own = (make: number) => sleeve && new SleeveLines(sleeve, make, sewn.isTopDown);
    const [left, right] = [own(1), own(2)];
    this.sleeves = left && right && { left, right };
    this.bands = recipes.filter(({ parts }) => parts[0] && 'pickUp' in parts[0].from);
    this.held = front.parts.some(({ end }) => end === 'hold') && back.parts.some(({ end }) => end === 'hold');
  }

  joints(): readonly Joint[] {
    const { sewn } = this;
    // a band worked in rows round a closed neck wants one seam open: of a raglan the left one at the back
    const later: Worn | undefined = !sewn.isOpen && this.neckband() ? 'left' : undefined;
    const isRaglan = sewn.armhole === 'raglan';
    const lines: BandLines = this.bandLines();
    const before = isRaglan ? this.raglans(later) : this.shoulders(later);
    return [
      ...before,
      ...bandJoints(this.bands, lines, 'neck'),
      ...(later === undefined ? [] : isRaglan ? this.lastRaglan() : [this.shoulder(later)]),
      ...closingsOf(this.bands, 'neckband', later !== undefined),
      ...bandJoints(this.bands, lines, 'rest'),
      ...(isRaglan ? [] : this.settings()),
      ...WORN.map((worn) => this.side(worn)),
      ...(this.sleeves ? WORN.map((worn) => this.sleeveSeam(worn)) : []),
      ...closingsOf(this.bands, 'armhole band', true),
      ...this.free(),
      ...freeBandEdges(this.bands, sewn.isOpen),
    ];
  }

  private neckband = () => this.bands.find(({ role }) => role === 'neckband');

  private shoulders(later: Worn | undefined): Joint[] {
    return WORN.filter((worn) => worn !== later).map((worn) => this.shoulder(worn));
  }

  private shoulder(worn: Worn): Joint {
    const a = this.fronts[worn].shoulder(atFront[worn]);
    const how: SeamWay = this.held ? 'three-needle' : 'mattress';
    return { kind: 'seam', of: 'shoulder', a, b: this.back.shoulder(worn), how };
  }

  private side(worn: Worn): Joint {
    const a = this.fronts[worn].side(atFront[worn]);
    return { kind: 'seam', of: 'side', a, b: this.back.side(worn), how: 'mattress' };
  }

  private sleeveSeam(worn: Worn): Joint {
    const sleeve = this.sleeves?.[worn];
    const [a, b] = [sleeve?.seam('right') ?? [], sleeve?.seam('left') ?? []];
    return { kind: 'seam', of: 'sleeve', a, b, how: 'mattress' };
  }

  /** Front and back of one raglan line each; the left one at the back comes last where a band is worked in rows. */
  private raglans(later: Worn | undefined): Joint[] {
    const { sleeves } = this;
    if (!sleeves) return [];
    return [
      ...this.raglan('left', 'front'),
      ...this.raglan('right', 'front'),
      ...this.raglan('right', 'back'),
      ...(later === undefined ? this.lastRaglan() : []),
    ];
  }

  private lastRaglan = (): Joint[] => this.raglan('left', 'back');

  private raglan(worn: Worn, panel: 'front' | 'back'): Joint[] {
    const sleeve = this.sleeves?.[worn];
    if (!sleeve) return [];
    const { body, outer, edge } = this.meeting(worn, panel);
    const pair = underarms(sleeve.underarm(edge), body.underarm(outer));
    const whole = pair.length === 0;
    return [
      {
        kind: 'seam',
        of: 'raglan',
        a: sleeve.cap(edge, whole),
        b: body.armhole(outer, whole),
        how: 'mattress',
      },
      ...pair,
    ];
  }

  /** Which edges of sleeve and panel are sewn together. Back and left arm, front and right arm: the sleeve's right edge. */
  private meeting(worn: Worn, panel: 'front' | 'back'): { body: PanelLines; outer: Edge; edge: Edge } {
    return {
      body: panel === 'back' ? this.back : this.fronts[worn],
      outer: panel === 'back' ? worn : atFront[worn],
      edge: (panel === 'back') === (worn === 'left') ? 'right' : 'left',
    };
  }

  private settings(): Joint[] {
    const { sleeves } = this;
    return sleeves ? WORN.flatMap((worn) => this.setIn(worn, sleeves[worn])) : [];
  }

  private setIn(worn: Worn, sleeve: SleeveLines): Joint[] {
    const [right, left] = worn === 'left' ? (['back', 'front'] as const) : (['front', 'back'] as const);
    const [first, last] = [this.meeting(worn, right), this.meeting(worn, left)];
    const indented = this.sewn.armhole === 'indented';
    const pairs = indented
      ? []
      : [first, last].map(({ body, outer, edge }) => underarms(sleeve.underarm(edge), body.underarm(outer)));
    const whole = !pairs.every(({ length }) => length > 0) || pairs.length === 0;
    const ease = this.sewn.capEase;
    return [
      {
        kind: 'seam',
        of: 'armhole',
        a: [...sleeve.cap('right', whole), ...sleeve.top(), ...turnedRound(sleeve.cap('left', whole))],
        b: [...first.body.armhole(first.outer, whole), ...turnedRound(last.body.armhole(last.outer, whole))],
        how: 'mattress',
        ...(ease === 0 ? {} : { ease }),
      },
      ...(whole ? [] : pairs.flat()),
    ];
  }

  /** What no seam and no band takes. */
  private free(): Joint[] {
    const { back, fronts, sewn, sleeves } = this;
    const hems = [back.hem(), fronts.left.hem(), ...(sewn.isOpen ? [fronts.right.hem()] : [])];
    const free: Joint[] = hems.map((line) => ({ kind: 'left free', line, as: 'hem' }));
    if (sleeves)
      free.push(
        ...WORN.map((worn): Joint => ({ kind: 'left free', line: sleeves[worn].cuff(), as: 'cuff' })),
      );
    const taken = new Set(this.bands.flatMap(alongOf));
    const lines = this.bandLines();
    for (const [along, line] of Object.entries(lines)) {
      if (line.length === 0 || taken.has(along) || !this.isEdge(along, taken)) continue;
      free.push({ kind: 'left free', line, as: along.includes('edge') ? 'front' : 'neck' });
    }
    if (!sleeves && ![...taken].some((along) => along.includes('armhole')))
      free.push(
        ...WORN.map((worn): Joint => ({ kind: 'left free', line: this.wholeArmhole(worn), as: 'armhole' })),
      );
    return free;
  }

  /** Names that stand for the same edge in other garments are no edges of this one. */
  private isEdge(along: string, taken: ReadonlySet<string>): boolean {
    if (along.includes('armhole')) return false;
    const isWhole = along === 'front neck';
    if (!isWhole && along !== 'point of the V' && along !== 'middle of the front neck') return true;
    if (isWhole) return false;
    // a held or bound-off middle has two names
    return along === 'middle of the front neck' && !taken.has('point of the V');
  }

  private wholeArmhole = (worn: Worn): Line => [
    ...this.fronts[worn].armhole(atFront[worn], true),
    ...turnedRound(this.back.armhole(worn, true)),
  ];

  /** Every edge that a band is picked up along, by the words of the draft, in the order in which it is picked up. */
  private bandLines(): BandLines {
    const { back, fronts, sleeves, sewn } = this;
    const tip = sewn.armhole === 'raglan';
    const isFlat = !sewn.isOpen && sewn.neck.front > 0;
    const sleeveTop = (worn: Worn): Line => (tip && sleeves ? sleeves[worn].top() : []);
    const [left, right] = [fronts.left, fronts.right];
    return {
      'left front neck': isFlat ? [] : turnedRound(left.neckSide('right', tip)),
      'right front neck': isFlat ? [] : right.neckSide('left', tip),
      'point of the V': left.middle(),
      'middle of the front neck': left.middle(),
      'front neck': isFlat ? left.wholeNeck() : [],
      'back neck': back.wholeNeck(),
      'left sleeve top': sleeveTop('left'),
      'right sleeve top': sleeveTop('right'),
      'left front edge': sewn.isOpen ? turnedRound(left.front('right')) : [],
      'right front edge': sewn.isOpen ? right.front('left') : [],
      'front armhole': sewn.armhole === 'raglan' ? [] : left.armhole('right', true),
      'back armhole': sewn.armhole === 'raglan' ? [] : turnedRound(back.armhole('left', true)),
      'right front armhole': turnedRound(right.armhole('left', true)),
      'right back armhole': back.armhole('right', true),
    };
  }
}

const alongOf = ({ parts }: Recipe): readonly string[] =>
  parts.flatMap(({ from }) => ('pickUp' in from ? from.pickUp.map(({ along }) => along) : []));

/** The edge of a front, right side facing, at the wearer's side. */
const atFront = { left: 'right', right: 'left' } as const;

/** Both have as much bound off at the underarm, or nothing there is sewn apart. */
const underarms = (a: Underarm | undefined, b: Underarm | undefined): Joint[] =>
  a && a.stitches === b?.stitches
    ? [{ kind: 'seam', of: 'underarm', a: a.line, b: b.line, how: 'mattress' }]
    : [];
