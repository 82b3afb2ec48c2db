import { useEffect } from 'preact/hooks';
import { lockAsLeft } from '../../app/device/kept-locked.ts';
import { RestNotice } from './rest-notice.tsx';
import { WaysNotice } from './ways-notice.tsx';

/** What has to be seen before the next row, and comes seldom; that it is locked still, first of all. */
export function OverRow() {
  useEffect(() => {
    let isShown = true;
    void lockAsLeft(() => isShown);
    return () => {
      isShown = false;
    };
  }, []);
  return (
    <>
      <WaysNotice />
      <RestNotice />
    </>
  );
}
