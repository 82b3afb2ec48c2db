import type { Preview } from '../../app/backup/backup.ts';
import { Button } from '../../ui/button/button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';
import { saysMakeOf } from './preview-list.tsx';

export interface WhatGoesProps {
  readonly preview: Preview;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onReplace: () => void;
}

/** Asks before everything is replaced, and names what goes with it. */
export function WhatGoes({ preview, open, onClose, onReplace }: WhatGoesProps) {
  const goes = preview.garments.flatMap(saysGoing);
  const actions = (
    <>
      <Button onPress={onClose}>{say('backup.replaceNo')}</Button>
      <Button kind="danger" onPress={onReplace}>
        {say('backup.replaceYes')}
      </Button>
    </>
  );
  return (
    <Sheet open={open} title={say('backup.replaceAsk')} actions={actions} onClose={onClose}>
      {/* before the list, which may be long: in large letters it would be behind the keys */}
      <p>{say('backup.undoUntil')}</p>
      {goes.length === 0 ? (
        <p>{say('backup.nothingGoes')}</p>
      ) : (
        <>
          <p>{say('backup.goes')}</p>
          <ul class="backup-changes">
            {goes.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </Sheet>
  );
}

type GarmentChange = Preview['garments'][number];

/** 'Harbour pullover, 118 rows of Back'. */
function saysGoing({ name, kind, entriesOut, makes }: GarmentChange): readonly string[] {
  const rows = makes.flatMap((make) => {
    const count = (make.here ?? 0) - (make.after ?? 0);
    return count > 0 ? [say('backup.rowsGo', { name, count, what: saysMakeOf(make) })] : [];
  });
  if (rows.length > 0) return rows;
  if (kind === 'gone') return [name];
  return entriesOut > 0 ? [say('backup.entriesGo', { name, count: entriesOut })] : [];
}
