import { effect, signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { route } from '../app/navigate.ts';
import { hrefTo, type Route } from '../app/routes.ts';
import { later } from '../pace/first-screen.ts';
import { Button } from '../ui/button/button.tsx';
import { Notice } from '../ui/notice/notice.tsx';
import { Screen } from '../ui/screen/screen.tsx';
import { loadFaults } from '../words/fault.ts';
import { loadWords, say } from '../words/say.ts';
import { useArrival } from './arrival.ts';
import { loadScreen } from './table.ts';

type Shown =
  | { readonly route: Route; readonly Screen: ComponentType<{ readonly route: Route }> }
  | { readonly trouble: 'lost' | 'screenFailed' };

/** The screen in sight stays until the next one is loaded: nothing flashes. */
const shown = signal<Shown | undefined>(undefined);

async function show(to: Route | undefined): Promise<void> {
  const next = await load(to);
  if (route.value === to) shown.value = next;
  // without them a fault is said in its own plain English
  later('sentences', loadFaults);
}

async function load(to: Route | undefined): Promise<Shown> {
  try {
    if (to !== undefined) return { route: to, Screen: (await loadScreen(to.screen)).default };
    await loadWords('workbasket');
    return { trouble: 'lost' };
  } catch {
    // a first visit cut off, or a file that an update took away
    await loadWords('workbasket').catch(() => undefined);
    return { trouble: 'screenFailed' };
  }
}

export function Shell() {
  // at once, not when a frame without a screen has been painted
  useLayoutEffect(() => effect(() => void show(route.value)), []);
  const now = shown.value;
  if (now === undefined) return null;
  if ('trouble' in now) return <Trouble what={now.trouble} />;
  return <now.Screen key={keyOf(now.route)} route={now.route} />;
}

/** Another garment, another make: drawn anew. Another query (a row looked at) is not. */
const keyOf = ({ screen, at }: Route): string => [screen, ...Object.values(at)].join('/');

function Trouble({ what }: { readonly what: 'lost' | 'screenFailed' }) {
  const title = what === 'lost' ? say('workbasket.lost') : say('workbasket.screenFailed');
  useArrival(title);
  return (
    <Screen title={title === '' ? 'Ridgeline' : title}>
      <Notice kind={what === 'lost' ? 'note' : 'fault'} live>
        {what === 'lost' ? say('workbasket.lostHelp') : say('workbasket.screenFailedHelp')}
      </Notice>
      {what === 'lost' ? (
        <Button kind="main" href={hrefTo('workbasket')}>
          {say('workbasket.toWorkbasket')}
        </Button>
      ) : (
        <Button kind="main" onPress={() => location.reload()}>
          {say('workbasket.reload')}
        </Button>
      )}
    </Screen>
  );
}
