import { useEffect, useState } from 'preact/hooks';
import { isSampleName, openSample } from '../../app/garments/sample.ts';
import { goInstead } from '../../app/navigate.ts';
import type { Route } from '../../app/routes.ts';
import type { Fault } from '../../knit/fault.ts';
import { hrefToMake } from '../links.ts';
import { Opening } from './opening.tsx';

/** Makes a sample where it is missing and opens its first piece. */
export default function SampleScreen({ route }: { readonly route: Route }) {
  const asked = route.at.which ?? 'sample';
  const which = isSampleName(asked) ? asked : 'sample';
  const [fault, setFault] = useState<Fault>();
  useEffect(() => {
    void openSample(which).then((opened) => {
      if (opened.ok) goInstead(hrefToMake(opened.value));
      else setFault(opened.faults[0]);
    });
  }, [which]);
  return <Opening fault={fault} />;
}
