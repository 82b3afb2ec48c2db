import { useEffect } from 'preact/hooks';
import type { Route } from '../../app/routes.ts';
import { keepFromNowOn } from '../../app/start/keep-wanted.ts';
import type { GarmentView, PieceView } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type StandingMake, sameRows } from '../../knit/piece/standing.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import { Button } from '../../ui/button/button.tsx';
import { PrintSheet } from '../../ui/print/print-sheet.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { saysMake } from '../says-make.ts';
import { saysGauge } from './says-gauge.ts';

/** The plan on paper: one piece (`?piece=id`), or all of them one after the other. */
export default function PrintScreen({ route }: { readonly route: Route }) {
  useEffect(() => void keepFromNowOn('print'), []);
  return (
    <GarmentPage route={route} title={say('garment.print')}>
      {(view) => <Sheets view={view} only={route.query.get('piece')} />}
    </GarmentPage>
  );
}

function Sheets({ view, only }: { readonly view: GarmentView; readonly only: string | null }) {
  const pieces = view.pieces.filter(({ id }) => only === null || id === only);
  return (
    <>
      <Button kind="main" icon="print" onPress={() => print()}>
        {say('garment.print')}
      </Button>
      {pieces.flatMap((piece) => {
        const { gauge } = piece.recipe;
        // copies of which one goes on in other stripes are told one by one
        const isOne = view.garment.restriped?.some(({ piece: id }) => id === piece.id);
        const groups = isOne ? piece.makes.map((make) => [make]) : sameRows(piece.recipe, piece.makes);
        return groups.map((makes) => (
          <PrintSheet
            key={`${piece.id} ${makes[0]?.make}`}
            garment={view.garment.name}
            piece={groups.length > 1 ? saysNos(piece, makes) : piece.name}
            parts={makes[0]?.parts ?? []}
            makes={makes.length}
            colours={coloursOn(view, piece, makes)}
            facts={gauge && [{ label: say('garment.gauge'), value: saysGauge(gauge) }]}
          />
        ));
      })}
    </>
  );
}

/** Nothing where the garment is not striped. */
const coloursOn = ({ garment }: GarmentView, { id }: PieceView, [make]: readonly StandingMake[]) =>
  isStriped(garment)
    ? (part: PlannedPart) => coloursOf(garment, id, make?.parts ?? [], part, make?.make)
    : undefined;

const saysNos = ({ name, recipe }: PieceView, makes: readonly StandingMake[]): string =>
  makes.length === 1
    ? saysMake(name, '', makes[0]?.make ?? 1, recipe)
    : say('garment.pieceNos', { piece: name, list: saysList(makes.map(({ make }) => String(make))) });
