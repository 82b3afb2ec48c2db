import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('heading, said in a pattern,', () => {
  it('is read with the piece it names, and how often that is made', () => {
    const [sleeves] = saidIn('Sleeves (make 2)');
    expect(sleeves).toMatchObject({ is: 'heading', piece: { name: 'sleeves', makes: 2 }, talk: false });
    const [right] = saidIn('Right front:');
    expect(right).toMatchObject({ is: 'heading', piece: { name: 'right front', makes: 1, half: 'right' } });
    expect(saidIn('Shape armholes')).toMatchObject([{ is: 'heading', places: ['armhole'], talk: false }]);
    expect(saidIn('Finishing')).toMatchObject([{ is: 'heading', talk: true, places: [] }]);
  });

  it('is read with all that its brackets say of the makes', () => {
    for (const more of [
      '',
      ', the second as a mirror image',
      ', the second as a mirror image: first the left front, then the right',
    ])
      expect(saidIn(`FRONT (make 2${more})`)).toMatchObject([
        { is: 'heading', piece: { name: 'front', makes: 2 } },
      ]);
  });

  it('ends before its semicolon where nothing follows but that its rows do', () => {
    expect(saidIn('Shape neck thus;')).toMatchObject([{ is: 'heading', places: ['neck'], talk: false }]);
    expect(kindsIn('Shape neck thus; bind off 4 sts.')).toEqual(['bind off']);
    expect(kindsIn('Shape neck;')).toEqual([]);
  });

  it('is not read in a sentence that goes on', () => {
    expect(kindsIn('Shape armhole as for back')).toEqual(['as for']);
    expect(kindsIn('Knit 6 rows')).toEqual(['rows']);
  });
});
