import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test, vi } from 'vitest';
import { dayProblems } from '@/lib/analysis/comparison/day-problems';
import { loadMessages } from '@/lib/ui/messages/load-messages';

let language: 'en' | 'es' = 'en';
vi.mock('next-intl/server', () => ({
  getLocale: async () => (language === 'en' ? 'en-US' : 'es-US'),
  getMessages: async () => loadMessages(language),
  getTranslations: async (namespace?: 'comparison.filter') =>
    createTranslator({
      ...{ locale: language, messages: loadMessages(language) },
      ...(namespace && { namespace }),
    }),
}));
vi.mock('@/lib/ui/i18n/reader-units', () => ({
  getReaderUnits: async () => ({ massUnit: 'kg', volumeUnit: 'litre', temperatureUnit: 'celsius' }),
}));
const { loadDayProblems } = await import('@/lib/ui/comparison/load-day-problems');
const { DayProblemsNotice } = await import('@/lib/ui/comparison/day-problems-notice');
const { FilterForm } = await import('@/lib/ui/form/filter-form');

const shown = { from: '2024-10-01', to: '2026-01-01' } as const;
const plain = (text: string | undefined) => text?.replace(/\u00a0/g, ' ');
const problemsOf = (address: Record<string, string>, area: 'comparison.filter' | 'costs.filter') =>
  loadDayProblems({ problems: dayProblems(address, shown), address }, shown, area);
const impossible = { from__day: '31', from__month: 'Feb', from__year: '2026', to: '2026-01-01' };

test('a day that does not exist is named with its field and the remedy, and the days shown are said', async () => {
  language = 'en';
  const days = await problemsOf(impossible, 'comparison.filter');
  expect(days.errors).toEqual([
    { field: 'from', text: 'Enter “Inoculated from” as a real date, such as 27 April 2026' },
  ]);
  expect(plain(days.shown)).toBe(
    'Until that is put right, the figures below are of batches inoculated from 1 Oct 2024 to 1 Jan 2026.',
  );
  expect((await problemsOf(impossible, 'costs.filter')).errors[0]?.text).toMatch(/^Enter “From” as/);
});

test('a day that does not exist is named in Spanish too', async () => {
  language = 'es';
  const days = await problemsOf({ from: '2026-01-02', to: '2026-01-01' }, 'comparison.filter');
  expect(plain(days.errors[0]?.text)).toBe(
    '«Inoculados hasta» tiene que ser el 2 ene 2026 o un día posterior',
  );
  expect(plain(days.shown)).toMatch(
    /las cifras de abajo son de lotes inoculados del 1 oct 2024 al 1 ene 2026/,
  );
});

test('what was typed of both days is kept, from boxes and from a link', async () => {
  expect((await problemsOf(impossible, 'comparison.filter')).values).toEqual({
    ...{ from__day: '31', from__month: 'Feb', from__year: '2026' },
    ...{ to__day: '01', to__month: '01', to__year: '2026' },
  });
  expect((await problemsOf({ from: '2026-13-45', to: 'abc' }, 'comparison.filter')).values).toEqual({
    ...{ from__day: '45', from__month: '13', from__year: '2026' },
    ...{ to__day: 'abc', to__month: '', to__year: '' },
  });
  expect((await problemsOf({}, 'comparison.filter')).values).toEqual({});
});

test('the filters stand open with the error at its field and what was typed in its boxes', async () => {
  language = 'en';
  const { errors, values } = await problemsOf(impossible, 'comparison.filter');
  const page = renderToStaticMarkup(
    await FilterForm({
      action: '/comparison',
      fields: [{ kind: 'date', name: 'from', label: 'Inoculated from', quick: [] }],
      ...{ values, errors, chips: [] },
    }),
  );
  expect(page).toMatch(/<details[^>]* open=""/);
  expect(page).toMatch(/id="field-from-error"[^>]*>.*as a real date/);
  expect(page).toContain('value="31"');
  expect(page).toContain('aria-invalid="true"');
});

test('a page without the filters says which days it could not take and of which its figures are', async () => {
  language = 'en';
  const page = renderToStaticMarkup(
    DayProblemsNotice({ days: await problemsOf(impossible, 'comparison.filter') }),
  );
  expect(page).toContain('Enter “Inoculated from” as a real date');
  expect(page).toContain('the figures below are of batches');
  expect(renderToStaticMarkup(DayProblemsNotice({ days: await problemsOf({}, 'comparison.filter') }))).toBe(
    '',
  );
});
