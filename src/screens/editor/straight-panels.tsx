import { Fragment } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { change, garmentFaults } from '../../app/drafts/editor/editor.ts';
import { type GarmentForm, readGarment } from '../../app/drafts/editor/garment-form.ts';
import { newPieceId } from '../../app/garments/ids.ts';
import type { MeasuredGauge } from '../../knit/measured-gauge.ts';
import type { PieceForm } from '../../knit/piece/form/form.ts';
import { freeName } from '../../knit/piece/form/list.ts';
import {
  faultOf,
  type GivenFigure,
  neckOf,
  type StraightCounts,
  type StraightFault,
  type StraightFigure,
  type StraightShape,
  shoulderOf,
  straightCounts,
  straightFigureNames,
  straightFigures,
  straightMm,
  straightPieces,
  usualShape,
} from '../../knit/piece/form/straight.ts';
import { Button } from '../../ui/button/button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { lengthToType, lengthTyped, lengthUnit, saysTyped } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { done } from './changes.ts';
import { Fold } from './fold.tsx';
import { PieceSketch } from './piece-sketch.tsx';
import { starterWords } from './starter-words.ts';

/** The simplest garment: each figure as a length or as a count, the other follows; its pieces are then hers to change. */
export function StraightPanels({ form }: { readonly form: GarmentForm }) {
  const [open, setOpen] = useState(form.pieces.length === 0);
  return (
    <Fold head={say('straight.straight')} open={open} onToggle={() => setOpen(!open)}>
      <Panels form={form} onTaken={() => setOpen(false)} />
    </Fold>
  );
}

function Panels({ form, onTaken }: { readonly form: GarmentForm; readonly onTaken: () => void }) {
  const shape = form.shape ?? usualShape;
  const [looksAt, setLooksAt] = useState<StraightFigure>('width');
  const isGauged = garmentFaults.value.every((fault) => !/gauge|needle/.test(fault.at.field ?? ''));
  const gauge = isGauged ? readGarment(form).gauge : undefined;
  const counts = gauge && straightCounts(shape, gauge);
  const fault = counts && faultOf(shape, counts);
  const needle = Number(form.needle.replace(',', '.'));
  const pieces = useMemo(
    () =>
      gauge && counts && !fault
        ? straightPieces(shape, counts, { gauge, needle, words: starterWords() })
        : [],
    [JSON.stringify([shape, gauge, needle]), speech.value],
  );
  const isOfSleeve = looksAt === 'cuff' || looksAt === 'sleeveTop' || looksAt === 'sleeveLength';
  const shown = pieces[isOfSleeve ? 2 : 1];
  const take = () => {
    takePieces(pieces);
    onTaken();
  };
  return (
    <div class="edit-piece-page">
      <div class="edit-piece-grid">
        {shown && (
          <div class="edit-in-sight">
            <PieceSketch entry={{ id: newPieceId(), form: shown }} />
          </div>
        )}
        <div class="edit-bands">
          <p>{say('straight.straightHint')}</p>
          <Choice
            label={say('editor.starter neck')}
            value={shape.neck}
            options={[
              { value: 'boat', label: say('straight.neckBoat') },
              { value: 'V', label: say('straight.neckV') },
            ]}
            onChange={(neck) =>
              change((old) => ({ ...old, shape: { ...shape, neck } }), 'neck', 'shape neck')
            }
          />
          {straightFigureNames
            .filter((name) => shape.neck === 'V' || name !== 'neckDepth')
            .map((name) => (
              <Fragment key={name}>
                <Figure
                  name={name}
                  shape={shape}
                  gauge={gauge}
                  counts={counts}
                  onLook={() => setLooksAt(name)}
                />
                {fault && blamed[fault] === name && (
                  <p role="status" id="edit-straight-verdict" class="edit-wrong">
                    {say(faultSentences[fault])}
                  </p>
                )}
              </Fragment>
            ))}
          {!fault && <Verdict counts={counts} isGauged={gauge !== undefined} />}
          <Button
            kind="main"
            icon="plus"
            wide
            disabled={pieces.length === 0}
            describedBy="edit-straight-verdict"
            onPress={take}
          >
            {say('straight.takeStraight')}
          </Button>
        </div>
      </div>
    </div>
  );
}

