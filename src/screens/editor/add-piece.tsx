import { change, garmentFaults } from '../../app/drafts/editor/editor.ts';
import { type GarmentForm, gaugedAs, mainOf, readGarment } from '../../app/drafts/editor/garment-form.ts';
import { newPieceId } from '../../app/garments/ids.ts';
import { goTo } from '../../app/navigate.ts';
import type { PieceForm } from '../../knit/piece/form/form.ts';
import { freshPiece } from '../../knit/piece/form/fresh.ts';
import { freeName } from '../../knit/piece/form/list.ts';
import { type StarterName, starter } from '../../knit/piece/form/starters.ts';
import { Button } from '../../ui/button/button.tsx';
import type { IconName } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { done } from './changes.ts';
import { starterWords } from './starter-words.ts';

const buttons = [
  ['back', 'editor.addBack', 'backPiece'],
  ['front', 'editor.addFront', 'frontPiece'],
  ['sleeve', 'editor.addSleeve', 'sleevePiece'],
  ['neckband', 'editor.addNeckband', 'bandPiece'],
] as const satisfies readonly (readonly [StarterName, string, IconName])[];

/** Ordinary pieces to begin from, reckoned from the gauge, and an empty one. */
export function AddPiece({ form, home }: { readonly form: GarmentForm; readonly home: string }) {
  const isGauged = garmentFaults.value.every((fault) => !/gauge|needle/.test(fault.at.field ?? ''));
  const gauge = isGauged ? readGarment(form).gauge : undefined;
  const names = form.pieces.map((entry) => entry.form.name);
  const add = (piece: PieceForm) => {
    const told = say('editor.added', { name: piece.name });
    change((old) => ({ ...old, pieces: [...old.pieces, { id: newPieceId(), form: piece }] }), told);
    done.value = told;
  };
  const addStarter = (name: StarterName) => {
    if (gauge === undefined) return;
    const made = starter(name, {
      gauge,
      needle: Number(form.needle.replace(',', '.')),
      words: starterWords(),
    });
    add({ ...made, name: freeName(made.name, names) });
  };
  const addEmpty = () => {
    const id = newPieceId();
    const piece = gaugedAs(
      freshPiece(say('editor.newPiece'), names, mainOf(form), say('editor.starter body')),
      form.gauge,
    );
    change((old) => ({ ...old, pieces: [...old.pieces, { id, form: piece }] }), 'added');
    goTo(`${home}?piece=${id}`);
  };
  return (
    <section class="edit-stack" aria-labelledby="edit-add">
      <h2 id="edit-add">{say('editor.addPiece')}</h2>
      <p id="edit-starter-hint">{say(gauge ? 'editor.starterHint' : 'editor.starterNeedsGauge')}</p>
      <div class="edit-starters">
        {buttons.map(([name, label, icon]) => (
          <Button
            key={name}
            icon={icon}
            disabled={gauge === undefined}
            describedBy="edit-starter-hint"
            onPress={() => addStarter(name)}
          >
            {say(label)}
          </Button>
        ))}
      </div>
      <Button icon="plus" wide onPress={addEmpty}>
        {say('editor.addEmpty')}
      </Button>
    </section>
  );
}
