import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ReportDocument } from '@/lib/report/document/report-document';
import { columnWidths } from '@/lib/report/pdf/column-widths';
import { figureNotes } from '@/lib/report/pdf/figure-notes';
import { paperSize } from '@/lib/report/pdf/paper-size';
import { reportPdf } from '@/lib/report/pdf/report-pdf';
import { openPdf, pageSizeMm, textOf } from '../labels/read-pdf';
import { sampleDocument } from './sample-document';

const words = {
  howHeading: 'How these figures were worked out',
  pageOf: (page: number, pages: number) => `Page ${page} of ${pages}`,
};
let straw: Uint8Array;

beforeAll(async () => {
  const background = { r: 200, g: 180, b: 90 };
  straw = await sharp({ create: { width: 64, height: 48, channels: 3, background } })
    .jpeg()
    .toBuffer();
});

const print = (report: ReportDocument, paper: 'A4' | 'LETTER' = 'A4') =>
  reportPdf({ report, paper, pictures: new Map([['straw', straw]]), ...words });

type Opened = Awaited<ReturnType<typeof openPdf>>;
const pagesOf = (pdf: Opened) =>
  Promise.all(Array.from({ length: pdf.numPages }, (_, at) => pdf.getPage(at + 1)));

/** All text without spaces: a line may break anywhere between words. */
const plain = (text: string) => text.replaceAll(/\s/g, '');
async function readText(pdf: Opened): Promise<string> {
  const pages = await Promise.all((await pagesOf(pdf)).map(textOf));
  return plain(pages.flat().join(''));
}

type Node = { role?: string; alt?: string; children?: Node[] };
const nodes = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(nodes)];

