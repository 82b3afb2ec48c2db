import type { Fault } from '../../knit/fault.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';

/** Why a garment cannot be opened, or not with such figures. */
export const Cannot = ({ faults }: { readonly faults: readonly Fault[] }) => (
  <Notice kind="fault" title={say('passOn.cannot')}>
    {faults.map((fault) => (
      <p key={fault.code}>{saysFault(fault)}</p>
    ))}
  </Notice>
);
