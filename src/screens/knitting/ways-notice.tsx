import { useEffect, useState } from 'preact/hooks';
import { goBy, type WayToTell, waysOf } from '../../app/in-hand/ways.ts';
import { type InHand, inHand } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';

/** Two devices knitted this make without each other, and not the same: she says which is on the needles. */
export function WaysNotice() {
  const now = inHand.value;
  return now?.place.ways ? <Choice key={now.make} now={now} /> : null;
}

function Choice({ now }: { readonly now: InHand }) {
  const [ways, setWays] = useState<readonly WayToTell[]>([]);
  const { place } = now;
  useEffect(() => {
    void waysOf(place).then((found) => found && setWays(found.open));
  }, [place]);
  if (ways.length < 2) return null;
  const actions = ways.map((one) => (
    <Button key={one.way.end} wide onPress={() => void goBy(now, one.way)}>
      {saysWay(one)}
    </Button>
  ));
  return (
    <Notice kind="warning" title={say('ways.title')} actions={actions} live>
      {say('ways.ask')}
    </Notice>
  );
}

/** 'Row 36 of 50, 54 stitches · this device'. */
function saysWay({ rows, total, stitches, isHere }: WayToTell): string {
  const device = saysDevice(isHere);
  if (rows === 0) return say('ways.chooseStart', { rows: total, device });
  return say('ways.choose', { row: rows, rows: total, stitches: saysStitches(stitches), device });
}

export const saysDevice = (isHere: boolean): string => say(isHere ? 'ways.here' : 'ways.elsewhere');
