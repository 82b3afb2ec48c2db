import { changeSetting } from '../../app/intents/settings.ts';
import { hrefTo } from '../../app/routes.ts';
import { settings, type Settings } from '../../app/settings.ts';
import { canReadAloud } from '../../app/device/aloud.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';

export interface ToolsSheetProps {
  readonly open: boolean;
  readonly onReadAloud: () => void;
  readonly onClose: () => void;
}

type Switch = { [K in keyof Settings]: Settings[K] extends boolean ? K : never }[keyof Settings];

/** What is changed in the middle of knitting: light, sounds, voice. */
export function ToolsSheet({ open, onReadAloud, onClose }: ToolsSheetProps) {
  const toggle = (name: Switch, label: string, hint: string) => (
    <Toggle label={label} hint={hint} on={settings.value[name]} onChange={(on) => void changeSetting(name, on)} />
  );
  return (
    <Sheet open={open} title={say('knitting.tools')} onClose={onClose}>
      <div class="tools">
        {canReadAloud() && (
          <Button icon="speaker" wide onPress={onReadAloud}>
            {say('knitting.readAloud')}
          </Button>
        )}
        {toggle('dim', say('knitting.dim'), say('knitting.dimHelp'))}
        {toggle('buzz', say('knitting.buzz'), say('knitting.buzzHelp'))}
        {toggle('tick', say('knitting.tick'), say('knitting.tickHelp'))}
        {canReadAloud() && toggle('voice', say('knitting.voice'), say('knitting.voiceHelp'))}
        <Button icon="settings" href={hrefTo('settings')}>
          {say('knitting.allSettings')}
        </Button>
      </div>
    </Sheet>
  );
}
