import { describe, expect, it } from 'vitest';
import type { ReportDocument } from '@/lib/report/document/report-document';
import { toldChanges } from '@/lib/report/document/told-changes';
import { sampleDocument } from './sample-document';

/** The sample with one cell of its harvest table, or one fact, written otherwise. */
function saying(places: Readonly<Record<string, string>>): ReportDocument {
  const document = sampleDocument();
  return {
    ...document,
    sections: document.sections.map((section) => ({
      ...section,
      ...(section.facts
        ? { facts: section.facts.map((fact) => ({ ...fact, text: places[fact.key] ?? fact.text })) }
        : {}),
      ...(section.tables
        ? {
            tables: section.tables.map((table) => ({
              ...table,
              rows: table.rows.map((row) => ({
                ...row,
                cells: row.cells.map((cell, at) =>
                  at === 1 ? { ...cell, text: places[row.key] ?? cell.text } : cell,
                ),
              })),
            })),
          }
        : {}),
    })),
  };
}

describe('what the records say now of a version', () => {
  it('is no change where the version protects a figure that the report of now would tell, and does not tell it', () => {
    const now = saying({ people: '31', given_away: '111.9 kg' });
    const changes = toldChanges(sampleDocument(), now);
    expect(changes).toEqual({ figures: [], protectedThen: 2 });
  });

  it('is no change either in a dash beside a protected figure, or where its line moved to another table', () => {
    const version = sampleDocument();
    const kind = { key: 'kind', header: 'Kind', numeric: false };
    const number = (key: string) => ({ key, header: key, numeric: true });
    const table = (key: string, lines: Readonly<Record<string, readonly string[]>>) => ({
      ...{ key, caption: key, columns: [kind, number('mass'), number('sites')] },
      rows: Object.entries(lines).map(([row, texts]) => ({
        key: row,
        cells: [row, ...texts].map((text) => ({ text })),
      })),
    });
    const saidIn = (tables: ReturnType<typeof table>[]) => ({
      ...version,
      sections: [{ key: 'residues', heading: 'Residues', paragraphs: [], tables }],
    });
    const then = saidIn([
      table('residues', { straw: ['9 kg', '14'], logs: ['protected', '–'], chips: ['protected', '–'] }),
    ]);
    const now = saidIn([
      table('residues', { straw: ['9 kg', '14'], chips: ['3 kg', '5'] }),
      table('left-out', { logs: ['1,476.7 kg', '6'] }),
    ]);
    expect(toldChanges(then, now)).toEqual({ figures: [], protectedThen: 2 });
  });

  it('still tells a figure that became another, and one that would now be protected', () => {
    const now = saying({ given_away: '111.9 kg', sold: '213.0 kg', eaten: 'protected' });
    const { figures, protectedThen } = toldChanges(sampleDocument(), now);
    expect(figures.map(({ key, earlier, now: then }) => [key, earlier, then])).toEqual([
      ['glance/sold', '475.3 kg', '213.0 kg'],
      ['harvest/harvest/sold/mass', '212.4\u00a0kg', '213.0 kg'],
      ['harvest/harvest/eaten/mass', '88.0\u00a0kg', 'protected'],
    ]);
    expect(protectedThen).toBe(1);
  });
});