/** Each under a name that is free. */
function takePieces(pieces: readonly PieceForm[]): void {
  const told = say('editor.added', { name: pieces.map(({ name }) => name).join(', ') });
  change((old) => {
    const names = old.pieces.map((entry) => entry.form.name);
    const added = pieces.map((piece) => ({
      id: newPieceId(),
      form: { ...piece, name: freeName(piece.name, names) },
    }));
    return { ...old, pieces: [...old.pieces, ...added] };
  }, told);
  done.value = told;
}

interface FigureProps {
  readonly name: StraightFigure;
  readonly shape: StraightShape;
  readonly gauge: MeasuredGauge | undefined;
  readonly counts: StraightCounts | undefined;
  readonly onLook: () => void;
}

/** A figure twice: as a length and as what is counted. What is typed stands, the other follows. */
function Figure({ name, shape, gauge, counts, onLook }: FigureProps) {
  const what = say(figureNames[name]);
  const { of } = straightFigures[name];
  const said = shape.given[name];
  const mm = straightMm(shape, name, gauge);
  const count = said && 'count' in said ? (said.count ?? undefined) : counts?.[name];
  const give = (figure: GivenFigure) =>
    change(
      (old) => ({ ...old, shape: { ...shape, given: { ...shape.given, [name]: figure } } }),
      'shape',
      `shape ${name}`,
    );
  return (
    <div class="edit-pair" onFocusCapture={onLook}>
      <NumberField
        label={say('straight.inLength', { what, unit: lengthUnit() })}
        bare
        decimals
        says={saysTyped}
        min={0}
        value={mm === undefined ? undefined : lengthToType(mm, said === undefined || 'count' in said)}
        onChange={(typed) => give({ mm: typed === undefined ? null : lengthTyped(typed) })}
      />
      <NumberField
        label={say(of === 'stitches' ? 'straight.inStitches' : 'straight.inRows', { what })}
        bare
        min={0}
        value={count}
        onChange={(typed) => give({ count: typed ?? null })}
      />
    </div>
  );
}

const figureNames = {
  width: 'straight.figureWidth',
  length: 'straight.figureLength',
  border: 'straight.figureBorder',
  neckWidth: 'straight.figureNeckWidth',
  neckDepth: 'straight.figureNeckDepth',
  cuff: 'straight.figureCuff',
  sleeveTop: 'straight.figureSleeveTop',
  sleeveLength: 'straight.figureSleeveLength',
} as const satisfies Readonly<Record<StraightFigure, string>>;

const faultSentences = {
  'odd V': 'straight.straightOddV',
  'neck too wide': 'straight.straightNeckWide',
  'too short': 'straight.straightShort',
  'neck too steep': 'straight.straightSteep',
  'sleeve too wide': 'straight.straightSleeve',
} as const satisfies Readonly<Record<StraightFault, string>>;

/** The figure at which a fault is told: what most likely is to be changed. */
const blamed = {
  'odd V': 'width',
  'neck too wide': 'neckWidth',
  'too short': 'length',
  'neck too steep': 'neckDepth',
  'sleeve too wide': 'sleeveTop',
} as const satisfies Readonly<Record<StraightFault, StraightFigure>>;

interface VerdictProps {
  readonly counts: StraightCounts | undefined;
  readonly isGauged: boolean;
}

/** What the shoulders come to, or what is missing for them; beside the key that waits for it. */
function Verdict({ counts, isGauged }: VerdictProps) {
  const says = () => {
    if (!isGauged) return say('straight.straightNeedsGauge');
    if (!counts) return say('straight.straightMissing');
    return say('straight.straightShoulders', { count: shoulderOf(counts), neck: neckOf(counts) });
  };
  return (
    <p role="status" id="edit-straight-verdict" class={counts && 'edit-soft'}>
      {says()}
    </p>
  );
}
