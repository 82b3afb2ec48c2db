import './draft.css';
import { useEffect } from 'preact/hooks';
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
import { TextField } from '../../ui/field/text-field.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { StartAgain } from '../start-again.tsx';
import { Opening } from '../unread.tsx';
import { Borders } from './borders.tsx';
import { DraftFoot } from './draft-foot.tsx';
import { EaseFigures, Figures } from './figures.tsx';
import { Measures } from './measures.tsx';
import { Schematic } from './schematic.tsx';
import { See } from './see.tsx';
import { Shape } from './shape.tsx';
import { Sizes } from './sizes.tsx';
import { Swatches } from './swatches.tsx';
import { Worked } from './worked.tsx';

/** From measures and a swatch to a garment: everything on one page, the garment small at its foot. */
export default function DraftScreen() {
  useEffect(() => void openDesign(), []);
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
  return (
    <Screen title={title} back={back} foot={<DraftFoot />}>
      {drafted.value?.ok && <Schematic draft={drafted.value.value} />}
      <Measures />
      <Swatches />
      <Shape />
      <div class="draft-folds">
        <EaseFigures />
        <Figures />
        <Borders />
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
    </Screen>
  );
}
