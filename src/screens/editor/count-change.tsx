import { saysInTurn } from '../../words/in-turn.ts';
import { say } from '../../words/say.ts';

/** Stitches before and after: '102 → 86', '102' where they stay; a question mark where one is not known. */
export function CountChange({
  before,
  after,
}: {
  readonly before: number | undefined;
  readonly after: number | undefined;
}) {
  const shown =
    before !== undefined && before === after ? String(before) : saysInTurn([before ?? '?', after ?? '?']);
  const unknown = say('editor.unknownCount');
  return (
    <span class="edit-count">
      <span aria-hidden="true">{shown}</span>
      <span class="spoken">
        {say('editor.countChangeSpoken', { before: before ?? unknown, after: after ?? unknown })}
      </span>
    </span>
  );
}
