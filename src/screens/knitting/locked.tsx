import { locked } from '../../app/state.ts';
import { HoldButton } from '../../ui/pad/hold-button.tsx';
import { say } from '../../words/say.ts';

/** Against pockets, cats and children. */
export function Locked() {
  const unlock = () => {
    locked.value = false;
  };
  return (
    <div class="locked">
      <p>{say('notices.locked')}</p>
      <HoldButton label={say('notices.holdToUnlock')} onHeld={unlock} />
    </div>
  );
}
