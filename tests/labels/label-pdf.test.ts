import { describe, expect, it } from 'vitest';
import { codeFits } from '@/lib/labels/print/code-fits';
import { labelPdf } from '@/lib/labels/print/label-pdf';
import type { LabelText } from '@/lib/labels/print/label-text';
import { labelAddress } from '@/lib/labels/sheet/label-address';
import { readySheets } from '@/lib/labels/sheet/ready-sheets';
import { labelsPerPage, placeBox } from '@/lib/labels/sheet/sheet-layout';
import { openPdf, pageSizeMm, strokedBoxes, textOf } from './read-pdf';

const label = (unit: number, changes: Partial<LabelText> = {}): LabelText => ({
  code: 'TCF-337',
  unit: `Bolsa ${unit} de 24`,
  species: ['Orellana', 'Pleurotus ostreatus'],
  site: ['Huerto del Molino', 'MOL'],
  date: '4 jul 2026',
  address: labelAddress('https://pinset.example', '4q77dgg989h0', unit),
  ...changes,
});
const labels = Array.from({ length: 24 }, (_, at) => label(at + 1));
const usual = { labels, firstPlace: 1, outline: false, title: 'Etiquetas TCF-337', language: 'es' } as const;
const [first] = readySheets;
if (!first) throw new Error('no ready sheet');

describe('a sheet of labels', () => {
  it.each(readySheets.map((sheet) => [sheet.key, sheet] as const))(
    '%s has its page and every label within a tenth of a millimetre of its size',
    async (_key, layout) => {
      const firstPlace = Math.min(3, labelsPerPage(layout));
      const pdf = await openPdf(await labelPdf({ ...usual, layout, firstPlace, outline: true }));
      const used = labels.length + firstPlace - 1;
      expect(pdf.numPages).toBe(Math.ceil(used / labelsPerPage(layout)));
      for (let at = 1; at <= pdf.numPages; at += 1) {
        const page = await pdf.getPage(at);
        const size = pageSizeMm(page);
        expect(Math.abs(size.width - layout.pageWidthMm)).toBeLessThan(0.1);
        expect(Math.abs(size.height - layout.pageHeightMm)).toBeLessThan(0.1);
        const from = at === 1 ? firstPlace - 1 : 0;
        const { boxes } = await strokedBoxes(page);
        expect(boxes.length).toBe(
          Math.min(labelsPerPage(layout), used - (at - 1) * labelsPerPage(layout)) - from,
        );
        for (const [index, box] of boxes.entries())
          for (const [name, wanted] of Object.entries(placeBox(layout, from + index)))
            expect(Math.abs(box[name as keyof typeof box] - wanted)).toBeLessThan(0.1);
      }
    },
  );

  it('says on each label the code, the unit, the species, the day and the site, in the order they are read', async () => {
    const pdf = await openPdf(await labelPdf({ ...usual, layout: first, labels: [label(7)] }));
    const said = ['TCF-337', 'Bolsa 7 de 24', 'Orellana', '4 jul 2026', 'Huerto del Molino'];
    // A space that does not break may be read back as a plain one.
    const read = (await textOf(await pdf.getPage(1))).map((text) => text.replace(/\s/g, ' '));
    expect(read).toEqual(said);
  });

  it('is tagged, names its language and asks to be printed at full size', async () => {
    const pdf = await openPdf(await labelPdf({ ...usual, layout: first }));
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    expect(await pdf.getViewerPreferences()).toMatchObject({ PrintScaling: 'None', DisplayDocTitle: true });
    const { info } = await pdf.getMetadata();
    expect(info).toMatchObject({ Title: 'Etiquetas TCF-337', Language: 'es' });
    const tree = JSON.stringify(await (await pdf.getPage(1)).getStructTree());
    expect(tree).toContain('"alt":"HTTPS://PINSET.EXAMPLE/B/4Q77DGG989H0/7"');
  });

  it('writes a name that its typeface has no letters for another way, and shortens what is too long', async () => {
    const strange = label(1, {
      species: ['平菇', 'Pleurotus ostreatus'],
      site: ['Сад у мельницы', 'MEL'],
      unit: 'Bolsa 1 de 24'.repeat(12),
    });
    const pdf = await openPdf(await labelPdf({ ...usual, layout: first, labels: [strange] }));
    const said = await textOf(await pdf.getPage(1));
    expect(said).toContain('Pleurotus ostreatus');
    expect(said).toContain('MEL');
    expect(said[1]).toMatch(/^Bolsa 1 de 24.*…$/);
  });

  it('of 500 labels is made in a few seconds', async () => {
    const many = Array.from({ length: 500 }, (_, at) => label(at + 1));
    const started = performance.now();
    const pdf = await labelPdf({ ...usual, layout: first, labels: many });
    expect(performance.now() - started).toBeLessThan(10_000);
    expect(pdf.byteLength).toBeLessThan(3_000_000);
  });
});

describe('the code of an address', () => {
  it('fits every ready sheet, and is refused where an address is too long for the label', () => {
    const address = labelAddress('https://records.larkmoor-growers.example.org', '4q77dgg989h0', 999);
    for (const sheet of readySheets) expect([sheet.key, codeFits(address, sheet)]).toEqual([sheet.key, true]);
    const endless = labelAddress(`https://${'a-long-name.'.repeat(16)}example`, '4q77dgg989h0', 999);
    const small = readySheets.find(({ labelHeightMm }) => labelHeightMm < 22);
    expect(small && codeFits(endless, small)).toBe(false);
  });
});
