import type { DraftedSize } from '../../app/garments/in-sizes.ts';
import { gradedPiece } from '../../knit/garment/grade.ts';
import type { WorkedSize } from '../../knit/written/work-size.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysLength, saysYarnLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysName } from '../draft/says-name.ts';

const measures = [
  ['passOn.chest', 'chest'],
  ['passOn.long', 'length'],
  ['passOn.nape', 'napeToCuff'],
  ['passOn.arm', 'upperArm'],
  ['passOn.wrist', 'wrist'],
  ['passOn.neck', 'neckWithBand'],
] as const;

/** Finished measures, stitches, rows and yarn of every size, and all that the drafts warn of. */
export function SizeTable({ drafted }: { readonly drafted: readonly DraftedSize[] }) {
  const sizes = drafted.flatMap(({ worked }) => (worked.ok ? [worked.value] : []));
  const pieces = [
    ...new Set(sizes.flatMap(({ garment }) => garment.pieces.map(({ recipe }) => recipe.name))),
  ];
  const piece = (size: WorkedSize, name: string) => {
    const own = size.garment.pieces.find(({ recipe }) => recipe.name === name);
    return own && gradedPiece(own.recipe, own.makes[0]?.parts ?? []);
  };
  const rows: readonly (readonly [string, (size: WorkedSize) => string | number | undefined])[] = [
    ...measures.map(
      ([key, name]) =>
        [
          say(key),
          ({ finished }: WorkedSize) => {
            const mm = finished[name];
            return mm === undefined ? undefined : saysLength(mm);
          },
        ] as const,
    ),
    ...pieces.flatMap((name) => {
      const named = { piece: saysName(name) };
      return [
        [say('passOn.castOnOf', named), (size: WorkedSize) => piece(size, name)?.castOn] as const,
        [say('passOn.rowsOf', named), (size: WorkedSize) => piece(size, name)?.rows] as const,
      ];
    }),
    [say('draft.yarnTotal'), ({ yarn }) => saysYarnLength(yarn.metresToBuy)],
  ];
  return (
    <div class="no-print">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by the keyboard too */}
      <section class="size-scroll" tabIndex={0} aria-label={say('passOn.inSizes')}>
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
          <tbody>
            {rows.map(([label, of]) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                {sizes.map((size) => (
                  <td key={size.size}>{of(size) ?? '–'}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <Warnings drafted={drafted} />
    </div>
  );
}

/** Every caution of every size, also those that she keeps, and why a size cannot be drafted. */
function Warnings({ drafted }: { readonly drafted: readonly DraftedSize[] }) {
  const lines = drafted.flatMap(({ size, worked }) =>
    worked.ok
      ? worked.value.warnings.map((warning) => ({
          size,
          text: `${saysFault(warning)}${warning.overruled ? ` ${say('passOn.keptSo')}` : ''}`,
        }))
      : worked.faults.map((fault) => ({ size, text: `${say('draft.notInSize')} ${saysFault(fault)}` })),
  );
  if (lines.length === 0) return null;
  return (
    <Notice kind="note" title={say('passOn.warnings')}>
      {lines.map(({ size, text }, i) => (
        <p key={i}>
          <strong>{size}</strong>: {text}
        </p>
      ))}
    </Notice>
  );
}
