import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type Period, readProduction } from '@/lib/analysis/production/read-production';
import { readSales } from '@/lib/analysis/programme/read-sales';
import { amountPart } from './amount-part';
import type { ProtectionRule } from './protect-cells';
import { residuePart } from './residue-part';
import { salesPart } from './sales-part';

/** What is told of a period and of its baseline alike: harvest, residues and sales, protected. */
export async function readPeriodParts(context: ReadContext, period: Period, rule: ProtectionRule) {
  const production = await readProduction(context, period);
  return {
    production,
    harvest: amountPart(production.destinations, (row) => row.destination, rule),
    residues: residuePart(production.residues, rule),
    sales: salesPart(await readSales(context, period), rule),
  };
}

export type PeriodParts = Awaited<ReturnType<typeof readPeriodParts>>;
