import '../../ui/print/print.css';
import './making-up.css';
import type { ComponentChildren } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import { changeGarment } from '../../app/garments/change-garment.ts';
import { takeApart } from '../../app/garments/join-by-hand.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../knit/making-up/step.ts';
import type { WorkedJoint } from '../../knit/making-up/work-making-up.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Schematic } from '../../ui/print/schematic.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { Guesses } from '../guesses.tsx';
import { JoinByHand } from './join-by-hand.tsx';
import { JoinedEdges } from './joined-edges.tsx';
import { FinishedMeasures, WhatIsOff } from './made-up.tsx';
import { saysStep } from './says-step.ts';

/** From the last bind-off to the last seam: each step with its figures, ticked and kept. */
export default function MakingUpScreen({ route }: { readonly route: Route }) {
  return (
    <GarmentPage route={route} title={say('makingUp.title')}>
      {(view) => <MakingUp view={view} />}
    </GarmentPage>
  );
}

function MakingUp({ view }: { readonly view: GarmentView }) {
  const garment = useMemo(() => asItStands(view), [view]);
  const made = useMemo(() => makingUpOf(garment), [garment]);
  const { steps } = made;
  const ticked = new Set(view.garment.ticked ?? []);
  const count = steps.filter((s) => ticked.has(s.id)).length;
  const [chosen, choose] = useState<string>();
  const next = steps.find((s) => !ticked.has(s.id))?.id;
  const open = chosen ?? next;
  const sewn = steps.flatMap(({ id }) => (ticked.has(id) ? (made.joined.get(id) ?? []) : []));
  const done = say('makingUp.done', { count, all: steps.length });
  return (
    <>
      <ProgressBar value={count} max={steps.length} label={say('makingUp.title')} valueText={done} />
      <p>{done}</p>
      {steps.every((s) => s.kind === 'block' || s.kind === 'ends') && (
        <Notice kind="note" title={say('makingUp.none')} />
      )}
      <ol class="making-steps">
        {steps.map((step) => (
          <Step
            key={step.id}
            step={step}
            view={view}
            ticked={ticked.has(step.id)}
            open={step.id === open}
            onOpen={() => choose(step.id === open ? NO_STEP : step.id)}
            onTicked={() => choose(undefined)}
          >
            <JoinedEdges joints={made.joined.get(step.id) ?? NONE} sewn={sewn} garment={garment} />
          </Step>
        ))}
      </ol>
      <WhatIsOff made={made} />
      <JoinByHand made={made} garment={garment} id={view.garment.id} />
      <FinishedMeasures made={made} garment={garment} />
      <Guesses pieces={view.pieces.map(({ recipe }) => recipe)} />
      <Notice kind="note">{say('makingUp.cords')}</Notice>
    </>
  );
}

/** the choice of none; no step has an empty id */
const NO_STEP = '';

const NONE: readonly WorkedJoint[] = [];

interface StepProps {
  readonly step: MakingUpStep;
  readonly view: GarmentView;
  readonly ticked: boolean;
  readonly open: boolean;
  readonly onOpen: () => void;
  /** the step that comes after it opens */
  readonly onTicked: () => void;
  /** its edges, drawn */
  readonly children: ComponentChildren;
}

/** A step on the thread: its name and whether it is done, and what it says where it is open. */
function Step({ step, view, ticked, open, onOpen, onTicked, children }: StepProps) {
  const { title, lines } = saysStep(step);
  const id = useId();
  const tick = (on: boolean) => {
    onTicked();
    void changeGarment(view.garment.id, (garment) => {
      const others = (garment.ticked ?? []).filter((own) => own !== step.id);
      return { ...garment, ticked: on ? [...others, step.id] : others };
    });
  };
  return (
    <li class={`making-step${ticked ? ' making-done' : ''}`}>
      <div class="making-head">
        <button class="making-title" type="button" aria-expanded={open} aria-controls={id} onClick={onOpen}>
          {title}
        </button>
        <input
          class="making-tick"
          type="checkbox"
          aria-label={say('makingUp.tick', { step: title })}
          checked={ticked}
          onChange={(event) => tick(event.currentTarget.checked)}
        />
      </div>
      <div class="making-words" id={id} hidden={!open}>
        {open && (
          <>
            {lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {children}
            <Measured step={step} view={view} title={title} />
            {step.kind === 'join' && (
              <Button kind="quiet" onPress={() => void takeApart(view.garment.id, step.seam)}>
                {say('makingUp.apart')}
              </Button>
            )}
            {step.kind === 'pick up' && <BandLink view={view} band={step.band} />}
          </>
        )}
      </div>
    </li>
  );
}

/** The piece that is pinned out, or that the markers are put on, with its measures. */
function Measured({ step, view, title }: Pick<StepProps, 'step' | 'view'> & { readonly title: string }) {
  const drawn = step.kind === 'block' ? step.piece : step.kind === 'set in sleeves' ? step.on : undefined;
  const piece = view.pieces.find((p) => p.name === drawn);
  const parts = piece?.makes.find(({ make }) => make === (step.nos?.[0] ?? 1))?.parts;
  if (!parts || parts.length === 0) return null;
  const marksMm = step.kind === 'set in sleeves' ? step.marksMm : undefined;
  return (
    <div class="making-drawing">
      <Schematic label={title} parts={parts} marksMm={marksMm} />
    </div>
  );
}

/** The band is a part with a place like any other. */
function BandLink({ view, band }: { readonly view: GarmentView; readonly band: string }) {
  const piece = view.garment.pieces.find(({ recipe }) => recipe.name === band);
  if (!piece) return null;
  const href = hrefTo('knitting', { garment: view.garment.id, piece: piece.id, part: 0, make: 1 });
  return (
    <Button kind="plain" icon="needle" href={href}>
      {say('makingUp.pickUpKnit')}
    </Button>
  );
}
