import { useEffect } from 'preact/hooks';
import { canReadAloud, readAloud } from '../../app/device/aloud.ts';
import { keyInHand } from '../../app/in-hand/make-in-hand.ts';
import { hrefTo } from '../../app/routes.ts';
import { changeSetting } from '../../app/settings/change-settings.ts';
import { type Settings, settings } from '../../app/settings/settings.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { languageTag, loadWords, say } from '../../words/say.ts';
import { ToolsMenu } from '../count/tools-menu.tsx';

export interface ToolsSheetProps {
  readonly open: boolean;
  /** what is read aloud when she asks */
  readonly sentence: string;
  readonly onClose: () => void;
}

type Switch = { [K in keyof Settings]: Settings[K] extends boolean ? K : never }[keyof Settings];

/** What is asked for in the middle of knitting: count and place, light, sounds, voice. */
export function ToolsSheet({ open, sentence, onClose }: ToolsSheetProps) {
  useEffect(() => {
    if (open) void loadWords('settings', 'count');
  }, [open]);
  const toggle = (name: Switch, label: string, hint: string) => (
    <Toggle
      label={label}
      hint={hint}
      on={settings.value[name]}
      onChange={(on) => void changeSetting(name, on)}
    />
  );
  return (
    <Sheet open={open} title={say('knitting.tools')} onClose={onClose}>
      <div class="tools">
        {keyInHand.value && <ToolsMenu make={keyInHand.value} />}
        {canReadAloud() && (
          <Button icon="speaker" wide onPress={() => readAloud(sentence, languageTag())}>
            {say('lap.readAloud')}
          </Button>
        )}
        {toggle('dim', say('settings.dim'), say('settings.dimHint'))}
        {toggle('buzz', say('settings.buzz'), say('settings.buzzHint'))}
        {toggle('tick', say('settings.tick'), say('settings.tickHint'))}
        {canReadAloud() && toggle('voice', say('settings.voice'), say('settings.voiceHint'))}
        <Button icon="settings" href={hrefTo('settings')}>
          {say('lap.allSettings')}
        </Button>
      </div>
    </Sheet>
  );
}
