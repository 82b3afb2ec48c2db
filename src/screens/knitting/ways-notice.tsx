import './ways-notice.css';
import { useEffect, useState } from 'preact/hooks';
import { goBy, type WayToTell, waysOf } from '../../app/in-hand/ways.ts';
import { type InHand, inHand } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';

/** Two devices knitted this make without each other, and not the same: she says which is on the needles. */
export function WaysNotice() {
  const now = inHand.value;
  return now?.place.ways ? <Choice key={now.make} now={now} /> : null;
}

/** A line above the row, which takes the place of what stands around its number: words and count stay in sight. */
function Choice({ now }: { readonly now: InHand }) {
  const [ways, setWays] = useState<readonly WayToTell[]>([]);
  const [open, setOpen] = useState(false);
  const { place } = now;
  useEffect(() => {
    void waysOf(place).then((found) => found && setWays(found.open));
  }, [place]);
  const asks = ways.length > 1;
  useEffect(() => {
    document.documentElement.classList.toggle('asks-way', asks);
    return () => document.documentElement.classList.remove('asks-way');
  }, [asks]);
  if (!asks) return null;
  const go = (way: WayToTell['way']) => {
    setOpen(false);
    void goBy(now, way);
  };
  return (
    <div role="status">
      <button type="button" class="ways-ask" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        <Icon name="warning" />
        <span>{say('ways.open')}</span>
        <Icon name="onward" />
      </button>
      <Sheet open={open} title={say('ways.title')} onClose={() => setOpen(false)}>
        <p>{say('ways.ask')}</p>
        <div class="ways-choices">
          {ways.map((one) => (
            <Button key={one.way.end} wide onPress={() => go(one.way)}>
              {saysWay(one)}
              {one.rows > 0 && <span class="ways-count">{saysStitches(one.stitches)}</span>}
              <small>{saysDevice(one.isHere)}</small>
            </Button>
          ))}
        </div>
      </Sheet>
    </div>
  );
}

/** 'Row 36 worked', not '36 of 50': by its heading the screen behind it is at row 37 then. Below it count and device. */
const saysWay = ({ rows, total }: WayToTell): string =>
  rows === 0 ? say('ways.chooseStart', { rows: total }) : say('ways.choose', { row: rows });

export const saysDevice = (isHere: boolean): string => say(isHere ? 'ways.here' : 'ways.elsewhere');
