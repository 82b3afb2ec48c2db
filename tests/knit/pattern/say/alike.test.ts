import { describe, expect, it } from 'vitest';
import { reading } from './said.ts';

/** Ways of saying one thing that patterns have: common practice, no published source. The first of each is spelled out elsewhere. */
describe('the same in other words', () => {
  it.each<readonly [string, ...string[]]>([
    [
      'Work even until piece measures 10 cm',
      'Work even until your piece measures 10 cm',
      'Work even until the piece measures 10 cm',
    ],
    ['Work even to armhole as for back', 'Work even to armhole as given for back'],
    [
      'Work even until same length as back to armhole, less 2 cm',
      'Work even until same length as back to armhole, minus 2 cm',
    ],
    [
      'Rep rows 1 and 2 throughout',
      'Rep rows 1 and 2 throughout the whole piece',
      'Rep rows 1 and 2 for the entire work',
      'Rep rows 1 and 2 throughout entire piece',
    ],
    [
      'Work even until piece measures 20 cm or as long as you want',
      'Work even until piece measures 20 cm or as long as you like',
      'Work even until piece measures 20 cm or as long as you wish',
      'Work even until piece measures 20 cm or as long as desired',
      'Work even until piece measures 20 cm, or until you run out of yarn',
    ],
    [
      'Work even until piece measures 10 cm from beg',
      'Work even until piece measures 10 cm from commencement',
      'Work even until piece measures 10 cm from start',
    ],
    [
      'Work even until piece measures 10 cm from rib',
      'Work even until piece measures 10 cm from cuff',
      'Work even until piece measures 10 cm from waistband',
      'Work even until piece measures 10 cm from hemline',
      'Work even until piece measures 10 cm from welt',
    ],
    [
      'Work even until piece measures 10 cm from division',
      'Work even until piece measures 10 cm from dividing',
    ],
    [
      'Place next 10 sts on a holder',
      'Place next 10 sts on a holder to be worked later',
      'Place next 10 sts on a holder for later',
    ],
    [
      'Row 1: k5, pm, k5',
      'Row 1: k5, place mrk, k5',
      'Row 1: k5, place marker, k5',
      'Row 1: k5, place mkr, k5',
    ],
    [
      'Row 2: k the k sts and p the p sts',
      'Row 2: k the knitted sts and p the purled sts',
      'Row 2: p the purled sts and k the knitted sts',
      'Row 2: p the p sts, and k the k sts',
    ],
    ['Row 1: k5, wrap and turn', 'Row 1: k5, w and t', 'Row 1: k5, wrap next st and turn'],
    [
      'Place rem sts on needle',
      'Replace the rem sts on needle',
      'Transfer rem sts to needle',
      'Put the rem sts on needle',
      'Sl rem sts onto needle',
    ],
    ['Cont as for first front to shoulder', 'Cont as for first front to the shoulder'],
    ['Row 1: inc in first st, k to end', 'Row 1: inc into first st, k to end'],
    ['Row 1: inc in st, k2', 'Row 1: inc into st, k2'],
    ['Row 1: inc in every st', 'Row 1: inc into every st'],
  ])('%s', (first, ...others) => {
    const wanted = reading(first);
    expect(wanted).not.toContain('✗');
    // only where in the sentence it stands may be another
    const said = (text: string) => reading(text).replace(/@\d+ /g, '');
    for (const other of others) expect(`${other}: ${said(other)}`).toBe(`${other}: ${said(first)}`);
  });

  it('is not a row that is said to be another one', () => {
    expect(reading('Next row: bind off 4 sts at beg of next 2 rows')).not.toContain('✗');
    expect(reading('Next row: next row: bind off 4 sts at beg of next 2 rows')).toContain('✗');
  });
});
