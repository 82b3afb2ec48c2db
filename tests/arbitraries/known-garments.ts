import fc from 'fast-check';
import { bodyTables } from '../../src/knit/garment/bodies.ts';
import { demoGarment, demoNames } from '../../src/knit/garment/demo.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { gardenIsland, sleeveless } from '../outside/patterns/red-cross.ts';
import { shell } from '../outside/patterns/star-201.ts';

type Pieces = readonly Recipe[];

/** Made once, when it is drawn first. */
function once(make: () => Pieces): () => Pieces {
  let made: Pieces | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** A pattern of our own with a row that nobody understands, two lengths, stitches from a holder. */
const scarf = (gauge: string) => `${gauge}
SCARF
With 4 mm needles, cast on 44 sts.
Work in k2, p2 rib for 8 cm, ending with a WS row.
Row 1 (RS): knit the wishes of the season into it as you please.
Work in st st until piece measures 38 cm.
Bind off all sts.
`;

const read = (text: string): Pieces => readPattern(text).pieces.map(({ recipe }) => recipe);

const drafted = (kind: 'pullover' | 'cardigan', armhole: 'set-in' | 'drop' | 'raglan'): Pieces => {
  const body = Object.values(bodyTables).flat()[4]?.body;
  if (body === undefined) throw new Error('no body');
  const wish = { kind, armhole, neck: 'round', fit: 'standard' } as const;
  const made = draft(startingDesign(wish, body, 'stocking', { stitches: 20, rows: 28 }));
  if (!made.ok) throw new Error(made.faults[0]?.code);
  return made.value.recipes;
};

const known: readonly (() => Pieces)[] = [
  once(() => read(scarf(''))),
  once(() => read(scarf('Gauge: 22 sts and 30 rows = 10 cm.'))),
  once(() => read(shell.text)),
  once(() => read(sleeveless.text)),
  once(() => read(gardenIsland.text)),
  once(() => sampleGarment.pieces),
  ...demoNames.map((name) =>
    once(() => {
      const made = demoGarment(name);
      return made.ok ? made.value.pieces : [];
    }),
  ),
  once(() => drafted('pullover', 'set-in')),
  once(() => drafted('pullover', 'raglan')),
];

/** Garments as the reader and the drafter make them. */
export const knownGarment = (): fc.Arbitrary<Pieces> => fc.constantFrom(...known).map((make) => make());
