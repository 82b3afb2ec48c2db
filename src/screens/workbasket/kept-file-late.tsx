import { keptFileLate } from '../../app/backup/kept-file-late.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';

/** She relies on a file that is kept up to date: where it is not, she hears of it without looking for it. */
export function KeptFileLate() {
  if (keptFileLate.value === undefined) return null;
  const actions = <Button href={hrefTo('backup')}>{say('workbasket.toBackup')}</Button>;
  return (
    <Notice kind="fault" title={say('workbasket.keptFileLate')} actions={actions} live>
      {say('workbasket.keptFileLateHelp')}
    </Notice>
  );
}
