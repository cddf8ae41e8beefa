import type { ReportDocument } from '../document/report-document';
import { type PackageTable, protectedCell } from './package-table';

/** Where a report comes from. Instants ISO 8601. */
export type ReportProvenance = {
  readonly id: string;
  readonly version: number;
  readonly networkName: string;
  /** As of when the records were read. */
  readonly builtAt: string;
  /** Undefined for a draft. */
  readonly publishedAt: string | undefined;
};

export type WrittenReportTable = {
  readonly table: PackageTable;
  readonly bytes: number;
  readonly sha256: string;
};

const profile = 'https://datapackage.org/profiles/2.0/';
const blank = { value: '', label: 'the report has no such figure' };
const withheld = { value: protectedCell, label: 'withheld: it would tell about few sites' };

function resource({ table, bytes, sha256 }: WrittenReportTable) {
  return {
    name: table.name,
    type: 'table',
    path: `data/${table.name}.csv`,
    description: table.description,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes,
    hash: `sha256:${sha256}`,
    rows: table.rows.length,
    dialect: { $schema: `${profile}tabledialect.json`, delimiter: ',', lineTerminator: '\r\n', header: true },
    schema: {
      $schema: `${profile}tableschema.json`,
      fields: table.fields.map(({ name, type, description, unit }) => ({
        ...{ name, type, description },
        ...(unit === undefined ? {} : { unit }),
        missingValues: type === 'number' ? [blank, withheld] : [blank],
      })),
    },
  };
}

/** The descriptor of a report's archive (Data Package 2.0) with `unit` (UCUM) and `rows` besides. */
export function describeReport(
  report: ReportDocument,
  provenance: ReportProvenance,
  written: readonly WrittenReportTable[],
) {
  const { id, version, networkName, builtAt, publishedAt } = provenance;
  return {
    $schema: `${profile}datapackage.json`,
    name: `pinset-report-${id}`,
    id: `urn:uuid:${id}`,
    title: report.title,
    description:
      `${report.lead} ${report.standing}. The figures of the report, as its page and its print show them. ` +
      `"${protectedCell}" stands where a figure would tell about few sites. In text that would begin like a formula ` +
      'one apostrophe stands before it: take it away when reading. `unit` is a UCUM code.',
    version: `${version}.0.0`,
    created: publishedAt ?? builtAt,
    languages: [report.language],
    licenses: [
      {
        name: 'LicenseRef-none',
        title: 'No licence given: ask the network before using or passing on the data',
      },
    ],
    contributors: [{ title: networkName, roles: ['dataCollector', 'rightsHolder'] }],
    sources: [{ title: `${networkName}: records kept in Pinset, as of ${builtAt}` }],
    resources: written.map(resource),
  };
}
