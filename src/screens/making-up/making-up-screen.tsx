import '../../ui/print/print.css';
import './making-up.css';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import type { Route } from '../../app/routes.ts';
import type { GarmentView, MakeView, PieceView } from '../../app/state.ts';
import { makesOfStep } from '../../knit/making-up/makes-of-step.ts';
import { type MakingUp as Made, makingUpOf } from '../../knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../knit/making-up/step.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { Guesses } from '../guesses.tsx';
import { ComingTogether } from './coming-together.tsx';
import { JoinByHand } from './join-by-hand.tsx';
import { FinishedMeasures, ForChild, WhatIsOff } from './made-up.tsx';
import { saysStep } from './says-step.ts';
import { type Missing, StepCard } from './step-card.tsx';

/** From the last bind-off to the last seam: the garment as it comes together, the step in hand, the rest on a thread. */
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
  const ticked = useMemo(() => new Set(view.garment.ticked ?? []), [view]);
  const [chosen, choose] = useState<string>();
  const missing = useMemo(() => missingFor(made, view), [made, view]);
  const open = steps.filter(({ id }) => !ticked.has(id));
  // what is knitted is taken up first
  const inHand =
    steps.find(({ id }) => id === chosen) ?? open.find((step) => missing(step).length === 0) ?? open[0];
  const count = steps.filter(({ id }) => ticked.has(id)).length;
  const says = say('makingUp.done', { count, all: steps.length });
  useStepTurn(inHand?.id);
  return (
    <>
      <ComingTogether
        made={made}
        garment={garment}
        ticked={ticked}
        inHand={inHand}
        isKnitted={knittedIn(view)}
        onStep={choose}
      />
      {steps.every((s) => s.kind === 'block' || s.kind === 'ends') && (
        <Notice kind="note" title={say('makingUp.none')} />
      )}
      {inHand ? (
        <StepCard
          key={inHand.id}
          step={inHand}
          view={view}
          missing={missing(inHand)}
          isDone={ticked.has(inHand.id)}
          says={says}
          onTicked={() => choose(undefined)}
        />
      ) : (
        <p class="making-all" tabIndex={-1}>
          {says}
        </p>
      )}
      <Thread steps={steps} ticked={ticked} inHand={inHand} missing={missing} onStep={choose} />
      <WhatIsOff made={made} />
      <JoinByHand made={made} garment={garment} id={view.garment.id} />
      <FinishedMeasures made={made} garment={garment} />
      <Guesses pieces={view.pieces.map(({ recipe }) => recipe)} />
      <ForChild made={made} garment={garment} />
    </>
  );
}

/** The key that was pressed is gone with its step: a keyboard and a reader go on from the one that is taken up. */
function useStepTurn(step: string | undefined): void {
  const before = useRef(step);
  useEffect(() => {
    if (before.current === step) return;
    before.current = step;
    if (document.activeElement === document.body)
      document.querySelector<HTMLElement>('.making-card > h2, .making-all')?.focus({ preventScroll: true });
  }, [step]);
}

/** Makes that are not knitted to their end, of those that a step is done with. */
function missingFor(made: Made, view: GarmentView): (step: MakingUpStep) => readonly Missing[] {
  const all = leftIn(view);
  return (step) => {
    const wanted = makesOfStep(step, made, view);
    return all.filter(({ piece, place }) =>
      wanted.some((one) => one.piece === piece.recipe.name && one.make === place.make),
    );
  };
}

/** Whether a make is knitted to its end, by its piece's name. */
function knittedIn(view: GarmentView): (name: string, make: number) => boolean {
  const left = leftIn(view);
  return (name, make) => !left.some(({ piece, place }) => piece.recipe.name === name && place.make === make);
}

const leftIn = ({ pieces }: GarmentView): readonly Missing[] =>
  pieces.flatMap((piece) => piece.makes.flatMap((make) => leftOf(piece, make)));

function leftOf(piece: PieceView, { places }: MakeView): readonly Missing[] {
  const place = places.find(({ rows, total }) => rows < total);
  return place ? [{ piece, place }] : [];
}

/** Why a step further on cannot be done yet. */
function KnitFirst({ missing }: { readonly missing: readonly Missing[] }) {
  if (missing.length === 0) return null;
  const names = [...new Set(missing.map(({ piece }) => piece.name))];
  return <span class="making-first"> {say('makingUp.knitFirst', { list: saysList(names) })}</span>;
}

interface ThreadProps {
  readonly steps: readonly MakingUpStep[];
  readonly ticked: ReadonlySet<string>;
  readonly inHand: MakingUpStep | undefined;
  readonly missing: (step: MakingUpStep) => readonly Missing[];
  readonly onStep: (id: string) => void;
}

/** All steps on one thread, a knot each: drawn tight where it is done. Another than the next is taken where she asks for it. */
function Thread({ steps, ticked, inHand, missing, onStep }: ThreadProps) {
  const [isChoosing, setChoosing] = useState(false);
  const take = (id: string) => {
    setChoosing(false);
    onStep(id);
  };
  return (
    <>
      <ol class="making-steps">
        {steps.map((step) => {
          const state = step.id === inHand?.id ? 'hand' : ticked.has(step.id) ? 'sewn' : 'open';
          const { title } = saysStep(step);
          return (
            <li class={`making-step making-${state}`} key={step.id} aria-current={state === 'hand' && 'step'}>
              {isChoosing ? (
                <button class="making-title" type="button" onClick={() => take(step.id)}>
                  {title}
                </button>
              ) : (
                title
              )}
              {state === 'open' && <KnitFirst missing={missing(step)} />}
              {state === 'sewn' && <span class="spoken"> {say('makingUp.isDone')}</span>}
            </li>
          );
        })}
      </ol>
      <Button kind="quiet" onPress={() => setChoosing(!isChoosing)}>
        {say('makingUp.another')}
      </Button>
    </>
  );
}
