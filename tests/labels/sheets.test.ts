import { describe, expect, it } from 'vitest';
import { fillSheets, nextFreePlace } from '@/lib/labels/sheet/fill-sheets';
import { labelAddress } from '@/lib/labels/sheet/label-address';
import { planLabels } from '@/lib/labels/sheet/plan-labels';
import { readySheets } from '@/lib/labels/sheet/ready-sheets';
import { labelsPerPage, placeBox, sheetProblem } from '@/lib/labels/sheet/sheet-layout';
import { usualSheet } from '@/lib/labels/sheet/usual-sheet';

const sheetOf = (key: string) => {
  const sheet = readySheets.find((one) => one.key === key);
  if (!sheet) throw new Error(key);
  return sheet;
};
const a4 = sheetOf('a4-70.0x37.0-24');
const letter = sheetOf('letter-66.7x25.4-30');

describe('the ready sheets', () => {
  it('have labels that fit their page and are large enough for a code', () => {
    for (const sheet of readySheets) expect([sheet.key, sheetProblem(sheet)]).toEqual([sheet.key, undefined]);
    expect(new Set(readySheets.map(({ key }) => key)).size).toBe(readySheets.length);
  });

  it('place a Letter sheet of 2 5/8 by 1 inch as such sheets are cut: half an inch above, 3/16 at the side', () => {
    expect(letter.topMm).toBeCloseTo(12.7, 2);
    expect(letter.leftMm).toBeCloseTo(4.7625, 2);
    const last = placeBox(letter, labelsPerPage(letter) - 1);
    expect(last.leftMm + last.widthMm).toBeCloseTo(215.9 - 4.7625, 2);
    expect(last.topMm + last.heightMm).toBeCloseTo(279.4 - 12.7, 2);
  });

  it('are proposed by the paper of the region', () => {
    expect(usualSheet('en-US').paper).toBe('letter');
    expect(usualSheet('es-MX').paper).toBe('letter');
    expect(usualSheet('es-ES').paper).toBe('a4');
    expect(usualSheet('en').paper).toBe('a4');
  });
});

describe('a layout', () => {
  it('is refused when labels are wider or higher than the page, or too small for a code', () => {
    expect(sheetProblem({ ...a4, columns: 4 })).toBe('label-too-wide');
    expect(sheetProblem({ ...a4, topMm: 10 })).toBe('label-too-high');
    expect(sheetProblem({ ...a4, labelHeightMm: 12 })).toBe('label-too-small');
    expect(sheetProblem({ ...a4, topMm: 1 })).toBeUndefined();
  });
});

describe('labels on sheets', () => {
  it('begin at the first free place and go on at the first place of the next page', () => {
    const pages = fillSheets(a4, 24, 5);
    expect(pages.map((page) => page.map(({ place }) => place))).toEqual([
      Array.from({ length: 20 }, (_, at) => at + 4),
      [0, 1, 2, 3],
    ]);
    expect(pages.flat().map(({ label }) => label)).toEqual(Array.from({ length: 24 }, (_, at) => at));
    expect(nextFreePlace(a4, 24, 5)).toBe(5);
    expect(nextFreePlace(a4, 20, 5)).toBeUndefined();
  });

  it('have no place outside the page to begin at', () => {
    for (const place of [0, 25, 1.5]) expect(() => fillSheets(a4, 1, place)).toThrow(RangeError);
  });
});

describe('a plan of labels', () => {
  const plan = { per: 'unit', units: [], copies: 1 } as const;

  it('gives each unit its number, and a batch of one unit none', () => {
    expect(planLabels([2, 1], plan)).toEqual([{ batch: 0, unit: 1 }, { batch: 0, unit: 2 }, { batch: 1 }]);
  });

  it('prints one label for a batch as a whole, in copies that lie side by side', () => {
    expect(planLabels([24, 3], { ...plan, per: 'batch', copies: 2 })).toEqual([
      { batch: 0 },
      { batch: 0 },
      { batch: 1 },
      { batch: 1 },
    ]);
  });

  it('prints some units again, but none that the batch does not have', () => {
    expect(planLabels([24], { ...plan, units: [3, 7] })).toEqual([
      { batch: 0, unit: 3 },
      { batch: 0, unit: 7 },
    ]);
    expect(planLabels([24], { ...plan, units: [3, 25] })).toEqual({ code: 'unit-numbers', available: 24 });
  });

  it('ends where nobody means it', () => {
    expect(planLabels([1500], { ...plan, copies: 2 })).toEqual({ code: 'too-many-labels', max: 2000 });
  });
});

describe('the address of a label', () => {
  it('is short, in capitals, and tells nothing of the batch', () => {
    expect(labelAddress('https://pinset.example/', '4q77dgg989h0', 12)).toBe(
      'HTTPS://PINSET.EXAMPLE/B/4Q77DGG989H0/12',
    );
    expect(labelAddress('http://localhost:3000', '4q77dgg989h0')).toBe(
      'HTTP://LOCALHOST:3000/B/4Q77DGG989H0',
    );
  });
});
