import { type FabricName, fits } from '../../../fabric.ts';
import type { FabricSaid } from '../../say/statement.ts';
import type { Build, PartBuild } from './build.ts';
import { fabricOf, nominal } from './fabric.ts';
import type { FabricState } from './fabric-state.ts';

/** 'Hem, in k2, p2 rib:' opens a section with the next row; its rows are spelled out, or it goes on in the fabric. */
export function beginSection(build: Build, part: PartBuild, name: string, said: FabricSaid): void {
  const fabric = fabricOf(said, build, part);
  if (!fabric) return;
  part.told = { name, fabric, was: part.fabric, begun: false };
  part.closed = true;
}

/** A row that the text leaves to the fabric is worked in the one that the section was said to be in. */
export function takeToldFabric(part: PartBuild): void {
  const { told } = part;
  // 'Hem, in garter st: Row 1: knit. Work 3 rows': the row spelled out is not all of it
  if (!told || (told.begun && (part.fabric !== told.was || part.cycle?.repeated))) return;
  told.was = undefined;
  part.fabric = told.fabric;
  part.fabricRow = (part.rows.length + (part.firstSide === 'WS' ? 1 : 0)) % 2;
  part.column = 0;
}

/** The fabric of a section of so many stitches: a rib of one and one has a stitch more where it begins and ends alike. */
export function fabricNamed(fabric: FabricState, stitches: number): FabricName {
  const name = nominal(fabric);
  return name === 'rib 1x1' && !fits(name, stitches).fits ? 'rib 1x1 matched' : name;
}
