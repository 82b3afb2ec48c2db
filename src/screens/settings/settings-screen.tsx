import '../../ui/screen/columns.css';
import './settings.css';
import type { ComponentChildren } from 'preact';
import { hrefTo } from '../../app/routes.ts';
import {
  changeSetting,
  changeSpeech,
  chooseLanguage,
  languageAway,
} from '../../app/settings/change-settings.ts';
import { type Settings, settings } from '../../app/settings/settings.ts';
import { readFault } from '../../app/state.ts';
import { InTurn } from '../../pace/in-turn.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { languages, languageTable } from '../../words/languages.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { useArrival } from '../arrival.ts';
import { About } from './about.tsx';
import { Keeping } from './keeping.tsx';

export default function SettingsScreen() {
  useArrival(say('settings.title'));
  const fault = readFault.value;
  return (
    <Screen title={say('settings.title')} back={{ href: hrefTo('workbasket'), label: say('settings.back') }}>
      {fault && (
        <Notice kind="warning" title={say('settings.notKept')} live>
          {saysFault(fault)}
        </Notice>
      )}
      <div class="settings columns">
        <Shows what="columns" />
        <InTurn atOnce={2}>
          <Group title={say('settings.safe')}>
            <Keeping />
          </Group>
          <Group title={say('settings.words')}>
            <WordChoices />
          </Group>
          <Group title={say('settings.look')}>
            <LookChoices />
          </Group>
          <Group title={say('settings.while')}>
            <KnittingSwitches />
          </Group>
          <Group title={say('settings.about')}>
            <About />
          </Group>
        </InTurn>
      </div>
    </Screen>
  );
}

function Group({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <section class="settings-group">
      <h2>{title}</h2>
      {children}
    </section>
  );
}

const languageNames = languages.map((value) => ({ value, label: languageTable[value].name, lang: value }));

function WordChoices() {
  // read here: the choice is drawn again then, and shows the language that stayed
  const away = languageAway.value;
  const { language, terms, units, needles, rows } = speech.value;
  return (
    <>
      <Choice
        label={say('settings.language')}
        value={language}
        options={languageNames}
        onChange={(value) => void chooseLanguage(value)}
      />
      {away && (
        <Notice
          kind="warning"
          title={say('settings.languageAway', { language: languageTable[away].name })}
          live
        >
          {say('settings.languageAwayHelp')}
        </Notice>
      )}
      {language === 'en' && (
        <Choice
          label={say('settings.terms')}
          value={terms}
          options={[
            { value: 'US', label: say('settings.termsUS'), hint: say('settings.termsUShint') },
            { value: 'UK', label: say('settings.termsUK'), hint: say('settings.termsUKhint') },
          ]}
          stacked
          onChange={(value) => void changeSpeech('terms', value)}
        />
      )}
      <Choice
        label={say('settings.rows')}
        value={rows}
        options={[
          { value: 'abbreviated', label: say('settings.rowsShort'), hint: say('settings.rowsShortHint') },
          { value: 'full', label: say('settings.rowsFull'), hint: say('settings.rowsFullHint') },
        ]}
        stacked
        onChange={(value) => void changeSpeech('rows', value)}
      />
      <Choice
        label={say('settings.units')}
        value={units}
        options={[
          { value: 'cm', label: say('settings.unitsCm') },
          { value: 'in', label: say('settings.unitsIn') },
        ]}
        onChange={(value) => void changeSpeech('units', value)}
      />
      <Choice
        label={say('settings.needles')}
        value={needles}
        options={[
          { value: 'mm', label: say('settings.needlesMm') },
          { value: 'US', label: say('settings.needlesUS') },
          { value: 'UK', label: say('settings.needlesUK') },
          { value: 'JP', label: say('settings.needlesJP') },
        ]}
        onChange={(value) => void changeSpeech('needles', value)}
      />
    </>
  );
}

function LookChoices() {
  const { theme, hand } = settings.value;
  return (
    <>
      <Choice
        label={say('settings.theme')}
        value={theme}
        options={[
          { value: 'auto', label: say('settings.themeAuto') },
          { value: 'light', label: say('settings.themeLight') },
          { value: 'dark', label: say('settings.themeDark') },
        ]}
        onChange={(value) => void changeSetting('theme', value)}
      />
      <Choice
        label={say('settings.hand')}
        hint={say('settings.handHint')}
        value={hand}
        options={[
          { value: 'left', label: say('settings.handLeft') },
          { value: 'right', label: say('settings.handRight') },
        ]}
        onChange={(value) => void changeSetting('hand', value)}
      />
      <Switch name="dim" label={say('settings.dim')} hint={say('settings.dimHint')} />
    </>
  );
}

function KnittingSwitches() {
  return (
    <>
      <Switch name="buzz" label={say('settings.buzz')} hint={say('settings.buzzHint')} />
      <Switch name="tick" label={say('settings.tick')} hint={say('settings.tickHint')} />
      <Switch name="voice" label={say('settings.voice')} hint={say('settings.voiceHint')} />
      <Switch name="keys" label={say('settings.keys')} hint={say('settings.keysHint')} />
      <Switch name="headset" label={say('settings.headset')} hint={say('settings.headsetHint')} />
      <Switch name="rest" label={say('settings.rest')} hint={say('settings.restHint')} />
    </>
  );
}

interface SwitchProps {
  readonly name: { [K in keyof Settings]: Settings[K] extends boolean ? K : never }[keyof Settings];
  readonly label: string;
  readonly hint: string;
}

const Switch = ({ name, label, hint }: SwitchProps) => (
  <Toggle
    label={label}
    hint={hint}
    on={settings.value[name]}
    onChange={(on) => void changeSetting(name, on)}
  />
);
