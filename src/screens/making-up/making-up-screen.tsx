import '../../ui/print/print.css';
import './making-up.css';
import { asItStands } from '../../app/as-it-stands.ts';
import { changeGarment } from '../../app/intents/change-garment.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../knit/making-up/step.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Schematic } from '../../ui/print/schematic.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { Guesses } from '../guesses.tsx';
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
  const garment = asItStands(view);
  const made = makingUpOf(garment);
  const { steps } = made;
  const ticked = new Set(view.garment.ticked ?? []);
  const count = steps.filter((s) => ticked.has(s.id)).length;
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
          <Step key={step.id} step={step} view={view} ticked={ticked.has(step.id)} />
        ))}
      </ol>
      <WhatIsOff made={made} />
      <FinishedMeasures made={made} garment={garment} />
      <Guesses pieces={view.pieces.map(({ recipe }) => recipe)} />
      <Notice kind="note">{say('makingUp.cords')}</Notice>
    </>
  );
}

interface StepProps {
  readonly step: MakingUpStep;
  readonly view: GarmentView;
  readonly ticked: boolean;
}

function Step({ step, view, ticked }: StepProps) {
  const { title, lines } = saysStep(step);
  const tick = (on: boolean) =>
    void changeGarment(view.garment.id, (garment) => {
      const others = (garment.ticked ?? []).filter((id) => id !== step.id);
      return { ...garment, ticked: on ? [...others, step.id] : others };
    });
  const drawn = step.kind === 'block' ? step.piece : step.kind === 'set in sleeves' ? step.on : undefined;
  const piece = view.pieces.find((p) => p.name === drawn);
  const parts = piece?.makes.find(({ make }) => make === (step.nos?.[0] ?? 1))?.parts;
  return (
    <li class={`making-step${ticked ? ' making-done' : ''}`}>
      <Toggle label={title} on={ticked} onChange={tick} />
      <div class="making-words">
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {parts && parts.length > 0 && (
          <div class="making-drawing">
            <Schematic
              label={title}
              parts={parts}
              marksMm={step.kind === 'set in sleeves' ? step.marksMm : undefined}
            />
          </div>
        )}
        {step.kind === 'pick up' && <BandLink view={view} band={step.band} />}
      </div>
    </li>
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
