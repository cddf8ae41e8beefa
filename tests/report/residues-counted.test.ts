import { describe, expect, it } from 'vitest';
import type { Production } from '@/lib/analysis/production/read-production';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import { residuePart } from '@/lib/report/content/residue-part';
import { rule } from './random-network';
import { evenYear, type YearOfSites, yearReport } from './year-report';

type Row = Production['residues'][number];

const ofSites = (material: Row['material'], sites: YearOfSites): Row[] =>
  Object.entries(sites).map(([siteId, grams]) => ({ siteId, grams, material, assumed: false }));

/** A year's report by the rule of now: straw of `straw`, and logs of `logs` beside it. */
function yearWithLogs(
  year: number,
  straw: YearOfSites,
  logs: YearOfSites,
  before?: YearOfSites,
): BuiltReport {
  const { content, ground } = yearReport(year, straw, before && { year: year - 1, sites: before }, [
    'residues',
  ]);
  const part = residuePart([...ofSites('straw', straw), ...ofSites('log_wood', logs)], rule);
  return {
    content: { ...content, residues: part.table, residuesLeftOut: [...part.leftOut] },
    ground: { ...ground, residues: part.ground },
  };
}

const published = (report: BuiltReport, version = 1) => ({ ...report, version });
const shown = (key: string, amount: number, sites = 7) => ({ key, kind: 'shown', amount, sites });

describe('residues put to use', () => {
  it('hold neither logs cut for growing nor spent substrate, which are named with their mass', () => {
    const part = residuePart(
      [
        ...ofSites('straw', evenYear),
        ...ofSites('mixed', evenYear),
        ...ofSites('log_wood', evenYear),
        ...ofSites('spent_substrate', { a: 900 }),
      ],
      rule,
    );
    expect(part.table.total).toEqual(shown('total', 42_000));
    expect(part.table.cells.map(({ key }) => key)).toEqual(['mixed', 'straw']);
    expect(part.leftOut).toEqual([shown('log_wood', 21_000), { key: 'spent_substrate', kind: 'protected' }]);
    expect(part.ground.leftOut?.map(({ key }) => key)).toEqual(['log_wood']);
  });

  it('do not tell by what is left out what one site corrected, nor beside a report that still counted logs', () => {
    const corrected = { ...evenYear, a: 3500 };
    const counted = yearReport(2026, evenYear, undefined, ['residues']);
    const withLogsAmongThem: BuiltReport = {
      content: counted.content,
      ground: {
        ...counted.ground,
        residues: {
          residues: residuePart(ofSites('straw', evenYear), rule).known.flatMap((sum) => [
            sum,
            { ...sum, key: 'log_wood' },
          ]),
        },
      },
    };
    for (const before of [yearWithLogs(2026, evenYear, evenYear), withLogsAmongThem]) {
      const later = yearWithLogs(2026, evenYear, corrected);
      expect(tellsBeside(later, [before])).toBe(true);
      const held = carryOver(later, [published(before)]);
      expect(held.content.residuesLeftOut).toEqual([{ key: 'log_wood', kind: 'protected' }]);
      expect(held.content.residues.total).toEqual(shown('total', 21_000));
      expect(tellsBeside(held, [before])).toBe(false);
    }
  });

  it('are never put beside a baseline that counted by the rule of before', () => {
    const corrected = { ...evenYear, a: 3500 };
    const before = published(yearReport(2025, evenYear, undefined, ['residues']));
    const row = ({ content }: BuiltReport) => content.changes.find(({ key }) => key === 'residues');
    // By the same rule the baseline stands as readers have it; by another it is kept back.
    expect(
      row(carryOver(yearReport(2026, evenYear, { year: 2025, sites: corrected }, ['residues']), [before]))
        ?.before,
    ).toEqual(shown('total', 21_000));
    const fresh = carryOver(yearWithLogs(2026, evenYear, evenYear, corrected), [before]);
    expect(row(fresh)).toMatchObject({ before: { kind: 'protected' }, change: { kind: 'protected' } });
    // A period that stands as published by the old rule is not put beside a fresh baseline either.
    const old = published(yearReport(2026, evenYear, undefined, ['residues']));
    const carried = carryOver(yearWithLogs(2026, corrected, evenYear, evenYear), [old]);
    expect(carried.content.carried.residues).toBe(1);
    expect(carried.content.residuesLeftOut).toBeUndefined();
    expect(row(carried)).toMatchObject({ before: { kind: 'protected' }, change: { kind: 'protected' } });
  });
});
