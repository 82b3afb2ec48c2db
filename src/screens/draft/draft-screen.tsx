import './draft.css';
import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { hrefTo } from '../../app/routes.ts';
import { nextTask } from '../../pace/next-task.ts';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { NotFetched } from '../not-fetched.tsx';
import type * as DraftPage from './draft-page.tsx';
import { Fold } from './fold.tsx';

/** What drafts is most of what this page fetches: the page is painted first. 'failed': a first visit was cut off. */
const rest = signal<typeof DraftPage | 'failed' | undefined>(undefined);

/** @returns whether it could be fetched */
async function open(): Promise<boolean> {
  const found = await import('./draft-page.tsx').catch(() => 'failed' as const);
  rest.value = found;
  await nextTask();
  if (found !== 'failed') await found.openDesign();
  return found !== 'failed';
}

/**
 * From measures and a swatch to a garment: it is drawn, and shaped on its drawing; the garment small at the foot. What the
 * page says of itself stands at once, then what the design is from, then the drawing, then what it is shaped by.
 */
export default function DraftScreen() {
  // an effect comes when the frame is painted
  useEffect(() => void open(), []);
  const title = say('draft.title');
  const back = { href: hrefTo('workbasket'), label: say('draft.backToBasket') };
  const [edges, setEdges] = useState<ReadonlySet<string>>(new Set());
  const toggle = (edge: string, isOpen: boolean) =>
    setEdges((old) => new Set([...[...old].filter((one) => one !== edge), ...(isOpen ? [edge] : [])]));
  const page = rest.value === 'failed' ? undefined : rest.value;
  const form = page?.form.value;
  useArrival(title, form !== undefined || rest.value === 'failed');
  if (rest.value === 'failed') return <NotFetched title={title} back={back} again={open} />;
  if (page && !form && page.fault()) {
    return (
      <Screen title={title} back={back}>
        <page.Unread />
      </Screen>
    );
  }
  const made = form && page?.drafted.value;
  return (
    <Screen title={title} back={back} foot={form && page?.foot}>
      <div class="draft-steps">
        <Fold title={say('draft.measures')} says={form && page?.saysWhose(form)}>
          {page && form && <page.Measures form={form} />}
        </Fold>
        <Fold title={say('draft.swatch')} says={form && page?.saysSwatch(form)}>
          {page && form && <page.Swatches form={form} />}
        </Fold>
      </div>
      {made?.ok !== false && (
        <div class="draft-drawings">
          <Shows what="drawings" />
          <p class="quiet">{say('draft.touch')}</p>
          {page && form ? <page.Schematic draft={made?.value} open={edges} /> : say('draft.opening')}
        </div>
      )}
      {page && made && <page.Shaping onToggle={toggle} />}
    </Screen>
  );
}
