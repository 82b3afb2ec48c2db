import {
  beginAnew,
  change,
  drafted,
  form,
  openDesign,
  startAgain,
  unread,
} from '../../app/drafts/design/designer.ts';
import { readFault } from '../../app/state.ts';
import { InTurn } from '../../pace/in-turn.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { StartAgain } from '../start-again.tsx';
import { Opening } from '../unread.tsx';
import { DraftFoot } from './draft-foot.tsx';
import { Edges } from './edges.tsx';
import { PageStands } from './fold.tsx';
import { Measures, saysWhose } from './measures.tsx';
import { Schematic } from './schematic.tsx';
import { See } from './see.tsx';
import { Shape } from './shape.tsx';
import { Sizes } from './sizes.tsx';
import { Swatches, saysSwatch } from './swatches.tsx';
import { Worked } from './worked.tsx';

/** What a design is shown and changed by, for the page's frame (./draft-screen.tsx), which stands without it. */
export { drafted, form, Measures, openDesign, Schematic, Swatches, saysSwatch, saysWhose };

/** Why there is no design to show; undefined where it is only not read yet. */
export const fault = () => unread.value?.fault ?? readFault.value;

export const Unread = () => (
  <Opening
    unread={unread.value}
    opening={say('draft.opening')}
    beginAnew={say('draft.beginAnew')}
    onAnew={beginAnew}
  />
);

/** What the garment is shaped by, one part in a task. */
export const Shaping = ({ onToggle }: { readonly onToggle: (edge: string, isOpen: boolean) => void }) => (
  <InTurn atOnce={0}>
    <Edges onToggle={onToggle} />
    <Shape />
    <div class="draft-folds">
      <Worked />
      <See />
      <Sizes />
    </div>
    <TextField
      label={say('draft.name')}
      value={form.value?.name ?? ''}
      onInput={(name) => change((old) => ({ ...old, name }))}
    />
    <div class="draft-end">
      <p class="quiet">{say('draft.kept')}</p>
      <StartAgain words="draft" onAgain={startAgain} />
    </div>
    <PageStands />
  </InTurn>
);

/** Not before there is a draft: it says what that is. */
const Foot = () =>
  drafted.value && (
    <InTurn atOnce={0}>
      <DraftFoot />
    </InTurn>
  );

export const foot = <Foot />;
