import fc from 'fast-check';
import type { FabricName } from '../../src/knit/fabric.ts';
import { bodyTables, type SizedBody } from '../../src/knit/garment/bodies.ts';
import { type Body, type Design, holesInFronts } from '../../src/knit/garment/design.ts';
import { fits } from '../../src/knit/garment/ease.ts';
import { armholeKinds } from '../../src/knit/garment/kinds/armholes.ts';
import { garmentKinds } from '../../src/knit/garment/kinds/garments.ts';
import { neckOpenings } from '../../src/knit/garment/kinds/neck-openings.ts';
import { neckMiddles, neckShapes } from '../../src/knit/garment/kinds/necks.ts';
import { shoulderEnds } from '../../src/knit/garment/kinds/shoulders.ts';
import { silhouettes } from '../../src/knit/garment/kinds/silhouettes.ts';
import { sleeveShapes } from '../../src/knit/garment/kinds/sleeve-shapes.ts';
import { simpleDesign, startingDesign } from '../../src/knit/garment/start.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import { turnWays } from '../../src/knit/piece/turn-way.ts';

const sized: readonly SizedBody[] = Object.values(bodyTables).flat();

/** A body of no table: one of a table with every measure up to an eighth smaller or larger. */
export const someBody = (): fc.Arbitrary<Body> =>
  fc
    .tuple(
      fc.constantFrom(...sized),
      fc.array(fc.integer({ min: -125, max: 125 }), { minLength: 11, maxLength: 11 }),
    )
    .map(([{ body }, shares]) => {
      const names = Object.keys(body) as (keyof Body)[];
      const changed = names.map(
        (name, i) => [name, Math.round(body[name] * (10 + (shares[i] ?? 0) / 100)) / 10] as const,
      );
      return Object.fromEntries(changed) as unknown as Body;
    });

/** From the finest sock yarn to the thickest roving; rows 1.1 to 2.1 times the stitches. */
export const someGauge = (): fc.Arbitrary<Gauge> =>
  fc
    .tuple(fc.integer({ min: 24, max: 160 }), fc.integer({ min: 110, max: 210 }))
    .map(([quarters, ratio]) => ({ stitches: quarters / 4, rows: (quarters / 4) * (ratio / 100) }));

const ribs: readonly FabricName[] = ['rib 2x2', 'rib 1x1', 'rib 1x1 matched', 'garter', 'moss'];
const panels: readonly FabricName[] = ['stocking', 'stocking', 'garter', 'reverse stocking', 'moss'];
const some = <T>(...of: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...of);
const mm = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 2, max: max * 2 }).map((n) => n / 2);
const border = (): fc.Arbitrary<{ fabric: FabricName; heightMm: number }> =>
  fc.record({ fabric: some(...ribs), heightMm: fc.oneof(fc.constant(0), mm(10, 90)) });

/** Any garment that somebody might wish for: most can be knitted, some cannot. */
export const someDesign = (): fc.Arbitrary<Design> =>
  fc
    .record({
      body: someBody(),
      gauge: someGauge(),
      kind: some(...(Object.keys(garmentKinds) as (keyof typeof garmentKinds)[])),
      armhole: some(...armholeKinds),
      neck: some(...neckShapes),
      fit: some(...fits),
      fabric: some(...panels),
      silhouette: some(...silhouettes),
      sleeve: some(...sleeveShapes),
      direction: some('cuff up' as const, 'top down' as const),
      capEase: some(0, 0, 2, 4),
      hem: border(),
      cuff: border(),
      neckband: border(),
      bands: border(),
      count: some('fitted' as const, 'as body' as const),
      mitre: some('every row' as const, 'every second row' as const),
      buttons: fc.integer({ min: 0, max: 10 }),
      tapers: some('blended' as const, 'blended' as const, 'together' as const),
      shoulder: some('steps' as const, 'steps' as const, 'short rows' as const),
      shoulderEnd: some(...shoulderEnds),
      drop: fc.oneof(fc.constant(0), mm(5, 45)),
      shares: fc.array(fc.integer({ min: 70, max: 140 }), { minLength: 5, maxLength: 5 }),
      flatNeck: fc.boolean(),
      byRules: fc.boolean(),
      seamStitch: fc.boolean(),
      opening: some('none' as const, 'none' as const, ...neckOpenings),
      openingMm: mm(10, 120),
      middle: some(...neckMiddles),
      turns: fc.constantFrom(undefined, ...turnWays),
    })
    .map((r): Design => {
      // a raglan without sleeves has no shoulder
      const armhole = r.armhole === 'raglan' && !garmentKinds[r.kind].sleeves ? 'set-in' : r.armhole;
      const begun = (r.byRules ? startingDesign : simpleDesign)(
        { kind: r.kind, armhole, neck: r.neck, fit: r.fit },
        r.body,
        r.fabric,
        r.gauge,
      );
      const { opening: _begun, openingMm: _deep, ...neck } = begun.neck;
      const times = (n: number, i: number): number => Math.round(n * (r.shares[i] ?? 100)) / 100;
      return {
        ...begun,
        lengthMm: times(begun.lengthMm, 0),
        silhouette: r.silhouette,
        neck: {
          ...neck,
          ...(r.opening === 'none' ? {} : { opening: r.opening, openingMm: r.openingMm }),
          ...(r.middle === 'bind off' ? {} : { middle: r.middle }),
          widthMm: times(begun.neck.widthMm, 1),
          depthMm: times(begun.neck.depthMm, 2),
          backDepthMm: r.flatNeck ? 0 : times(begun.neck.backDepthMm, 3),
        },
        shoulderDropMm: r.drop,
        shoulder: r.shoulder,
        shoulderEnd: r.shoulderEnd,
        seamStitch: r.seamStitch,
        sleeve: { ...begun.sleeve, shape: r.sleeve, direction: r.direction, capEase: r.capEase },
        hem: { ...r.hem, count: r.hem.fabric === 'garter' || r.hem.fabric === 'moss' ? r.count : 'fitted' },
        cuff: r.cuff,
        neckband: { ...r.neckband, mitre: r.mitre },
        frontBand: { ...r.bands, heightMm: Math.min(r.bands.heightMm, 40), buttons: r.buttons },
        armholeBand: { ...begun.armholeBand, ...r.bands },
        tapers: r.tapers,
        ...(r.turns ? { turns: r.turns } : {}),
      };
    });

