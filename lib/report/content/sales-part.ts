import type { SiteSales } from '@/lib/analysis/programme/read-sales';
import { amountPart } from './amount-part';
import type { FunderReportContent, ReportCell } from './funder-report';
import type { GroundSum } from './ground';
import type { ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';

type Told = FunderReportContent['sales'][number];

const add = (rows: readonly SiteSales[], of: (row: SiteSales) => number) =>
  rows.reduce((sum, row) => sum + of(row), 0);

function ofCurrency(currency: string, rows: readonly SiteSales[], rule: ProtectionRule) {
  const amounts = (of: (row: SiteSales) => number) =>
    rows.map(({ siteId, outlet, ...row }) => ({ siteId, outlet, grams: of({ siteId, outlet, ...row }) }));
  const outlets = amountPart(
    amounts(({ amountMinor }) => amountMinor),
    ({ outlet }) => outlet,
    rule,
  );
  const whole = (of: (row: SiteSales) => number) => amountPart(amounts(of), () => 'all', rule);
  const grams = whole((row) => row.grams);
  const customers = whole((row) => row.customers);
  const counted = whole((row) => row.sales);
  const totalShown = outlets.table.total.kind === 'shown' && counted.table.total.kind === 'shown';
  const told: Told = {
    currency,
    outlets: outlets.table,
    grams: grams.table.total,
    customers: customers.table.total,
    ...(totalShown
      ? {
          sales: add(rows, (row) => row.sales),
          salesWithCustomers: add(rows, (row) => row.salesWithCustomers),
        }
      : {}),
  };
  const known: Record<string, readonly GroundSum[]> = {
    [`${currency} outlets`]: outlets.known,
    [`${currency} grams`]: grams.known,
    [`${currency} customers`]: customers.known,
    [`${currency} sales`]: totalShown ? counted.known : [],
  };
  return { told, known };
}

/** Sales of a period, each currency apart; of each the money by outlet, and mass and customers in all. */
export function salesPart(rows: readonly SiteSales[], rule: ProtectionRule): ReportPart<{ sales: Told[] }> {
  const currencies = [...new Set(rows.map(({ currency }) => currency))].sort();
  const parts = currencies.map((currency) =>
    ofCurrency(
      currency,
      rows.filter((row) => row.currency === currency),
      rule,
    ),
  );
  return {
    content: { sales: parts.map(({ told }) => told) },
    ground: Object.assign({}, ...parts.map(({ known }) => known)),
  };
}

/** The total of a currency, or nothing sold. */
export function salesTotal(sales: readonly Told[], currency: string): ReportCell {
  const told = sales.find((one) => one.currency === currency);
  return told?.outlets.total ?? { key: 'total', kind: 'shown', amount: 0, sites: 0 };
}
