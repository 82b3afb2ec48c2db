import type { Edge } from '../piece/recipe.ts';
import {
  bandJoints,
  closingsOf,
  type EdgeName,
  freeBandEdges,
  lapJoints,
  placketJoints,
} from './band-joints.ts';
import type { FreeEdge, Joint, Line, SeamWay } from './joint.ts';
import {
  atFront,
  type PanelEdges,
  type SleeveEdges,
  turnedRound,
  type Underarm,
  type Worn,
} from './piece-edges.ts';
import type { Parted, Rows, Sewn } from './sewn.ts';
import { type NeckSeam, RAGLAN_LINES, waitingSeam } from './waiting-seam.ts';

/**
 * The making up in its order, as a finisher goes about it: shoulders, bands, sleeves while the sides are open, sides.
 * Each edge of each piece is used or left free, as far as the pieces tell what they are.
 */
export const stated = (sewn: Sewn): readonly Joint[] => new Statement(sewn).joints();

/** the right shoulder is sewn first: the left one is where a band usually begins */
const WORN = ['right', 'left'] as const;
/** of two makes the first is the left one */
const AS_KNITTED = ['left', 'right'] as const;

class Statement {
  constructor(private readonly sewn: Sewn) {}

  joints(): readonly Joint[] {
    const { back, bands, fronts, isOpen, isRaglan, laps, placket } = this.sewn;
    const hasOpening = this.sewn.opening !== undefined || this.sewn.raglanOpening !== undefined;
    const collar = bands.find(({ role }) => role === 'neckband');
    // a band worked in rows round a closed neck wants the seam open at which it is begun
    const isRound =
      !isOpen &&
      !hasOpening &&
      laps === undefined &&
      placket === undefined &&
      back !== undefined &&
      fronts !== undefined &&
      collar !== undefined;
    const later = isRound ? waitingSeam(collar) : undefined;
    const lines = this.edges();
    return [
      ...(isRaglan
        ? this.raglans(later)
        : WORN.filter((w) => w !== later?.worn && !this.isLapped(w)).flatMap((w) => this.shoulder(w))),
      ...bandJoints(bands, lines, 'neck'),
      ...(later === undefined ? [] : isRaglan ? this.raglan(later) : this.shoulder(later.worn)),
      ...closingsOf(bands, 'neckband', isRound),
      // a band along an armhole goes through both layers
      ...bandJoints(bands, lines, 'shoulder'),
      ...(laps === undefined ? [] : lapJoints(bands, laps, back?.shoulder('left') ?? [])),
      ...bandJoints(bands, lines, 'rest'),
      ...(placket === undefined ? [] : placketJoints(bands, placket, fronts?.left.middle() ?? [])),
      ...(isRaglan ? [] : AS_KNITTED.flatMap((worn) => this.setIn(worn))),
      ...AS_KNITTED.flatMap((worn) => this.side(worn)),
      ...AS_KNITTED.flatMap((worn) => this.sleeveSeam(worn)),
      ...closingsOf(bands, 'armhole band', true),
      ...this.free(lines),
      ...freeBandEdges(bands, { isOpen, hasOpening, laps, hasPlacket: placket !== undefined }),
    ];
  }

  private isLapped = (worn: Worn): boolean =>
    this.sewn.laps === 'both' || (this.sewn.laps === 'left' && worn === 'left');

  private shoulder(worn: Worn): Joint[] {
    const { back, fronts, shoulders } = this.sewn;
    if (!back || !fronts) return [];
    return seam('shoulder', fronts[worn].shoulder(atFront[worn]), back.shoulder(worn), shoulders);
  }

  private side(worn: Worn): Joint[] {
    const { back, fronts } = this.sewn;
    return back && fronts ? seam('side', fronts[worn].side(atFront[worn]), back.side(worn)) : [];
  }

  private sleeveSeam(worn: Worn): Joint[] {
    const sleeve = this.sewn.sleeves?.[worn];
    return sleeve ? seam('sleeve', sleeve.seam('right'), sleeve.seam('left')) : [];
  }

  /** All four lines, but for the one that waits for a band. */
  private raglans(later: NeckSeam | undefined): Joint[] {
    return RAGLAN_LINES.filter(({ worn, panel }) => worn !== later?.worn || panel !== later.panel).flatMap(
      (line) => this.raglan(line),
    );
  }

