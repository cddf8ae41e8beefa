import { describe, expect, it } from 'vitest';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import { evenYear, yearReport } from './year-report';

const corrected = { ...evenYear, a: 3500 };
const doubled = Object.fromEntries(Object.entries(evenYear).map(([site, grams]) => [site, 2 * grams]));
const before = { year: 2025, sites: evenYear };
const published = (report: ReturnType<typeof yearReport>, version = 1) => ({ ...report, version });
const rowsOf = ({ content }: ReturnType<typeof yearReport>) =>
  content.changes.map(({ key, before: then, now, change }) => ({
    key,
    before: then.kind === 'shown' ? then.amount : then.kind,
    now: now.kind === 'shown' ? now.amount : now.kind,
    change: change.kind === 'percent' ? change.percent : change.kind,
  }));
const all = (was: number, now: number, change: number) =>
  ['harvest', 'residues', 'sales'].map((key) => ({ key, before: was, now, change }));

describe('the changes of a report whose amounts stand as published before', () => {
  it('are those amounts beside its own baseline, also where the earlier report had none', () => {
    const later = carryOver(yearReport(2026, corrected, before), [published(yearReport(2026, evenYear))]);
    expect(later.content.carried).toEqual({ harvest: 1, residues: 1, sales: 1 });
    expect(rowsOf(later)).toEqual(all(21_000, 21_000, 0));
  });

  it('are not those beside another baseline', () => {
    const first = yearReport(2026, evenYear, { year: 2024, sites: doubled });
    const later = carryOver(yearReport(2026, corrected, before), [published(first)]);
    expect(rowsOf(later)).toEqual(all(21_000, 21_000, 0));
  });

  it('name no currency that only records of few sites have since', () => {
    const built = yearReport(2026, corrected, before);
    const since: (typeof built.content.changes)[number] = {
      ...{ key: 'sales', currency: 'CAD', before: { key: 'total', kind: 'shown', amount: 0, sites: 0 } },
      ...{ now: { key: 'total', kind: 'protected' }, change: { kind: 'protected' } },
    };
    const content = { ...built.content, changes: [...built.content.changes, since] };
    const later = carryOver({ ...built, content }, [published(yearReport(2026, evenYear))]);
    expect(later.content.changes.map(({ currency }) => currency)).toEqual([undefined, undefined, 'USD']);
  });
});

describe('the baseline of a report', () => {
  it('stands as the report over those days tells it, where the difference is one site’s correction', () => {
    const later = carryOver(yearReport(2026, doubled, { year: 2025, sites: corrected }), [
      published(yearReport(2025, evenYear)),
    ]);
    expect(rowsOf(later)).toEqual(all(21_000, 42_000, 100));
    expect(later.content.carried).toEqual({ baseline: 1 });
    expect(later.ground.baseline?.harvest).toEqual(yearReport(2025, evenYear).ground.harvest?.harvest);
  });

  it('stands as beside another period, where the difference is one site’s correction', () => {
    const other = published(yearReport(2027, doubled, before));
    const later = carryOver(yearReport(2026, doubled, { year: 2025, sites: corrected }), [other]);
    expect(rowsOf(later)).toEqual(all(21_000, 42_000, 100));
  });

  it('is told anew where many sites changed, or where nothing was told of what changed', () => {
    const harvestOnly = published(yearReport(2025, evenYear, undefined, ['harvest']));
    const one = carryOver(yearReport(2026, doubled, { year: 2025, sites: corrected }), [harvestOnly]);
    expect(rowsOf(one).map((row) => row.before)).toEqual([21_000, 21_500, 21_500]);
    const many = carryOver(yearReport(2026, doubled, { year: 2025, sites: doubled }), [
      published(yearReport(2025, evenYear)),
    ]);
    expect(rowsOf(many)).toEqual(all(42_000, 42_000, 0));
    expect(many.content.carried).toEqual({});
  });

  it('holds back a first report over its days that is apart from it by one site', () => {
    const told = [published(yearReport(2026, doubled, before))];
    const { content } = carryOver(yearReport(2025, corrected), told);
    expect([content.harvest.total, content.residues.total, content.sales[0]?.outlets.total]).toEqual(
      Array.from({ length: 3 }, () => ({ key: 'total', kind: 'protected' })),
    );
    expect(content.harvest.cells).toEqual([{ key: 'sold', kind: 'protected' }]);
    expect(content.carried).toEqual({});
    expect(carryOver(yearReport(2025, evenYear), told).content.harvest.total).toMatchObject({
      amount: 21_000,
    });
  });

  it('carries what an earlier report over its days told', () => {
    const first = published(yearReport(2025, evenYear));
    const beside = published(yearReport(2026, doubled, before));
    const { content } = carryOver(yearReport(2025, corrected), [beside, first]);
    expect(content.carried).toEqual({ harvest: 1, residues: 1, sales: 1 });
    expect(content.harvest.total).toMatchObject({ amount: 21_000 });
  });
});

describe('a draft', () => {
  it('is not to be published beside a report of its baseline that it was not held against', () => {
    const draft = yearReport(2026, doubled, { year: 2025, sites: corrected });
    const readers = [published(yearReport(2025, evenYear))];
    expect(tellsBeside(draft, readers)).toBe(true);
    expect(tellsBeside(carryOver(draft, readers), readers)).toBe(false);
    const first = yearReport(2025, corrected);
    expect(tellsBeside(first, [published(yearReport(2026, doubled, before))])).toBe(true);
  });
});
