import type { Route } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { PrintSheet } from '../../ui/print/print-sheet.tsx';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { saysGauge } from './says-gauge.ts';

/** The plan on paper: one piece (`?piece=id`), or all of them one after the other. */
export default function PrintScreen({ route }: { readonly route: Route }) {
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
      {pieces.map((piece) => {
        const recipe = view.garment.pieces.find(({ id }) => id === piece.id)?.recipe;
        return (
          <PrintSheet
            key={piece.id}
            garment={view.garment.name}
            piece={piece.name}
            parts={piece.makes[0]?.parts ?? []}
            makes={piece.makes.length}
            facts={recipe?.gauge && [{ label: say('garment.gauge'), value: saysGauge(recipe.gauge) }]}
          />
        );
      })}
    </>
  );
}