describe('the print of a report', () => {
  it('says every figure, size, note and word of the document, read back by another library', async () => {
    const report = sampleDocument();
    const read = await readText(await openPdf(await print(report)));
    const cells = report.sections.flatMap(({ tables = [] }) =>
      tables.flatMap(({ rows }) => rows.flatMap((row) => row.cells)),
    );
    const said = [
      ...cells.flatMap(({ text, below, history = [] }) => [text, below ?? '', ...history]),
      ...report.sections.flatMap(({ heading, paragraphs, facts = [], notes = [] }) => [
        ...[heading, ...paragraphs, ...notes],
        ...facts.flatMap(({ label, text }) => [label, text]),
      ]),
      ...[report.title, report.lead, report.standing, ...report.colophon],
      'It comes to the shed now.',
      'Its picture was taken out on 1 Dec 2026.',
    ];
    expect(said.length).toBeGreaterThan(100);
    expect(said.filter((text) => !read.includes(plain(text)))).toEqual([]);
  });

  it('begins stories on the page of their heading, wherever on a page that falls', async () => {
    const report = sampleDocument();
    const stories = report.sections.filter(({ key }) => key === 'stories');
    const [told] = stories.flatMap((section) => section.stories ?? []);
    const lines = (count: number) => Array.from({ length: count }, (_, at) => `Line ${at}.`);
    for (let count = 22; count <= 40; count += 1) {
      const before = { key: 'glance', heading: 'At a glance', paragraphs: lines(count) };
      const pdf = await openPdf(await print({ ...report, sections: [before, ...stories] }));
      const pages = await Promise.all(
        (await pagesOf(pdf)).map(async (page) => plain((await textOf(page)).join(''))),
      );
      const at = pages.findIndex((page) => page.includes(plain(stories[0]?.heading ?? '')));
      expect(pages[at], `after ${count} lines`).toContain(plain(told?.title ?? ''));
    }
  });

  it('keeps the heading of a part, its line and the beginning of its table on one page', async () => {
    const report = sampleDocument();
    const harvest = report.sections.filter(({ key }) => key === 'harvest');
    const lines = (count: number) => Array.from({ length: count }, (_, at) => `Line ${at}.`);
    for (let count = 20; count <= 40; count += 1) {
      const before = { key: 'glance', heading: 'At a glance', paragraphs: lines(count) };
      const pdf = await openPdf(await print({ ...report, sections: [before, ...harvest] }));
      const pages = await Promise.all(
        (await pagesOf(pdf)).map(async (page) => plain((await textOf(page)).join(''))),
      );
      const at = pages.findIndex((page) => page.includes(plain(harvest[0]?.heading ?? '')));
      for (const text of ['Fresh mass by destination', '212.4'])
        expect(pages[at], `after ${count} lines`).toContain(plain(text));
    }
  });

  it('heads the coordinator’s own words as such, sets them in from the figures, and no other text', async () => {
    const report = sampleDocument();
    const pdf = await openPdf(await print(report));
    const [first] = await pagesOf(pdf);
    if (!first) throw new Error('no page');
    const { items } = await first.getTextContent();
    const lefts = new Map(items.flatMap((item) => ('str' in item ? [[item.str, item.transform[4]]] : [])));
    const left = (begins: string) => [...lefts].find(([text]) => text.startsWith(begins))?.[1];
    expect(left(report.wordsLabel)).toBe(left('Everybody soaked'));
    expect(left('Everybody soaked')).toBeGreaterThan(left('Fresh mass by the day'));
    const read = await readText(pdf);
    expect(read.split(plain(report.wordsLabel))).toHaveLength(2);
    expect(read).toContain(plain(`${report.wordsLabel} Everybody soaked`));
  });

  it('is tagged: title, language, headings, tables with their heads and the picture with its description', async () => {
    const pdf = await openPdf(await print(sampleDocument()));
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    expect((await pdf.getMetadata()).info).toMatchObject({
      Title: 'Larkmoor Growers: the last year',
      Language: 'en',
    });
    expect(await pdf.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true });
    const pages = await pagesOf(pdf);
    const trees = await Promise.all(pages.map((page) => page.getStructTree()));
    const found = trees.flatMap((tree) => nodes(tree as Node));
    const count = (role: string) => found.filter((node) => node.role === role).length;
    for (const role of ['H1', 'H2', 'H3', 'Table', 'Caption', 'TR', 'TH', 'TD', 'P'])
      expect([role, count(role) > 0]).toEqual([role, true]);
    expect(found.filter(({ role }) => role === 'Figure').map(({ alt }) => alt)).toEqual(['Straw in nets']);
  });

  it('has a bookmark for each part, its letters embedded, and a page number on every page', async () => {
    const report = sampleDocument(6);
    const content = await print(report);
    const pdf = await openPdf(content);
    expect((await pdf.getOutline()).map(({ title }) => title)).toEqual(
      report.sections.map(({ heading }) => heading),
    );
    const raw = Buffer.from(content).toString('latin1');
    expect(raw.match(/\/FontFile2/g)?.length).toBe(2);
    expect(raw).not.toMatch(/\/BaseFont \/(Helvetica|Times|Courier)/);
    for (const [at, page] of (await pagesOf(pdf)).entries())
      expect((await textOf(page)).join(' ')).toContain(`Page ${at + 1} of ${pdf.numPages}`);
  });

  it('repeats the head of a table on its further pages and leaves nothing below the foot', async () => {
    const pdf = await openPdf(await print(sampleDocument(6)));
    const pages = await pagesOf(pdf);
    let heads = 0;
    for (const page of pages) {
      const { items } = await page.getTextContent();
      const lines = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item] : []));
      if (lines.some(({ str }) => str === 'Contaminated units')) heads += 1;
      for (const { str, transform } of lines) {
        expect(transform[5], str).toBeGreaterThan(40);
        expect(transform[4], str).toBeGreaterThanOrEqual(55);
      }
    }
    expect(heads).toBeGreaterThan(1);
  });

  it('of ten pages takes less than three seconds of the processor', async () => {
    const report = sampleDocument(26);
    // Processor time: the wall clock also counts whatever runs beside this test.
    const started = process.cpuUsage();
    const content = await print(report);
    const { user, system } = process.cpuUsage(started);
    expect((await openPdf(content)).numPages).toBeGreaterThanOrEqual(10);
    expect((user + system) / 1e6).toBeLessThan(3);
  });

  it('comes on the paper of the reader’s country', async () => {
    expect([paperSize('en-US'), paperSize('es-MX'), paperSize('es-ES'), paperSize('en')]).toEqual([
      ...['LETTER', 'LETTER', 'A4', 'A4'],
    ]);
    const [page] = await pagesOf(await openPdf(await print(sampleDocument(), 'LETTER')));
    if (!page) throw new Error('no page');
    expect(pageSizeMm(page).width).toBeCloseTo(215.9, 1);
  });

  it('leaves out pictographs and writes a sign it lacks in another way, never as an empty box', async () => {
    const read = await readText(await openPdf(await print(sampleDocument())));
    expect(read).toContain('Everybodysoakedinlimethisyear,at60°Corcolder.');
  });
});

describe('the columns of a printed table', () => {
  const sum = (widths: readonly number[]) => widths.reduce((total, width) => total + width, 0);
  it('share what is left over, never fall below their longest word, and fill the width', () => {
    const easy = columnWidths(
      [
        { least: 40, most: 100 },
        { least: 50, most: 60 },
      ],
      200,
    );
    expect(easy).toEqual([120, 80]);
    const tight = columnWidths(
      [
        { least: 40, most: 300 },
        { least: 60, most: 60 },
      ],
      200,
    );
    expect(tight).toEqual([140, 60]);
    expect(
      sum(
        columnWidths(
          [
            { least: 300, most: 400 },
            { least: 100, most: 900 },
          ],
          200,
        ),
      ),
    ).toBeCloseTo(200);
  });
});

describe('the notes below a printed table', () => {
  it('say once what all figures of a column share, and of each row what is its own', () => {
    const table = sampleDocument(1).sections[2]?.tables?.[0];
    if (!table) throw new Error('no table');
    const { common, own } = figureNotes(table);
    expect(common.map(({ column }) => column)).toEqual(['Contaminated units', 'Yield']);
    expect(common[0]?.lines).toHaveLength(3);
    expect(own).toHaveLength(5);
    expect(own[0]).toEqual({
      row: 'Container 1, Hot-water bath',
      columns: [
        { column: 'Contaminated units', lines: ['Based on 8 of 80'] },
        { column: 'Yield', lines: ['Based on 6 of 60'] },
      ],
    });
  });
});
