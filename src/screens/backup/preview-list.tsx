import type { Preview } from '../../app/backup/backup.ts';
import { saysInTurn } from '../../words/in-turn.ts';
import { say } from '../../words/say.ts';
import { saysMake } from '../says-make.ts';

/** What taking a file in would change, garment by garment. */
export function PreviewList({ preview }: { readonly preview: Preview }) {
  const { garments, same, photos } = preview;
  if (garments.length === 0 && photos === 0) return <p>{say('backup.nothing')}</p>;
  return (
    <>
      <ul class="backup-changes">
        {garments.map((garment) => (
          <li key={garment.id}>
            {saysGarment(garment)}
            {garment.makes.length > 0 && garment.kind === 'changed' && (
              <ul>
                {garment.makes.map((make) => (
                  <li key={make.key}>{saysChange(make)}</li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ul>
      {photos > 0 && <p>{say('backup.photos', { count: photos })}</p>}
      {same > 0 && <p>{say('backup.same', { count: same })}</p>}
    </>
  );
}

type GarmentChange = Preview['garments'][number];

function saysGarment({ name, kind, entriesIn }: GarmentChange): string {
  if (kind === 'new') return say('backup.new', { name });
  if (kind === 'gone') return say('backup.gone', { name });
  return entriesIn > 0
    ? say('backup.changedRows', { name, count: entriesIn })
    : say('backup.changed', { name });
}

type MakeChange = GarmentChange['makes'][number];

export const saysMakeOf = ({ piece, part, make, makes }: MakeChange): string =>
  saysMake(piece, part, make, makes);

/** 'Back: row 35 → 38 done'. */
function saysChange(change: MakeChange): string {
  const { here = 0, there = 0, after = 0 } = change;
  const what = saysMakeOf(change);
  if (change.twoWays)
    return say('backup.twoWays', {
      what,
      row: here,
      rows: change.twoWays.here,
      fileRow: there,
      fileRows: change.twoWays.there,
    });
  return here === after
    ? say('backup.staysAt', { what, row: here, fileRow: there })
    : say('backup.from', { what, rows: saysInTurn([here, after]) });
}
