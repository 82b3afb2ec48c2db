import { lookNow } from '../../app/backup/backup-file.ts';
import { keptNews } from '../../app/backup/kept-file-late.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { PreviewList } from './preview-list.tsx';

/** What another device has put into the file that is kept up to date. */
export function KeptNews() {
  const news = keptNews.value;
  if (news === undefined) return null;
  const { name, took } = news;
  if (took === undefined)
    return (
      <Notice
        kind="note"
        title={say('backup.keptAsks', { name })}
        actions={<Button onPress={() => void lookNow()}>{say('backup.keptLook')}</Button>}
      />
    );
  const seen = () => {
    keptNews.value = undefined;
  };
  return (
    <Notice
      kind="done"
      title={say('backup.keptTook', { name })}
      actions={<Button onPress={seen}>{say('backup.keptSeen')}</Button>}
      live
    >
      <PreviewList preview={{ ...took, same: 0 }} />
      <p>{say('backup.keptUndo')}</p>
    </Notice>
  );
}
