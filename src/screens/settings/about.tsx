import { useState } from 'preact/hooks';
import { copyText } from '../../app/device/hand-over.ts';
import { appVersion } from '../../app/start/service-worker.ts';
import { Button } from '../../ui/button/button.tsx';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';

/** What she may want to tell when something goes wrong, and the licences of what is inside. */
export function About() {
  const [isCopied, setCopied] = useState<boolean>();
  const copy = async () => setCopied(await copyText(circumstances()));
  return (
    <div class="settings-about">
      <p>{say('settings.faultHelp')}</p>
      <p class="settings-small settings-circumstances">{circumstances()}</p>
      <Button onPress={() => void copy()}>{say('settings.faultCopy')}</Button>
      <p role="status">
        {isCopied === undefined ? '' : say(isCopied ? 'settings.faultCopied' : 'settings.faultNotCopied')}
      </p>
      <p>
        <a href="./licences.txt" target="_blank" rel="noopener">
          {say('settings.licences')}
        </a>
      </p>
    </div>
  );
}

/** Version, browser and screen: nothing of what she knits, and no address. */
const circumstances = (): string =>
  [
    `Ridgeline ${appVersion}`,
    navigator.userAgent,
    `${screen.width} × ${screen.height} (× ${devicePixelRatio})`,
    speech.value.language,
  ].join(' · ');
