import { readFileSync } from 'node:fs';
import path from 'node:path';
import { createTranslator } from 'next-intl';
import { describe, expect, it, test } from 'vitest';
import { isToldInHistory } from '@/lib/ui/history/history-entries';
import { type HistoryReader, historyValue } from '@/lib/ui/history/history-value';
import type { DynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';

const schema = readFileSync(path.join(import.meta.dirname, '../../../prisma/schema.prisma'), 'utf8');
/** Models whose rows leave no history, or whose history no page opens. */
const untold = [
  'Person',
  'PersonContact',
  'Account',
  'Session',
  'SetupLink',
  'History',
  'Invitation',
  'EntryReceipt',
  'IntakeFile',
  'IntakeContent',
  'IntakeRow',
  'FittedResult',
  'FitTurn',
  'BatchOutcome',
  'OutcomeSummary',
  'OutcomeDue',
  'OutcomeSiteTotal',
  'OutcomeNetworkTotal',
  'OutcomeVersion',
  'ApiToken',
  'ApiReceipt',
  'ReportGround',
  'ReportPicture',
  'ReportLinkVisit',
];

/** Columns of the records, as the database names them. */
const columns = new Set(
  [...schema.matchAll(/^model (\w+) \{([^}]*)\}/gm)]
    .filter(([, model = '']) => !untold.includes(model))
    .flatMap(([, , body = '']) =>
      body
        .split('\n')
        .filter((line) => /^ {2}\w/.test(line) && !line.includes('@relation'))
        .map((line) => /@map\("(\w+)"\)/.exec(line)?.[1] ?? /^ {2}(\w+)/.exec(line)?.[1] ?? ''),
    )
    .filter((column) => isToldInHistory(column)),
);

describe.each(['en', 'es'] as const)('the history in %s', (language) => {
  const words: Readonly<Record<string, string>> = loadMessages(language).history.column;
  test('has a word for every column of a record', () => {
    expect(columns.size).toBeGreaterThan(80);
    expect([...columns].filter((column) => words[column] === undefined)).toEqual([]);
  });
});

describe('a value in a history', () => {
  const reader: HistoryReader = {
    words: createTranslator({ locale: 'es', messages: loadMessages('es') }) as unknown as DynamicWords,
    language: 'es',
    locale: 'es-US',
    units: { massUnit: 'lb', temperatureUnit: 'fahrenheit', volumeUnit: 'gallon' },
    timeZone: 'America/New_York',
  };
  const told = (table: string, name: string, value: unknown) =>
    historyValue(table, name, value, reader).replace(/[\u00a0\u202f]/g, ' ');

  it.each([
    ['weighing', 'fresh_grams', 1360, '3 lb 0 oz'],
    ['treatment_reading', 'celsius', 71, '160 °F'],
    ['batch', 'bed_area_cm2', 15_000, '16.1 ft²'],
    ['batch', 'inoculated_on', '2026-07-04', '4 jul 2026'],
    ['batch', 'second_life_way', 'buried_in_soil', 'Enterrado en tierra limpia'],
    ['check', 'kind', 'pins_seen', 'Se ven primordios'],
    ['batch', 'log_wood_code', 802, 'Roble blanco'],
    ['batch', 'second_life', true, 'Sí'],
    ['batch', 'note', null, '–'],
    ['batch', 'code', 'KTR-7', 'KTR-7'],
  ])('of %s.%s is in the reader’s words and units', (table, name, value, text) => {
    expect(told(table, name, value)).toBe(text);
  });
});
