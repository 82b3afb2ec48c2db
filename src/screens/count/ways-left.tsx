import { useEffect, useState } from 'preact/hooks';
import { goBy, type WayToTell, waysOf } from '../../app/in-hand/ways.ts';
import type { InHand } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { saysDevice } from '../knitting/ways-notice.tsx';

/** Ways of other devices that she left when they were united: each can be taken up again. */
export function WaysLeft({ now }: { readonly now: InHand }) {
  const [ways, setWays] = useState<readonly WayToTell[]>([]);
  const { place } = now;
  useEffect(() => {
    void waysOf(place).then((found) => found && setWays(found.left));
  }, [place]);
  return (
    <>
      {ways.map(({ way, rows, stitches, isHere }) => (
        <Notice
          key={way.end}
          kind="note"
          actions={<Button onPress={() => void goBy(now, way)}>{say('ways.takeUp')}</Button>}
        >
          {say('ways.left', {
            row: rows,
            stitches: saysStitches(stitches),
            device: saysDevice(isHere),
          })}
        </Notice>
      ))}
    </>
  );
}
