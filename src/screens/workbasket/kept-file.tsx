import { useEffect } from 'preact/hooks';
import { keptFileLate, keptNews } from '../../app/backup/kept-file-late.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { loadWords, say } from '../../words/say.ts';
import { later } from '../later.tsx';

/** What another device has put into the kept file; few have one. */
const News = later(
  async () => (await Promise.all([import('../backup/kept-news.tsx'), loadWords('backup')]))[0].KeptNews,
);

/** She relies on a file that is kept up to date: of what comes from it, or where it is not, she hears without looking. */
export function KeptFile() {
  const hasNews = keptNews.value !== undefined;
  useEffect(() => {
    if (hasNews) void News.fetch();
  }, [hasNews]);
  return (
    <>
      <News />
      {keptFileLate.value !== undefined && <Late />}
    </>
  );
}

function Late() {
  const actions = <Button href={hrefTo('backup')}>{say('workbasket.toBackup')}</Button>;
  return (
    <Notice kind="fault" title={say('workbasket.keptFileLate')} actions={actions} live>
      {say('workbasket.keptFileLateHelp')}
    </Notice>
  );
}
