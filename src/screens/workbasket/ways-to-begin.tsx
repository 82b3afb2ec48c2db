import { hrefTo, patterns, type ScreenName } from '../../app/routes.ts';
import { Card } from '../../ui/card/card.tsx';
import { Icon, type IconName } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';

interface Way {
  readonly screen: string;
  readonly icon: IconName;
  readonly title: Parameters<typeof say>[0];
  readonly help: Parameters<typeof say>[0];
}

const ways = [
  { screen: 'sample', icon: 'garment', title: 'workbasket.sample', help: 'workbasket.sampleHelp' },
  { screen: 'samples', icon: 'garment', title: 'workbasket.samples', help: 'workbasket.samplesHelp' },
  { screen: 'newGarment', icon: 'numbers', title: 'workbasket.byNumbers', help: 'workbasket.byNumbersHelp' },
  { screen: 'draft', icon: 'swatch', title: 'workbasket.draft', help: 'workbasket.draftHelp' },
  { screen: 'read', icon: 'text', title: 'workbasket.copy', help: 'workbasket.copyHelp' },
  { screen: 'backup', icon: 'file', title: 'workbasket.backup', help: 'workbasket.backupHelp' },
] as const satisfies readonly Way[];

const hasScreen = (name: string): name is ScreenName => Object.hasOwn(patterns, name);

export interface WaysToBeginProps {
  /** the sample is not in the basket yet */
  readonly sample?: boolean;
  /** this way alone */
  readonly only?: 'backup';
}

/** How a garment comes into the basket; only ways that this build has. */
export function WaysToBegin({ sample = false, only }: WaysToBeginProps) {
  const wanted = (screen: string) => (only === undefined ? sample || screen !== 'sample' : screen === only);
  return (
    <ul role="list" class="ways">
      {ways.map(({ screen, icon, title, help }) =>
        hasScreen(screen) && wanted(screen) ? (
          <li key={screen}>
            <Card href={hrefTo(screen)}>
              <div class="way">
                <Icon name={icon} size="l" />
                <p>
                  <strong>{say(title)}</strong>
                  <span class="quiet">{say(help)}</span>
                </p>
              </div>
            </Card>
          </li>
        ) : null,
      )}
    </ul>
  );
}
