import type { ComponentChildren } from 'preact';
import { openGarment } from '../app/garments/open-garments.ts';
import { hrefTo, type Route } from '../app/routes.ts';
import { type GarmentView, garmentShown, readFault } from '../app/state.ts';
import { Notice } from '../ui/notice/notice.tsx';
import { Screen } from '../ui/screen/screen.tsx';
import { saysFault } from '../words/fault.ts';
import { say } from '../words/say.ts';
import { useArrival } from './arrival.ts';
import { useFresh } from './use-fresh.ts';

export interface GarmentPageProps {
  readonly route: Route;
  readonly title: string;
  readonly children: (view: GarmentView) => ComponentChildren;
}

/** The frame of a page that belongs to one garment: reads it, leads back to it, says so where it is gone. */
export function GarmentPage({ route, title, children }: GarmentPageProps) {
  const id = route.at.garment ?? '';
  useFresh(() => openGarment(id), { garment: id });
  const view = garmentShown.value;
  const here = view?.garment.id === id ? view : undefined;
  useArrival(here ? `${title} · ${here.garment.name}` : title);
  const back = here
    ? {
        href: hrefTo('garment', { garment: id }),
        label: say('garment.backTo', { garment: here.garment.name }),
      }
    : { href: hrefTo('workbasket'), label: say('garment.toWorkbasket') };
  return (
    <Screen title={title} over={here?.garment.name} back={back}>
      {readFault.value && <Notice kind="fault" title={saysFault(readFault.value)} />}
      {view === null && <Notice kind="note" title={say('garment.none')} />}
      {here && children(here)}
    </Screen>
  );
}
