import { useEffect, useState } from 'preact/hooks';
import { openSample } from '../../app/intents/sample.ts';
import { goInstead } from '../../app/navigate.ts';
import type { Fault } from '../../knit/fault.ts';
import { hrefToMake } from '../links.ts';
import { Opening } from './opening.tsx';

/** Makes the sample where it is missing and opens its first piece. */
export default function SampleScreen() {
  const [fault, setFault] = useState<Fault>();
  useEffect(() => {
    void openSample().then((opened) => {
      if (opened.ok) goInstead(hrefToMake(opened.value));
      else setFault(opened.faults[0]);
    });
  }, []);
  return <Opening fault={fault} />;
}
