import type { PieceCheck } from '../../knit/piece/form/check.ts';
import type { PieceForm } from '../../knit/piece/form/form.ts';
import { twinOf } from '../../knit/piece/form/twins.ts';
import type { PieceId } from '../../progress/log.ts';
import { say } from '../../words/say.ts';
import { openSection, shownPart } from './changes.ts';
import { CountChange } from './count-change.tsx';
import { PartBands } from './part-bands.tsx';

interface TreeProps {
  readonly piece: PieceId;
  readonly form: PieceForm;
  readonly check: PieceCheck;
}

/** The part that a part takes its stitches from, where it comes before it. */
export function parentOf({ parts }: PieceForm, index: number): number | undefined {
  const start = parts[index]?.start;
  const found = start?.kind === 'split' ? parts.findIndex(({ name }) => name === start.part) : -1;
  return found < 0 || found >= index ? undefined : found;
}

const childrenOf = (form: PieceForm, parent: number | undefined): readonly number[] =>
  form.parts.flatMap((_, i) => (parentOf(form, i) === parent ? [i] : []));

/** Of the parts at one split the one that is chosen, that leads to the chosen one, or the first. */
function shownOf(form: PieceForm, siblings: readonly number[]): number | undefined {
  let at = shownPart.value;
  while (at !== undefined && !siblings.includes(at)) at = parentOf(form, at);
  return at ?? siblings[0];
}

/** Shows a part, and with it the parts that it comes out of. */
export function showPart(part: number): void {
  shownPart.value = part;
}

/** Parts from the cast-on upwards, in the order in which they are knitted; above a split stands one of its branches. */
export function PieceTree(props: TreeProps) {
  return (
    <div class="edit-tree">
      {childrenOf(props.form, undefined).map((root) => (
        <Branch key={root} {...props} index={root} />
      ))}
    </div>
  );
}

function Branch({ index, ...props }: TreeProps & { readonly index: number }) {
  const { piece, form, check } = props;
  const part = form.parts[index];
  const above = shownOf(form, childrenOf(form, index));
  if (part === undefined) return null;
  return (
    <div class="edit-tree">
      <PartBands piece={piece} form={form} index={index} part={part} check={check} />
      {above !== undefined && <Branch key={above} {...props} index={above} />}
    </div>
  );
}

/** The branches of every split, to choose from; a mirror image is said, not repeated. */
export function Branches({ form, check }: Omit<TreeProps, 'piece'>) {
  const forks = [...form.parts.keys()]
    .map((part) => childrenOf(form, part))
    .filter(({ length }) => length > 1);
  const show = (part: number) => () => {
    showPart(part);
    openSection.value = undefined;
  };
  return (
    <>
      {forks.map((siblings) => (
        <ul key={siblings[0]} class="edit-branches" aria-label={say('editor.parts')}>
          {siblings.map((i) => (
            <li key={i}>
              <button
                type="button"
                class="edit-branch"
                aria-pressed={shownOf(form, siblings) === i}
                onClick={show(i)}
              >
                <strong>{form.parts[i]?.name.trim() || say('editor.part')}</strong>
                {twinOf(form, i) === undefined ? (
                  <CountChange before={check.counts[i]?.start} after={check.counts[i]?.left} />
                ) : (
                  <span>{say('editor.isMirrored')}</span>
                )}
              </button>
            </li>
          ))}
        </ul>
      ))}
    </>
  );
}