/** Nothing, now and then. */
const perhaps = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(of, { nil: undefined });

type Known<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

const known = <T extends object>(of: T): Known<T> =>
  Object.fromEntries(Object.entries(of).filter(([, value]) => value !== undefined)) as Known<T>;

const tenths = (n: number): number => Math.max(1, Math.round(10 * n) / 10);

/** The same with every other figure and choice that a design may hold: those that its kinds begin with, left out or otherwise. */
export const wholeDesign = (): fc.Arbitrary<Design> =>
  fc
    .record({
      design: someDesign(),
      edition: fc.constantFrom('as begun' as const, undefined, 2 as const, 3 as const),
      underarm: perhaps(mm(5, 60)),
      sleeveShare: perhaps(fc.integer({ min: 70, max: 120 })),
      endsAtWrist: perhaps(fc.boolean()),
      capTop: perhaps(mm(20, 110)),
      eases: fc.array(fc.integer({ min: -30, max: 60 }), { minLength: 7, maxLength: 7 }),
      ownEases: fc.boolean(),
      holesIn: perhaps(some(...holesInFronts)),
      buttonMm: perhaps(mm(8, 40)),
      percent: perhaps(fc.integer({ min: 80, max: 105 })),
      others: fc.dictionary(some(...ribs, 'stocking' as const), fc.tuple(mm(80, 120), mm(80, 130)), {
        maxKeys: 3,
      }),
      needles: some([4, 3.5], [4, 4], [8, 6.5], [2.25, 1.75], [12, 10]),
    })
    .map(({ design, edition, ...r }): Design => {
      const { edition: begun, underarmMm, ...rest } = design;
      const since = edition === 'as begun' ? begun : edition;
      const names = Object.keys(design.ease) as (keyof Design['ease'])[];
      const eased = names.map((name, i) => [name, design.ease[name] + (r.eases[i] ?? 0)] as const);
      const own = design.gauges[design.fabric] as Gauge;
      const swatched = Object.entries(r.others).map(([fabric, [stitches, rows]]) => [
        fabric,
        { stitches: tenths((own.stitches * stitches) / 100), rows: tenths((own.rows * rows) / 100) },
      ]);
      const others: Design['gauges'] = Object.fromEntries(swatched);
      // they are one fabric to a swatch, and a text tells a gauge to tenths
      const rib = others['rib 1x1'] ?? others['rib 1x1 matched'];
      const gauges: Design['gauges'] =
        swatched.length === 0
          ? design.gauges
          : {
              ...others,
              ...(rib && { 'rib 1x1': rib, 'rib 1x1 matched': rib }),
              [design.fabric]: { stitches: tenths(own.stitches), rows: tenths(own.rows) },
            };
      const lengthMm = r.sleeveShare && (design.body.arm * r.sleeveShare) / 100;
      return {
        ...rest,
        ...known({ edition: since, underarmMm: r.underarm ?? underarmMm }),
        ease: r.ownEases ? (Object.fromEntries(eased) as unknown as Design['ease']) : design.ease,
        sleeve: {
          ...design.sleeve,
          ...known({ lengthMm, endsAtWrist: r.endsAtWrist, capTopMm: r.capTop }),
        },
        frontBand: {
          ...design.frontBand,
          ...known({ holesIn: r.holesIn, buttonMm: r.buttonMm }),
        },
        armholeBand: { ...design.armholeBand, ...known({ percent: r.percent }) },
        gauges,
        needles: { panels: r.needles[0] ?? 4, borders: r.needles[1] ?? 4 },
      };
    });
