import { describe, expect, it } from 'vitest';
import { carryOver } from '@/lib/report/content/carry-over';
import { evenYear, yearReport } from './year-report';

const corrected = { ...evenYear, a: 3500 };

describe('a part that an earlier report did not tell', () => {
  it('is not taken from it, also where its sums were kept', () => {
    const first = { ...yearReport(2026, evenYear, undefined, ['harvest']), version: 1 };
    const second = carryOver(yearReport(2026, corrected), [first]);
    expect(second.content.sales).toMatchObject([{ outlets: { total: { amount: 21_500 } } }]);
    expect(second.content.residues.total).toMatchObject({ amount: 21_500 });
    expect(second.content.carried).toEqual({ harvest: 1 });
  });
});
