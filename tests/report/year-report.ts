import type { SiteSales } from '@/lib/analysis/programme/read-sales';
import { amountPart } from '@/lib/report/content/amount-part';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { changeRows } from '@/lib/report/content/change-rows';
import type { ReportIndicator } from '@/lib/report/content/report-indicators.input';
import { salesPart } from '@/lib/report/content/sales-part';
import { rule } from './random-network';

/** Of one year: fresh and dry grams of each site, and the cents that it was paid. */
export type YearOfSites = { readonly [siteId: string]: number };
export const evenYear: YearOfSites = { a: 3000, b: 3000, c: 3000, d: 3000, e: 3000, f: 3000, g: 3000 };

const days = (year: number) => ({ from: `${year}-01-01`, to: `${year}-12-31` });

function partsOf(sites: YearOfSites) {
  const rows = Object.entries(sites).map(([siteId, grams]) => ({ siteId, grams }));
  const sales = Object.entries(sites).map(
    ([siteId, amountMinor]): SiteSales => ({
      ...{ siteId, outlet: 'farm_gate', currency: 'USD', sales: 1, grams: 1000, amountMinor },
      ...{ customers: 0, salesWithCustomers: 0 },
    }),
  );
  const harvest = amountPart(rows, () => 'sold', rule);
  const residues = amountPart(rows, () => 'straw', rule);
  const { content, ground } = salesPart(sales, rule);
  return {
    told: { harvest: harvest.table, residues: residues.table, sales: content.sales },
    tables: { harvest: harvest.known, residues: residues.known, sales: ground },
  };
}

/** A report of a year as it is built, beside the records of an earlier year where they are given. */
export function yearReport(
  year: number,
  now: YearOfSites,
  before?: { readonly year: number; readonly sites: YearOfSites },
  indicators: ReportIndicator[] = ['harvest', 'residues', 'sales'],
): BuiltReport {
  const { told, tables } = partsOf(now);
  const beside = before && partsOf(before.sites);
  return {
    content: {
      ...{ form: 2, networkName: 'Larkmoor', ...days(year), builtAt: '', indicators },
      ...(before ? { baseline: days(before.year) } : {}),
      ...{ sitesActive: 0, peopleActive: 0, batchesStarted: 0, batchesWithoutDryMass: 0, rule },
      ...{ harvest: told.harvest, residues: told.residues, assumedResidues: [] },
      sales: indicators.includes('sales') ? told.sales : [],
      changes: beside ? changeRows(beside.told, told) : [],
      ...{ protein: [], practices: [], adopted: [], methods: [], carried: {} },
    },
    ground: {
      ...{ harvest: { harvest: tables.harvest }, residues: { residues: tables.residues } },
      sales: tables.sales,
      ...(beside
        ? {
            baseline: {
              ...{ harvest: beside.tables.harvest, residues: beside.tables.residues },
              ...beside.tables.sales,
            },
          }
        : {}),
    },
  };
}
