import { editor } from '../../app/drafts/editor/editor.ts';
import type { PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { roleShown } from '../../app/drafts/editor/renaming.ts';
import { pieceRoles } from '../../knit/piece/recipe.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { say } from '../../words/say.ts';
import { changePiece } from './changes.ts';

/** What the piece is in the garment: the making up sews it by this, not by its name. */
export function RoleField({ entry }: { readonly entry: PieceEntry }) {
  return (
    <SelectField
      label={say('editor.role')}
      hint={say('editor.roleHint')}
      value={roleShown(entry, editor.value?.old)}
      options={pieceRoles.map((role) => ({ value: role, label: say(`editor.role ${role}`) }))}
      onChange={(role) => changePiece(entry.id, (old) => ({ ...old, role }), 'role', 'role')}
    />
  );
}
