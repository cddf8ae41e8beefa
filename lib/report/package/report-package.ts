import 'server-only';
import { createHash } from 'node:crypto';
import { buffer } from 'node:stream/consumers';
import { stringify } from 'csv-stringify/sync';
import { ZipFile } from 'yazl';
import { guardFormula } from '@/lib/base/formula-guard';
import type { ReportDocument } from '../document/report-document';
import { describeReport, type ReportProvenance } from './describe-report';
import type { PackageTable } from './package-table';
import { sectionTables } from './section-tables';

function csvOf({ fields, rows }: PackageTable): Buffer {
  const lines = rows.map((row) =>
    fields.map(({ type, of }) => (type === 'number' ? of(row) : guardFormula(of(row)))),
  );
  return Buffer.from(stringify([fields.map(({ name }) => name), ...lines], { record_delimiter: 'windows' }));
}

/** A report's data as one archive: `datapackage.json` and a CSV for each table, from the document that its page draws. */
export async function reportPackage(
  report: ReportDocument,
  provenance: ReportProvenance,
): Promise<Uint8Array<ArrayBuffer>> {
  const zip = new ZipFile();
  const mtime = new Date(provenance.publishedAt ?? provenance.builtAt);
  const written = sectionTables(report).map((table) => {
    const content = csvOf(table);
    zip.addBuffer(content, `data/${table.name}.csv`, { mtime });
    const sha256 = createHash('sha256').update(content).digest('hex');
    return { table, bytes: content.byteLength, sha256 };
  });
  const descriptor = JSON.stringify(describeReport(report, provenance, written), null, 2);
  zip.addBuffer(Buffer.from(descriptor), 'datapackage.json', { mtime });
  zip.end();
  return new Uint8Array(await buffer(zip.outputStream));
}