  private raglan({ worn, panel }: NeckSeam): Joint[] {
    const found = this.meeting(worn, panel);
    if (!found) return [];
    const { sleeve, body, outer, edge } = found;
    const pair = underarms(sleeve.underarm(edge), body.underarm(outer));
    const whole = pair.length === 0;
    const [a, b] = [sleeve.cap(edge, whole), body.armhole(outer, whole)];
    const parted = worn === 'left' && panel === 'back' ? this.sewn.raglanOpening : undefined;
    const joints = parted
      ? seam('raglan', along(a, parted.sleeve.sewn), along(b, parted.back.sewn))
      : seam('raglan', a, b);
    return [...joints, ...pair];
  }

  /** Which edges of sleeve and panel are sewn together. Back and left arm, front and right arm: the sleeve's right edge. */
  private meeting(worn: Worn, panel: 'front' | 'back'): Meeting | undefined {
    const { back, fronts, sleeves } = this.sewn;
    const body = panel === 'back' ? back : fronts?.[worn];
    if (!body || !sleeves) return undefined;
    return {
      sleeve: sleeves[worn],
      body,
      outer: panel === 'back' ? worn : atFront[worn],
      edge: (panel === 'back') === (worn === 'left') ? 'right' : 'left',
    };
  }

  private setIn(worn: Worn): Joint[] {
    const order = worn === 'left' ? (['back', 'front'] as const) : (['front', 'back'] as const);
    const [first, last] = order.map((panel) => this.meeting(worn, panel));
    if (!first || !last) return [];
    const { isIndented, capEase } = this.sewn;
    const { sleeve } = first;
    const pairs = isIndented
      ? []
      : [first, last].map(({ body, outer, edge }) => underarms(sleeve.underarm(edge), body.underarm(outer)));
    const whole = pairs.length === 0 || pairs.some(({ length }) => length === 0);
    const a = [...sleeve.cap('right', whole), ...sleeve.top(), ...turnedRound(sleeve.cap('left', whole))];
    const b = [
      ...first.body.armhole(first.outer, whole),
      ...turnedRound(last.body.armhole(last.outer, whole)),
    ];
    const joints = seam('armhole', a, b).map((one) => (capEase === 0 ? one : { ...one, ease: capEase }));
    return [...joints, ...(whole ? [] : pairs.flat())];
  }

  /** Every edge that a band may be picked up along, from the right to the left with the right side facing. */
  private edges(): Readonly<Record<EdgeName, Line>> {
    const { back, fronts, isOpen, isFlatFront, isRaglan, placket, sleeves } = this.sewn;
    const sleeveTop = (worn: Worn): Line => (isRaglan && sleeves ? sleeves[worn].top() : []);
    const neck = (worn: Worn): Line =>
      !fronts || isFlatFront ? [] : fronts[worn].neckSide(atFront[worn], isRaglan);
    const isParted = isOpen || placket !== undefined;
    const front = (worn: Worn): Line => (fronts && isParted ? fronts[worn].front(atFront[worn]) : []);
    const armhole = (worn: Worn): Line => fronts?.[worn].armhole(atFront[worn], true) ?? [];
    const lapped = (worn: Worn, panel: PanelEdges | undefined, outer: Edge): Line =>
      this.isLapped(worn) ? (panel?.shoulder(outer) ?? []) : [];
    return {
      'left front neck': turnedRound(neck('left')),
      'middle of the front neck': fronts && !isParted && !isFlatFront ? fronts.left.middle() : [],
      'right front neck': neck('right'),
      'front neck': fronts && isFlatFront ? fronts.left.wholeNeck() : [],
      ...this.backNeck(),
      // each is walked from the right to the left, right side facing
      'left front shoulder': lapped('left', fronts?.left, atFront.left),
      'right front shoulder': turnedRound(lapped('right', fronts?.right, atFront.right)),
      'left back shoulder': turnedRound(lapped('left', back, 'left')),
      'right back shoulder': lapped('right', back, 'right'),
      'left sleeve top': sleeveTop('left'),
      'right sleeve top': sleeveTop('right'),
      'left front edge': turnedRound(front('left')),
      'right front edge': front('right'),
      'left front armhole': armhole('left'),
      'left back armhole': turnedRound(back?.armhole('left', true) ?? []),
      'right front armhole': turnedRound(armhole('right')),
      'right back armhole': back?.armhole('right', true) ?? [],
    };
  }

