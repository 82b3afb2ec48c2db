import { useState } from 'preact/hooks';
import type { FormFault } from '../../knit/piece/form/check.ts';
import type { PieceForm } from '../../knit/piece/form/form.ts';
import type { PieceId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { type BandPlace, openSection, pieceOpen, shownPart } from './changes.ts';
import { saysHowMany, showBlanks } from './says-here.ts';

interface FaultButtonProps {
  readonly piece: PieceId;
  readonly form: PieceForm;
  readonly faults: readonly FormFault[];
}

/** How much keeps the piece from being knitted; opens the list of it, each with the way to its field. */
export function FaultButton({ piece, form, faults }: FaultButtonProps) {
  const [open, setOpen] = useState(false);
  const { text, isWrong } = saysHowMany(faults);
  const show = (found: FormFault) => () => {
    setOpen(false);
    goToFault(piece, found);
  };
  return (
    <>
      <Button icon={isWrong ? 'warning' : 'missing'} onPress={() => setOpen(true)}>
        {text}
      </Button>
      <Sheet open={open} title={text} onClose={() => setOpen(false)}>
        <ul class="edit-faults">
          {faults.map((found, i) => (
            // faults have no id and no state
            <li key={i} class="edit-stack">
              <p>
                {whereOf(form, found)} {saysFault(found.fault)}
              </p>
              <Button icon="onward" onPress={show(found)}>
                {say('editor.showFault')}
              </Button>
            </li>
          ))}
        </ul>
      </Sheet>
    </>
  );
}

function whereOf(form: PieceForm, { part, section }: FormFault): string {
  const inPart = part === undefined ? undefined : form.parts[part];
  if (inPart === undefined) return '';
  const names = form.parts.length > 1 ? [inPart.name] : [];
  if (section !== undefined) names.push(sectionTitle(inPart.sections[section]?.name, section));
  return names.length === 0 ? '' : `${names.join(', ')}:`;
}

export const sectionTitle = (name: string | undefined, index: number): string =>
  name?.trim() ? name.trim() : say('editor.section', { number: index + 1 });

/** Opens the section and moves to its first wrong field, or to the section itself. */
function goToFault(piece: PieceId, { part, section, field }: FormFault): void {
  showBlanks.value = true;
  if (part === undefined) pieceOpen.value = true;
  else {
    shownPart.value = part;
    openSection.value = { piece, part, section: section ?? (field === 'end' ? 'end' : 'start') };
  }
  setTimeout(() => {
    const place = document.getElementById(placeId(part, section)) ?? document.querySelector('main');
    const target =
      place?.querySelector<HTMLElement>('[aria-invalid="true"], [data-wrong] :is(input, select, button)') ??
      place?.querySelector<HTMLElement>('input, select, button');
    target?.scrollIntoView({ block: 'center' });
    target?.focus({ preventScroll: true });
  }, 50);
}

/** The id of a part's or a section's element. */
export const placeId = (part?: number, section?: BandPlace['section']): string =>
  part === undefined
    ? 'edit-piece'
    : section === undefined
      ? `edit-part-${part}`
      : `edit-section-${part}-${section}`;
