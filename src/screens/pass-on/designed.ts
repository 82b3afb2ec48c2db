import { keptPeople } from '../../app/drafts/design/designer.ts';
import type { DesignForm, Person } from '../../app/drafts/design/form.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import type { SizeSet } from '../../app/garments/size-set.ts';
import type { PassedOn } from '../../store/share/link.ts';

/** What its design tells, where it came with one. */
export interface Designed {
  readonly form: DesignForm;
  readonly set: SizeSet | undefined;
  readonly people: readonly Person[];
}

export async function readDesign({ design, sizes }: PassedOn): Promise<Designed | 'none'> {
  const [form, set, people] = await Promise.all([
    readKept('designForm', design),
    readKept('sizeSet', sizes),
    keptPeople(),
  ]);
  return form.ok && form.value ? { form: form.value, set: set.ok ? set.value : undefined, people } : 'none';
}