  /** In two halves where the back is parted, in three where a band says that its middle rests. */
  private backNeck(): Readonly<
    Record<'back neck' | 'left back neck' | 'middle of the back neck' | 'right back neck', Line>
  > {
    const { back, opening, bands } = this.sewn;
    const none = {
      'back neck': [],
      'left back neck': [],
      'middle of the back neck': [],
      'right back neck': [],
    };
    if (opening)
      return { ...none, 'left back neck': opening.left, 'right back neck': turnedRound(opening.right) };
    const isHeld = bands.some(({ along }) => along.some(({ edge }) => edge === 'middle of the back neck'));
    if (!back || !isHeld) return { ...none, 'back neck': back?.wholeNeck() ?? [] };
    return {
      ...none,
      'left back neck': back.neckSide('left', false),
      'middle of the back neck': back.middle(),
      'right back neck': turnedRound(back.neckSide('right', false)),
    };
  }

  /** What no seam and no band takes. */
  private free(lines: Readonly<Record<EdgeName, Line>>): Joint[] {
    const { back, fronts, isOpen, opening, sleeves, bands } = this.sewn;
    const taken = new Set(bands.flatMap(({ along }) => along.map(({ edge }) => edge)));
    const hasArmholes = !sleeves && !bands.some(({ role }) => role === 'armhole band');
    const open = Object.entries(lines).filter(
      ([name]) =>
        !taken.has(name as EdgeName) &&
        !name.endsWith('shoulder') &&
        (hasArmholes || !name.includes('armhole')),
    );
    return [
      ...(back ? free('hem', back.hem()) : []),
      ...(fronts ? free('hem', fronts.left.hem()) : []),
      ...(fronts && isOpen ? free('hem', fronts.right.hem()) : []),
      ...(sleeves ? AS_KNITTED.flatMap((worn) => free('cuff', sleeves[worn].cuff())) : []),
      ...open.flatMap(([name, line]) => free(openAs(name), line)),
      ...(opening ? free('opening', opening.edges) : []),
      ...this.openRaglan(),
    ];
  }

  /** The top of a raglan's left back line, where it is left open: the back's edge, then the sleeve's. */
  private openRaglan(): Joint[] {
    const { raglanOpening } = this.sewn;
    const found = raglanOpening && this.meeting('left', 'back');
    if (!found) return [];
    const top = (line: Line, { open }: Parted): Line =>
      line.slice(-1).map(({ level: _level, ...stretch }) => ({ ...stretch, rows: open }));
    return [
      ...free('opening', top(found.body.armhole(found.outer, true), raglanOpening.back)),
      ...free('opening', top(found.sleeve.cap(found.edge, true), raglanOpening.sleeve)),
    ];
  }
}

/** The line, its last stretch along these rows alone: of those that it lies along itself, where it is told by them. */
const along = (line: Line, rows: Rows): Line =>
  line.map((stretch, i) =>
    i === line.length - 1 ? { ...stretch, rows: within(stretch.rows, rows) } : stretch,
  );

const within = (own: Rows = { first: 1, last: Number.POSITIVE_INFINITY }, { first, last }: Rows): Rows => ({
  first: Math.max(own.first, first),
  last: Math.min(own.last, last),
});

interface Meeting {
  readonly sleeve: SleeveEdges;
  readonly body: PanelEdges;
  readonly outer: Edge;
  readonly edge: Edge;
}

const openAs = (name: string): FreeEdge =>
  name.includes('armhole') ? 'armhole' : name.endsWith('edge') ? 'front' : 'neck';

const seam = (
  of: Extract<Joint, { kind: 'seam' }>['of'],
  a: Line,
  b: Line,
  how: SeamWay = 'mattress',
): Extract<Joint, { kind: 'seam' }>[] =>
  a.length === 0 || b.length === 0 ? [] : [{ kind: 'seam', of, a, b, how }];

const free = (as: FreeEdge, line: Line): Joint[] =>
  line.length === 0 ? [] : [{ kind: 'left free', line, as }];

/** Both have as much bound off at the underarm, or nothing there is sewn apart. */
const underarms = (a: Underarm | undefined, b: Underarm | undefined): Joint[] =>
  a && a.stitches === b?.stitches ? seam('underarm', a.line, b.line) : [];
