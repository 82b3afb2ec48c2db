import type { Flow } from '../say/flow.ts';
import type { Title } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { makeOwnRow } from './build/make-row.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';

/** A short line above rows or a cast-on names what follows. */
function nameNext(build: Build, title: Title | undefined): void {
  if (title === undefined || title.number) return;
  build.defining = undefined;
  build.heading = title;
}

export function workOwnWords(build: Build, one: Extract<Flow, { is: 'own words' }>, note: LineNotes): void {
  const { part } = build;
  const title = one.short && isDone(part);
  if (build.talk || !one.work || title || (part === undefined && build.defining === undefined)) {
    note.kind = note.kind ?? 'talk';
    if (!build.talk && one.short) build.title = one.title;
    if (isDone(part) && !build.talk) nameNext(build, one.title);
    return;
  }
  note.faults.push(one.fault);
  note.kind = 'own words';
  if (part === undefined || isDone(part) || build.defining !== undefined) return;
  build.line = one.from;
  if (makeOwnRow(build, part, one.words, one.stated ?? part.live)) return;
  if (one.stated === undefined) note.asksCount = true;
  else note.stated.push(one.stated);
}
