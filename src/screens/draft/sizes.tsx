import { useState } from 'preact/hooks';
import { design, form } from '../../app/drafts/design/designer.ts';
import { readSwatch } from '../../app/drafts/design/form.ts';
import { type BodyTable, bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import type { Design } from '../../knit/garment/design.ts';
import { type GradedSize, grade } from '../../knit/garment/grade.ts';
import { Button } from '../../ui/button/button.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysYarnLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysName } from './says-name.ts';

/** The same garment in the sizes of a table. Worked out when she asks: it drafts and plans the garment for each. */
export function Sizes() {
  const [table, setTable] = useState<BodyTable>(form.value?.person.table ?? 'women');
  const [graded, setGraded] = useState<{ readonly of: Design; readonly sizes: readonly GradedSize[] }>();
  const wished = design.value;
  if (!wished) return null;
  const work = () => {
    const swatches = form.value?.swatches.flatMap((swatch) => readSwatch(swatch) ?? []) ?? [];
    setGraded({ of: wished, sizes: grade(wished, bodyTables[table], { swatches }) });
  };
  return (
    <Group title={say('draft.sizes')}>
      <p class="quiet">{say('draft.sizesHint')}</p>
      <SelectField
        label={say('draft.size')}
        value={table}
        options={bodyTableNames.map((value) => ({ value, label: saysName(value) }))}
        onChange={(value) => {
          setTable(value);
          setGraded(undefined);
        }}
      />
      <Button onPress={work}>{say('draft.workOutSizes')}</Button>
      {graded?.of === wished && <GradeTable sizes={graded.sizes} />}
    </Group>
  );
}

const lines = [
  ['draft.castOn', (p: Piece) => p.castOn],
  ['draft.rowsInAllOf', (p: Piece) => p.rows],
  ['draft.widest', (p: Piece) => p.widest],
  ['draft.increases', (p: Piece) => p.shapings.increases],
  ['draft.decreases', (p: Piece) => p.shapings.decreases],
  ['draft.boundOff', (p: Piece) => p.shapings.boundOff],
] as const;

type Piece = GradedSize['pieces'][number];

function GradeTable({ sizes }: { readonly sizes: readonly GradedSize[] }) {
  const names = [...new Set(sizes.flatMap((size) => size.pieces.map((piece) => piece.name)))];
  const whole = sizes.filter((size) => size.faults.length === 0);
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by the keyboard too */}
      <section class="draft-scroll" tabIndex={0} aria-label={say('draft.sizes')}>
        <table class="draft-table draft-grade">
          <thead>
            <tr>
              <th scope="col">{say('draft.size')}</th>
              {whole.map(({ size }) => (
                <th scope="col" key={size}>
                  {size}
                </th>
              ))}
            </tr>
          </thead>
          {names.map((name) => (
            <PieceLines key={name} name={name} sizes={whole} />
          ))}
          <tbody>
            <tr>
              <th scope="row">{say('draft.yarnTotal')}</th>
              {whole.map(({ size, metres }) => (
                <td key={size}>{saysYarnLength(metres)}</td>
              ))}
            </tr>
          </tbody>
        </table>
      </section>
      {sizes.flatMap(({ size, faults }) =>
        faults.slice(0, 1).map((found) => (
          <p key={size}>
            <strong>{size}</strong>: {say('draft.notInSize')} {saysFault(found)}
          </p>
        )),
      )}
    </>
  );
}

function PieceLines({ name, sizes }: { readonly name: string; readonly sizes: readonly GradedSize[] }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={sizes.length + 1} class="draft-grade-piece">
          {saysName(name)}
        </th>
      </tr>
      {lines.map(([label, of]) => (
        <tr key={label}>
          <th scope="row">{say(label)}</th>
          {sizes.map(({ size, pieces }) => {
            const piece = pieces.find((one) => one.name === name);
            return <td key={size}>{piece ? of(piece) : '–'}</td>;
          })}
        </tr>
      ))}
    </tbody>
  );
}
