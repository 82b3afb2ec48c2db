import { describe, expect, it } from 'vitest';
import { nextTask } from '../../../src/pace/next-task.ts';
import { troubleIn, troubleInPlan, troubleInTurn } from '../../../src/store/shapes/check-record.ts';
import { plainPart, planOf, scarf } from '../scenario.ts';

const { garment, plans } = scarf();
const [long, cuff] = garment.pieces as [(typeof garment.pieces)[0], (typeof garment.pieces)[0]];
const trouble = (of: object) => troubleIn({ ...garment, ...of }, plans);
const named = (name: string) => ({ pieces: [long, { ...cuff, recipe: { ...cuff.recipe, name } }] });

describe('what no backup could bring back', () => {
  it('is nothing in a sound garment, and what is undefined is not there', () => {
    expect(troubleIn(garment, plans)).toBeUndefined();
    expect(trouble({ notes: undefined })).toBeUndefined();
  });

  it('is a text that is too long: where it stands, how long it is and may be', () => {
    const long = (whereText: string, characters: number, mostCharacters: number) => ({
      code: 'text-too-long',
      figures: { whereText, characters, mostCharacters },
    });
    expect(trouble({ name: 'n'.repeat(200) })).toBeUndefined();
    expect(trouble({ name: 'n'.repeat(201) })).toMatchObject(long('name', 201, 200));
    expect(trouble({ notes: 'n'.repeat(100_000) })).toBeUndefined();
    expect(trouble({ notes: 'n'.repeat(100_003) })).toMatchObject(long('notes', 100_003, 100_000));
    expect(trouble(named('n'.repeat(250)))).toMatchObject(long('pieces.1.recipe.name', 250, 200));
  });

  it('is by its place alone whatever else it is: too short, too many, no number, a sign that no id has', () => {
    const odd = (detailText: string) => ({ code: 'not-storable', figures: { detailText } });
    expect(trouble({ name: '' })).toMatchObject(odd('name'));
    const ticked = (length: number) => trouble({ ticked: Array.from({ length }, () => '') });
    expect(ticked(5000)).toBeUndefined();
    expect(ticked(5001)).toMatchObject(odd('ticked'));
    expect(trouble({ changedAt: 'today' })).toMatchObject(odd('changedAt'));
    expect(trouble({ id: 'a/b' })).toMatchObject(odd('id'));
    expect(trouble(named(''))).toMatchObject(odd('pieces.1.recipe.name'));
    expect(trouble({ ['x'.repeat(300)]: 1 })).toMatchObject(odd('x'.repeat(200)));
  });

  it('is looked for in the garment first, then in its plans one after the other', () => {
    const bad = (n: number) => {
      const plan = planOf('scarf', 'long', 4);
      return { ...plan, version: n };
    };
    expect(troubleIn(garment, [...plans, bad(-1)])).toMatchObject({ figures: { detailText: 'version' } });
    expect(troubleIn({ ...garment, name: '' }, [bad(-1)])).toMatchObject({ figures: { detailText: 'name' } });
  });

  it('is found in the same order where a task is taken for each plan, and other work comes between', async () => {
    const bad = { ...planOf('scarf', 'long', 4), version: -1 };
    const asked = [plans, [...plans, bad], [bad, ...plans]];
    for (const all of asked) expect(await troubleInTurn(garment, all)).toEqual(troubleIn(garment, all));
    expect(await troubleInTurn({ ...garment, name: '' }, [bad])).toEqual(
      troubleIn({ ...garment, name: '' }, [bad]),
    );
    const order: string[] = [];
    const looked = troubleInTurn(garment, plans).then(() => order.push('looked through'));
    for (const _ of plans) await nextTask().then(() => order.push('other work'));
    await looked;
    expect(order.indexOf('looked through')).toBeGreaterThanOrEqual(plans.length - 1);
  });

  it('is the same of a new plan and of the recipe that its piece shall have', () => {
    const plan = plainPart(4);
    expect(troubleInPlan({ plan }, undefined)).toBeUndefined();
    expect(troubleInPlan({ plan }, long.recipe)).toBeUndefined();
    expect(troubleInPlan({ plan: { ...plan, start: -1 } }, undefined)).toMatchObject({
      figures: { detailText: 'start' },
    });
    expect(troubleInPlan({ plan }, { ...long.recipe, makes: -1 })).toMatchObject({
      figures: { detailText: 'makes' },
    });
  });
});
