import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardFormula, unguardFormula } from '@/lib/base/formula-guard';

const starts = ['=', '+', '-', '@', '\t', '\r', '\0', '＝', '＋', '－', '＠', "'", "'=", "''+", ''];
const text = fc
  .tuple(fc.constantFrom(...starts), fc.string({ unit: 'binary', maxLength: 30 }))
  .map(([start, rest]) => start + rest);

describe('text in CSV', () => {
  it('never starts as a formula does, in 1,000 strings', () => {
    fc.assert(
      fc.property(text, (one) => {
        expect(guardFormula(one)).not.toMatch(/^[=+\-@＝＋－＠\t\r\0]/u);
      }),
      { numRuns: 1000 },
    );
  });

  it('comes back as it was through a file of CSV, apostrophes of its own included, in 1,000 strings', () => {
    fc.assert(
      fc.property(text, (one) => {
        const csv = stringify([[guardFormula(one), 'end']], { record_delimiter: 'windows' });
        const [[back = ''] = []] = parse(csv, { record_delimiter: '\r\n' }) as string[][];
        expect(unguardFormula(back)).toBe(one);
      }),
      { numRuns: 1000 },
    );
  });

  it('that cannot become a formula is left alone', () => {
    expect(guardFormula("it's wet")).toBe("it's wet");
    expect(guardFormula("'quoted'")).toBe("'quoted'");
    expect(unguardFormula("'quoted'")).toBe("'quoted'");
  });
});
