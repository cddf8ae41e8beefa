import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import type { Column } from '@/lib/ui/table/column-header';
import { DataTable } from '@/lib/ui/table/data-table';

type Row = { readonly site: string };
const columns: readonly Column<Row>[] = [
  { key: 'site', header: 'Site', cell: ({ site }) => site },
  { key: 'rate', header: 'Contaminated', unit: '%', numeric: true, cell: () => '12.4' },
  { key: 'batches', header: 'Batches', numeric: true, cell: () => 3 },
  { key: 'note', header: 'Note', cell: () => 'wet straw' },
];
const table = (of: readonly Column<Row>[]) =>
  renderToStaticMarkup(
    <DataTable
      caption="By site"
      columns={of}
      rows={[{ site: 'Mill Lane' }]}
      rowKey={({ site }) => site}
      groupOf={() => 'All'}
    />,
  );

describe('a wide table', () => {
  const markup = table(columns);

  test('stays a table to assistive technology when a phone lays it out as blocks', () => {
    const roles = [...markup.matchAll(/<(table|thead|tbody|tr|th|td)\b[^>]*?role="(\w+)"/g)].map(
      ([, element, role]) => `${element} ${role}`,
    );
    expect(roles).toEqual([
      ...['table table', 'thead rowgroup', 'tr row', ...columns.map(() => 'th columnheader')],
      ...['tbody rowgroup', 'tr row', 'th rowheader', 'tr row', 'th rowheader'],
      ...['td cell', 'td cell', 'td cell'],
    ]);
    expect(markup).toContain('class="data-table stacks"');
  });

  test('names the column and its unit beside each value', () => {
    expect([...markup.matchAll(/data-column="([^"]*)"/g)].map(([, name]) => name)).toEqual([
      'Site',
      'Contaminated (%)',
      'Batches',
      'Note',
    ]);
  });

  test('has an empty box in a cell without words, by which a phone knows that there is nothing to see', () => {
    const empty = table([...columns.slice(0, 3), { key: 'note', header: 'Note', cell: () => '' }]);
    expect(empty).toMatch(/<td[^>]*data-column="Note"[^>]*><div class="cell-value"><\/div><\/td>/);
    expect(markup).toMatch(/<td[^>]*data-column="Note"[^>]*>wet straw<\/td>/);
  });
});

test('a table of three columns stays as it is, unless one of them holds words of several lines', () => {
  const narrow = columns.slice(0, 3);
  expect(table(narrow)).toContain('class="data-table"');
  expect(
    table([...narrow.slice(0, 2), { key: 'why', header: 'Why', roomy: true, cell: () => '' }]),
  ).toContain('class="data-table stacks"');
});
