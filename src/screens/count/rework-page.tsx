import { useEffect, useMemo, useState } from 'preact/hooks';
import { plansBefore, takePlans } from '../../app/in-hand/count.ts';
import { type Draft, draftFrom, proposed, type WishKind, wishKinds } from '../../app/in-hand/rework-draft.ts';
import { garmentInHand, type InHand } from '../../app/state.ts';
import type { PlanRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { Group } from '../../ui/group/group.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import type { CountPageProps } from './count-page.ts';
import { NewPlan } from './new-plan.tsx';
import { OldPlan } from './old-plan.tsx';
import { StripesAhead } from './stripes-ahead.tsx';
import { useMends } from './use-mends.ts';
import { WishFields } from './wish-fields.tsx';

const wishNames = {
  shoulder: 'count.wishShoulder',
  accept: 'count.wishAccept',
  measured: 'count.wishMeasured',
  rows: 'count.wishRows',
  section: 'count.wishSection',
  stripes: 'count.wishStripes',
  neck: 'count.wishNeck',
  first: 'count.wishFirst',
  plain: 'count.wishPlain',
} as const satisfies Readonly<Record<WishKind, string>>;

/** The rows not yet knitted, planned anew: what has changed, what becomes of it, and only then taken. */
export function ReworkPage({ now, entries, query }: CountPageProps) {
  const [draft, setDraft] = useState<Draft>(() => draftFrom(now, query));
  const [taken, setTaken] = useState(false);
  // one and the same while nothing is typed: what mends it is looked for once
  const made = useMemo(() => proposed(now, draft), [now, draft, garmentInHand.value]);
  const { asked, edits, take, leave, writes } = useMends(now, made);
  if (taken) {
    return (
      <>
        <Notice kind="done" live>
          {say('count.taken')}
        </Notice>
        <Button kind="main" wide href={hrefToMake(now.make)}>
          {say('count.backToRow')}
        </Button>
      </>
    );
  }
  return (
    <>
      <Choice
        label={say('count.reworkWhat')}
        stacked
        value={draft.kind}
        options={wishKinds(now).map((kind) => ({ value: kind, label: say(wishNames[kind]) }))}
        onChange={(kind) => setDraft({ ...draft, kind })}
      />
      <WishFields now={now} draft={draft} onChange={(change) => setDraft({ ...draft, ...change })} />
      {draft.kind === 'stripes' && <StripesAhead now={now} onTaken={() => setTaken(true)} />}
      {made && !made.ok && (
        <Notice kind="warning" live>
          {made.faults.map((fault) => (
            <p key={fault.code}>{saysFault(fault)}</p>
          ))}
        </Notice>
      )}
      {made?.ok && (
        <>
          <NewPlan now={now} made={made.value} asked={asked} edits={edits} onTake={take} onLeave={leave} />
          <Button
            kind="main"
            wide
            onPress={() => void takePlans(made.value.parts, writes()).then((done) => done && setTaken(true))}
          >
            {say('count.take')}
          </Button>
        </>
      )}
      <OldPlans now={now} entries={entries} />
    </>
  );
}

/** Plans that the make was knitted by before stay readable. */
function OldPlans({ now, entries }: { readonly now: InHand; readonly entries: CountPageProps['entries'] }) {
  const [plans, setPlans] = useState<readonly PlanRecord[]>([]);
  useEffect(() => {
    void plansBefore(entries, now.place.plan).then(setPlans);
  }, [entries, now.place.plan]);
  if (plans.length === 0) return null;
  return (
    <Group title={say('count.oldPlans')}>
      {plans.map(({ id, plan, version }) => (
        <OldPlan key={id} version={version} part={plan} />
      ))}
    </Group>
  );
}
