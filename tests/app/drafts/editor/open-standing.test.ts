import { expect, it } from 'vitest';
import { openStanding, standingEdited } from '../../../../src/app/drafts/editor/mending.ts';
import { openApp } from '../../open-app.ts';

it('a garment that is edited is shown as it stands while it is read again, and another one not before it is read', async () => {
  await openApp();
  await openStanding('sample');
  const first = standingEdited.value;
  expect(first?.garment.id).toBe('sample');
  const again = openStanding('sample');
  expect(standingEdited.value).toBe(first);
  await again;
  expect(standingEdited.value?.garment.id).toBe('sample');
  const other = openStanding('none');
  expect(standingEdited.value).toBeUndefined();
  await other;
  expect(standingEdited.value).toBeUndefined();
});
