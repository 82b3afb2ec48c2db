import '../../ui/screen/columns.css';
import './count.css';
import type { ComponentType } from 'preact';
import { inHandAsItStands } from '../../app/garments/as-it-stands.ts';
import { logInHand, openCount } from '../../app/in-hand/count.ts';
import { makeAt, type Route } from '../../app/routes.ts';
import { garmentInHand, type InHand, inHand, readFault } from '../../app/state.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';
import { useFresh } from '../use-fresh.ts';
import { CheckPage } from './check-page.tsx';
import type { CountPageProps } from './count-page.ts';
import { FindPage } from './find-page.tsx';
import { NotesPage } from './notes-page.tsx';
import { PacePage } from './pace-page.tsx';
import { ReworkPage } from './rework-page.tsx';
import { RipPage } from './rip-page.tsx';
import { TogetherPage } from './together-page.tsx';
import { isTool, type Tool, toolTitles } from './tools.ts';
import { ToolsMenu } from './tools-menu.tsx';

const pages: Readonly<Record<Tool, ComponentType<CountPageProps>>> = {
  check: CheckPage,
  find: FindPage,
  rip: RipPage,
  rework: ReworkPage,
  notes: NotesPage,
  pace: PacePage,
  together: TogetherPage,
};

export default function CountScreen({ route }: { readonly route: Route }) {
  const { tool = '' } = route.at;
  const key = makeAt(route);
  useFresh(() => openCount(key), { garment: route.at.garment, make: key });
  const now = inHand.value;
  const log = logInHand.value;
  const title = isTool(tool) ? say(toolTitles[tool]) : say('count.tools');
  const isHere = now?.make === key && log?.make === key && garmentInHand.value !== undefined;
  useArrival(title, isHere);
  const Page = isTool(tool) ? pages[tool] : undefined;
  return (
    <Screen
      title={title}
      over={now ? over(now) : undefined}
      back={{ href: hrefToMake(key), label: say('count.backToRow') }}
    >
      <div class="count-page">
        {readFault.value && (
          <Notice kind="fault" live>
            {saysFault(readFault.value)}
          </Notice>
        )}
        {isHere &&
          now &&
          log &&
          (Page ? (
            <Page
              key={tool}
              now={inHandAsItStands(now, garmentInHand.value)}
              entries={log.entries}
              query={route.query}
            />
          ) : (
            <>
              <Shows what="columns" />
              <ToolsMenu make={key} />
            </>
          ))}
      </div>
    </Screen>
  );
}

const over = (now: InHand): string => {
  const view = garmentInHand.value?.pieces.find(({ id }) => id === now.place.piece);
  return saysMake(now.part.piece, now.part.name, now.place.make, view?.recipe ?? now.place.make);
};
