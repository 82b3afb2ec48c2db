import { useState } from 'preact/hooks';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import type { IconName } from '../../ui/icon/icon.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';

export interface MenuEntry {
  readonly label: string;
  readonly icon?: IconName;
  readonly danger?: boolean;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

/** What else can be done with a thing of a list, behind one button. */
export function MoreMenu({
  name,
  entries,
  note,
}: {
  name: string;
  entries: readonly MenuEntry[];
  note?: string | undefined;
}) {
  const [open, setOpen] = useState(false);
  const label = say('editor.moreFor', { name });
  const pick = (entry: MenuEntry) => () => {
    setOpen(false);
    entry.onPress();
  };
  return (
    <>
      <IconButton icon="more" label={label} onPress={() => setOpen(true)} />
      <Sheet open={open} title={name} onClose={() => setOpen(false)}>
        <div class="edit-stack">
          {note && <p>{note}</p>}
          {entries.map((entry) => (
            <Button
              key={entry.label}
              wide
              {...(entry.icon ? { icon: entry.icon } : {})}
              kind={entry.danger ? 'danger' : 'plain'}
              disabled={entry.disabled ?? false}
              onPress={pick(entry)}
            >
              {entry.label}
            </Button>
          ))}
        </div>
      </Sheet>
    </>
  );
}
