import './size-table.css';
import type { Ref } from 'preact';
import type { DraftedSize } from '../app/garments/in-sizes.ts';
import { type GradedPiece, gradedPiece } from '../knit/garment/grade.ts';
import type { WorkedSize } from '../knit/written/work-size.ts';
import { Notice } from '../ui/notice/notice.tsx';
import { saysFault } from '../words/fault.ts';
import { saysLength, saysYarnLength } from '../words/measures.ts';
import { say, sayIfKnown } from '../words/say.ts';

const measures = [
  ['draft.made up chest', 'chest'],
  ['draft.made up length', 'length'],
  ['draft.made up nape to cuff', 'napeToCuff'],
  ['draft.made up upper arm', 'upperArm'],
  ['draft.made up wrist', 'wrist'],
  ['draft.made up neck', 'neckWithBand'],
] as const;

const figures = [
  ['draft.castOn', (p: GradedPiece) => p.castOn],
  ['draft.rowsInAllOf', (p: GradedPiece) => p.rows],
  ['draft.widest', (p: GradedPiece) => p.widest],
  ['draft.increases', (p: GradedPiece) => p.shapings.increases],
  ['draft.decreases', (p: GradedPiece) => p.shapings.decreases],
  ['draft.boundOff', (p: GradedPiece) => p.shapings.boundOff],
] as const;

type Line = readonly [string, (size: WorkedSize) => string | number | undefined];

interface SizeTableProps {
  readonly drafted: readonly DraftedSize[];
  /** where it stands, for who is to be brought to it */
  readonly there?: Ref<HTMLElement>;
}

/**
 * Finished measures, stitches, rows and yarn of every size, and all that the drafts warn of. Needs the catalogue 'draft'
 * and the faults.
 */
export function SizeTable({ drafted, there = null }: SizeTableProps) {
  const sizes = drafted.flatMap(({ worked }) => (worked.ok ? [worked.value] : []));
  const pieces = [
    ...new Set(sizes.flatMap(({ garment }) => garment.pieces.map(({ recipe }) => recipe.name))),
  ];
  return (
    <div class="no-print">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by the keyboard too */}
      <section ref={there} class="size-scroll" tabIndex={0} aria-label={say('draft.sizes')}>
        <table class="size-table">
          <thead>
            <tr>
              <th scope="col">{say('draft.size')}</th>
              {sizes.map(({ size }) => (
                <th scope="col" key={size}>
                  {size}
                </th>
              ))}
            </tr>
          </thead>
          <Lines sizes={sizes} title={say('draft.madeUp')} lines={[...measuresOf(), yarn()]} />
          {pieces.map((name) => (
            <Lines key={name} sizes={sizes} title={sayIfKnown('draft', name) ?? name} lines={linesOf(name)} />
          ))}
        </table>
      </section>
      <Warnings drafted={drafted} />
    </div>
  );
}

const measuresOf = () =>
  measures.map(
    ([key, name]): Line => [
      say(key),
      ({ finished }) => {
        const mm = finished[name];
        return mm === undefined ? undefined : saysLength(mm);
      },
    ],
  );

const yarn = (): Line => [say('draft.yarnTotal'), (size) => saysYarnLength(size.yarn.metresToBuy)];

const linesOf = (name: string) =>
  figures.map(
    ([key, of]): Line => [
      say(key),
      ({ garment }) => {
        const own = garment.pieces.find(({ recipe }) => recipe.name === name);
        return own && of(gradedPiece(own.recipe, own.makes[0]?.parts ?? []));
      },
    ],
  );

interface LinesProps {
  readonly title: string;
  readonly sizes: readonly WorkedSize[];
  readonly lines: readonly Line[];
}

const Lines = ({ title, sizes, lines }: LinesProps) => (
  <tbody>
    <tr>
      <th scope="rowgroup" colSpan={sizes.length + 1}>
        <span>{title}</span>
      </th>
    </tr>
    {lines.map(([label, of]) => (
      <tr key={label}>
        <th scope="row">{label}</th>
        {sizes.map((size) => (
          <td key={size.size}>{of(size) ?? '–'}</td>
        ))}
      </tr>
    ))}
  </tbody>
);

/** Every caution of every size, also those that she keeps, and why a size cannot be drafted. */
function Warnings({ drafted }: { readonly drafted: readonly DraftedSize[] }) {
  const lines = drafted.flatMap(({ size, worked }) =>
    worked.ok
      ? worked.value.warnings.map((warning) => ({
          size,
          text: `${saysFault(warning)}${warning.overruled ? ` ${say('draft.keptSo')}` : ''}`,
        }))
      : worked.faults.map((fault) => ({ size, text: `${say('draft.notInSize')} ${saysFault(fault)}` })),
  );
  if (lines.length === 0) return null;
  return (
    <Notice kind="note" title={say('draft.sizesWarn')}>
      {lines.map(({ size, text }, i) => (
        <p key={i}>
          <strong>{size}</strong>: {text}
        </p>
      ))}
    </Notice>
  );
}
