import { describe, expect, it } from 'vitest';
import { asRemembered, guessRecordLayout, usualAsRemembered } from '@/lib/intake/table/guess-layout';
import { fieldsOfKind } from '@/lib/intake/table/kinds/fields-of-kind';
import { readTable } from '@/lib/intake/table/read-table';

const usual = { dateOrder: 'mdy', decimal: 'point', units: ['lb', 'gal', 'fahrenheit'] } as const;

async function understood(text: string, before?: Parameters<typeof asRemembered>[1]) {
  const read = await readTable(Buffer.from(text), {});
  if (typeof read === 'string') throw new Error(read);
  const guess = (from: Parameters<typeof guessRecordLayout>[3]) =>
    guessRecordLayout(read.rows, fieldsOfKind.harvests, read.written, from);
  return asRemembered(guess(usualAsRemembered(usual, guess(usual), before)), before);
}

const table = (...rows: string[]) => ['Batch;When;What', ...rows].join('\n');

describe('a table with the headings of one that was checked before', () => {
  it('shows itself how it is written; what it does not show is as it was before', async () => {
    const first = await understood(table('A-1;25/04/2026;1,25'));
    expect(first).toMatchObject({ dateOrder: 'dmy', decimal: 'comma' });
    const columns = first.columns.map(() => ({ field: 'note', unit: null }));
    const before = { ...first, columns, settled: true };
    const other = await understood(table('A-1;04/25/2026;1.25'), before);
    expect(other).toMatchObject({ dateOrder: 'mdy', decimal: 'point', columns });
    expect(await understood(table('A-1;05/04/2026;2'), before)).toMatchObject({
      ...{ dateOrder: 'dmy', decimal: 'comma', columns },
    });
  });

  it('takes nothing but its columns from a workbook', async () => {
    const first = await understood(table('A-1;25/04/2026;1,25'));
    const workbook = { ...first, settled: true, format: 'xlsx', decimal: 'point', dateOrder: 'ymd' } as const;
    expect(await understood(table('A-1;05/04/2026;2'), workbook)).toMatchObject({
      ...{ dateOrder: 'mdy', decimal: 'point', format: 'csv' },
    });
    expect(await understood(table('A-1;05/04/2026;1,25'), workbook)).toMatchObject({ decimal: 'comma' });
  });
});

describe('a table with some headings of one that was checked before', () => {
  const settled = async () => {
    const first = await understood(table('A-1;25/04/2026;1,25'));
    const fields = ['batch', 'weighedOn', 'fresh'] as const;
    return { ...first, settled: true, columns: fields.map((field) => ({ field, unit: null })) };
  };
  const other = 'Batch;Weather;When;What;Weight\nA-1;wet;25/04/2026;1,25;2';

  it('holds under them what a person said of that one, whatever other columns it has', async () => {
    const { columns } = await understood(other, await settled());
    expect(columns.map(({ field }) => field)).toEqual(['batch', null, 'weighedOn', 'fresh', null]);
  });

  it('is guessed anew where nobody has said what they hold', async () => {
    const { columns } = await understood(other, { ...(await settled()), settled: false });
    expect(columns.map(({ field }) => field)).toEqual(['batch', null, null, null, 'fresh']);
  });
});
