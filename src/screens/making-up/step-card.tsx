import { changeGarment } from '../../app/garments/change-garment.ts';
import { takeApart } from '../../app/garments/join-by-hand.ts';
import { hrefTo } from '../../app/routes.ts';
import type { GarmentView, PieceView } from '../../app/state.ts';
import type { MakingUpStep } from '../../knit/making-up/step.ts';
import type { PlaceRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { PieceSchematic } from '../../ui/print/piece-schematic.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';
import { saysReason, saysStep } from './says-step.ts';

/** A make that a step needs and that is not knitted to its end. */
export interface Missing {
  readonly piece: PieceView;
  /** of the first part that is not done */
  readonly place: PlaceRecord;
}

interface StepCardProps {
  readonly step: MakingUpStep;
  readonly view: GarmentView;
  readonly missing: readonly Missing[];
  readonly isDone: boolean;
  /** 'step 3 of 10' */
  readonly says: string;
  /** the step that comes after it is taken up */
  readonly onTicked: () => void;
}

/** The step in hand: what is done, why, and that it is done. */
export function StepCard({ step, view, missing, isDone, says, onTicked }: StepCardProps) {
  const { title, lines } = saysStep(step);
  const reason = saysReason(step);
  const tick = (on: boolean) => {
    onTicked();
    void changeGarment(view.garment.id, (garment) => {
      const others = (garment.ticked ?? []).filter((own) => own !== step.id);
      return { ...garment, ticked: on ? [...others, step.id] : others };
    });
  };
  return (
    <Card tone="place">
      <div class="making-card">
        <h2 tabIndex={-1}>{title}</h2>
        <p class="quiet">{says}</p>
        {!isDone && <NotKnitted missing={missing} />}
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {reason && <p class="making-why">{reason}</p>}
        <Markers step={step} view={view} title={title} />
        <div class="making-do">
          <Button kind={isDone || missing.length > 0 ? 'plain' : 'main'} onPress={() => tick(!isDone)}>
            {say(isDone ? 'makingUp.undo' : doneBy(step))}
          </Button>
          {step.kind === 'join' && (
            <Button kind="quiet" onPress={() => void takeApart(view.garment.id, step.seam)}>
              {say('makingUp.apart')}
            </Button>
          )}
          {step.kind === 'pick up' && <BandLink view={view} band={step.band} />}
        </div>
      </div>
    </Card>
  );
}

/** The word for having done it. */
function doneBy(step: MakingUpStep) {
  switch (step.kind) {
    case 'block':
      return 'makingUp.blocked';
    case 'pick up':
    case 'neck edge':
      return 'makingUp.pickedUp';
    case 'ends':
    case 'lap':
    case 'opening':
      return 'makingUp.isDone';
    default:
      return 'makingUp.sewn';
  }
}

/** What is not there cannot be sewn; it may lie beside her, though, knitted without the app. */
function NotKnitted({ missing }: { readonly missing: readonly Missing[] }) {
  const [first] = missing;
  if (!first) return null;
  const names = missing.map(({ piece, place }) => saysMake(piece.name, '', place.make, piece.recipe));
  return (
    <Notice
      kind="note"
      title={say('makingUp.notKnitted', { list: saysList(names) })}
      actions={
        <Button icon="needle" href={hrefToMake(first.place.id)}>
          {say('makingUp.knitIt', { piece: names[0] ?? '' })}
        </Button>
      }
    />
  );
}

interface MarkersProps {
  readonly step: MakingUpStep;
  readonly view: GarmentView;
  readonly title: string;
}

/** The piece that the markers are put on before the sleeves are set in. */
function Markers({ step, view, title }: MarkersProps) {
  if (step.kind !== 'set in sleeves') return null;
  const piece = view.pieces.find((p) => p.name === step.on);
  const parts = piece?.makes.find(({ make }) => make === (step.nos?.[0] ?? 1))?.parts;
  if (!parts || parts.length === 0) return null;
  return (
    <details class="making-more">
      <summary>{say('makingUp.markers')}</summary>
      <div class="making-drawing">
        <PieceSchematic label={title} parts={parts} marksMm={step.marksMm} />
      </div>
    </details>
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
