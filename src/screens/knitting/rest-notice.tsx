import { takeRest } from '../../app/device/tell.ts';
import { changeSetting } from '../../app/settings/change-settings.ts';
import { restDue } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';

/** Shown when the rest is due: a caution, not a stop: rows can be finished below it. */
export function RestNotice() {
  if (!restDue.value) return null;
  const never = () => {
    takeRest();
    void changeSetting('rest', false);
  };
  const actions = (
    <>
      <Button onPress={takeRest}>{say('notices.restDone')}</Button>
      <Button kind="quiet" onPress={never}>
        {say('notices.restNever')}
      </Button>
    </>
  );
  return (
    <Notice kind="note" title={say('notices.restTitle')} actions={actions} live>
      {say('notices.restBody')}
    </Notice>
  );
}
