import { createTranslator } from 'next-intl';
import { expect, it } from 'vitest';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { buildDocument } from '@/lib/ui/report/document/build-document';
import type { ReportTongue } from '@/lib/ui/report/document/report-tongue';
import { evenYear, yearReport } from '../../report/year-report';

const messages = loadMessages('en');
const locale = 'en-US';
const never = () => {
  throw new Error('no figure is asked for');
};
const tongue: ReportTongue = {
  ...{ language: 'en', locale, massUnit: 'kg', timeZone: 'America/New_York', massUcum: 'kg' },
  t: createTranslator({ locale, messages, namespace: 'report' }),
  words: Object.assign((key: string) => key, { has: () => true }),
  view: never,
  date: (day) => day,
  mass: (grams) => `${grams / 1000} kg`,
  massValue: (grams) => grams / 1000,
  own: ({ en }) => en,
};

const half = Object.fromEntries(Object.entries(evenYear).map(([site, grams]) => [site, grams / 2]));
const built = yearReport(2026, evenYear, { year: 2025, sites: half }, ['harvest', 'residues', 'sales']);
const report = { ...built, content: { ...built.content, builtAt: '2026-12-31T12:00:00Z' } };

function told(content: FunderReportContent) {
  const asked = { title: 'A year', version: 1, publishedAt: undefined, words: {}, stories: [], content };
  const { sections } = buildDocument(asked, tongue);
  return (key: string) => {
    const section = sections.find((one) => one.key === key);
    if (!section) throw new Error(`no section ${key}`);
    return section;
  };
}

it('The day up to which agreements count is that of the network, not of Greenwich', () => {
  const sites = { named: [], anonymous: 7, leftOut: 0, left: { counted: 0, withdrawn: 0 } };
  const lateInTheEvening = { ...report.content, sites, builtAt: '2026-11-27T03:30:00.000Z' };
  const { paragraphs } = told(lateInTheEvening)('glance');
  expect(paragraphs.at(-1)).toContain('by 2026-11-26.');
});

it('A change is told with how many sites stand behind either of its amounts', () => {
  const [table] = told(report.content)('changes').tables ?? [];
  expect(table?.rows.map(({ cells }) => cells.map(({ below }) => below))).toEqual(
    Array.from({ length: 3 }, () => [undefined, 'from 7 sites', 'from 7 sites', undefined]),
  );
});

it('the mass of sales stands beside the mass that was picked for sale', () => {
  expect(told(report.content)('sales').paragraphs).toContain(
    'Sales were written down for 7 kg at 7 sites; by where the harvest went, 21 kg was for sale. What was sold without a note of it is not in the money.',
  );
  const { harvest } = report.content;
  const kept = { ...harvest, cells: harvest.cells.map(({ key }) => ({ key, kind: 'protected' as const })) };
  expect(told({ ...report.content, harvest: kept })('sales').paragraphs).toHaveLength(1);
});

it('a part of which figures are kept back beside other reports says so, and no other part does', () => {
  const section = told({ ...report.content, keptBack: ['residues', 'baseline'] });
  const says = (key: string) => (section(key).notes ?? []).some((note) => note.includes('kept back'));
  expect(['harvest', 'residues', 'sales', 'changes'].map(says)).toEqual([false, true, false, true]);
});

it('Residues say what is counted and name what is not, in a table of its own; an older report says what it counted', () => {
  const older = told(report.content)('residues');
  expect(older.tables?.map(({ key }) => key)).toEqual(['residues']);
  const leftOut = [{ key: 'log_wood', kind: 'shown' as const, amount: 1_476_700, sites: 6 }];
  const { paragraphs, tables } = told({ ...report.content, residuesLeftOut: leftOut })('residues');
  expect(paragraphs[0]).toContain('Logs cut for growing are no residue');
  expect(paragraphs.slice(1)).toEqual(older.paragraphs);
  expect(tables?.[1]?.rows.map(({ cells }) => cells.map(({ text, value }) => value ?? text))).toEqual([
    ['vocabulary.materialKind.log_wood', 1476.7, 6],
  ]);
});
