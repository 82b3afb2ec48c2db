import { type JoinedAsTold, joinedAsTold } from './joined-as-told.ts';
import { stripesTold, type ToldStripes } from './read-stripes.ts';

/** What a text tells of a garment beside its rows. */
export interface AsTold extends JoinedAsTold {
  /** none where it is not striped */
  readonly stripes: readonly ToldStripes[];
}

/** A read pattern made up and coloured as its text tells. */
export const asTold = (read: Parameters<typeof joinedAsTold>[0]): AsTold => ({
  ...joinedAsTold(read),
  stripes: stripesTold(read),
});
