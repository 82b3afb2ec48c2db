import { RestNotice } from './rest-notice.tsx';
import { WaysNotice } from './ways-notice.tsx';

/** What has to be seen before the next row, and comes seldom. */
export const OverRow = () => (
  <>
    <WaysNotice />
    <RestNotice />
  </>
);
