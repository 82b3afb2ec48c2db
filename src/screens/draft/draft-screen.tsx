import './draft.css';
import { useEffect, useState } from 'preact/hooks';
import {
  beginAnew,
  change,
  drafted,
  form,
  openDesign,
  startAgain,
  unread,
} from '../../app/drafts/design/designer.ts';
import { hrefTo } from '../../app/routes.ts';
import { InTurn } from '../../pace/in-turn.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { StartAgain } from '../start-again.tsx';
import { Opening } from '../unread.tsx';
import { DraftFoot } from './draft-foot.tsx';
import { Edges } from './edges.tsx';
import { PageStands } from './fold.tsx';
import { Measures } from './measures.tsx';
import { Schematic } from './schematic.tsx';
import { See } from './see.tsx';
import { Shape } from './shape.tsx';
import { Sizes } from './sizes.tsx';
import { Swatches } from './swatches.tsx';
import { Worked } from './worked.tsx';

/**
 * From measures and a swatch to a garment: it is drawn, and shaped on its drawing; the garment small at the foot. What the
 * draft is not asked for stands at once, then the drawing, then what it is shaped by.
 */
export default function DraftScreen() {
  useEffect(() => void openDesign(), []);
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const toggle = (edge: string, isOpen: boolean) =>
    setOpen((old) => new Set([...[...old].filter((one) => one !== edge), ...(isOpen ? [edge] : [])]));
  const now = form.value;
  const title = say('draft.title');
  useArrival(title, now !== undefined);
  const back = { href: hrefTo('workbasket'), label: say('draft.backToBasket') };
  if (now === undefined) {
    return (
      <Screen title={title} back={back}>
        <Opening
          unread={unread.value}
          opening={say('draft.opening')}
          beginAnew={say('draft.beginAnew')}
          onAnew={beginAnew}
        />
      </Screen>
    );
  }
  const made = drafted.value;
  return (
    <Screen title={title} back={back} foot={foot}>
      <div class="draft-steps">
        <Measures />
        <Swatches />
      </div>
      {made?.ok !== false && <Schematic draft={made?.value} open={open} />}
      {made && (
        <InTurn atOnce={0}>
          <Edges onToggle={toggle} />
          <Shape />
          <div class="draft-folds">
            <Worked />
            <See />
            <Sizes />
          </div>
          <TextField
            label={say('draft.name')}
            value={now.name}
            onInput={(name) => change((old) => ({ ...old, name }))}
          />
          <div class="draft-end">
            <p class="quiet">{say('draft.kept')}</p>
            <StartAgain words="draft" onAgain={startAgain} />
          </div>
          <PageStands />
        </InTurn>
      )}
    </Screen>
  );
}

/** Not before there is a draft: it says what that is. */
const Foot = () =>
  drafted.value && (
    <InTurn atOnce={0}>
      <DraftFoot />
    </InTurn>
  );

const foot = <Foot />;
