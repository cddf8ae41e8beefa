import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { readComparisonChoices } from '../comparison/comparison-choices';
import { mixed, notRecorded, secondLife } from '../comparison/comparison-filter.input';
import { contaminationFigure } from '../comparison/contamination-figure';
import { type JudgedBatch, judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import { yieldFigure } from '../comparison/yield-figure';
import type { ShownFigure } from '../shown-figure';
import type { Period, SiteAmount } from './read-production';

export type MethodFigures = {
  readonly container: ContainerKind;
  /** Method id, or one of the keys of the comparison. */
  readonly methodKey: string;
  readonly methodEn: string;
  readonly methodEs: string;
  readonly contamination: ShownFigure;
  readonly yield: ShownFigure;
  /** Units by site behind the contamination figure, and grams (or area, or log-days) behind the yield. */
  readonly unitsBySite: readonly SiteAmount[];
  readonly yieldBySite: readonly SiteAmount[];
  /** What those figures count: contaminated units, and fresh grams. */
  readonly contaminatedBySite: readonly SiteAmount[];
  readonly freshBySite: readonly SiteAmount[];
};

/** Names of groups that are no method of the network. */
export const groupsWithoutMethod: Readonly<Record<string, { readonly en: string; readonly es: string }>> = {
  [mixed]: { en: 'Mixed methods', es: 'Métodos mezclados' },
  [secondLife]: { en: 'Second life of spent substrate', es: 'Segunda vida del sustrato agotado' },
  [notRecorded]: { en: 'Method not recorded', es: 'Método no registrado' },
};

function bySite(batches: readonly JudgedBatch[], amountOf: (batch: JudgedBatch) => number): SiteAmount[] {
  const sums = new Map<string, number>();
  for (const batch of batches) {
    const amount = amountOf(batch);
    if (amount > 0) sums.set(batch.facts.siteId, (sums.get(batch.facts.siteId) ?? 0) + amount);
  }
  return [...sums].map(([siteId, grams]) => ({ siteId, grams }));
}

/** Contamination and yield by method over a period (by inoculation), species together, container kinds never. */
export async function readMethodFigures(
  context: ReadContext,
  period: Period,
  now: Date,
): Promise<MethodFigures[]> {
  const choices = await readComparisonChoices(context, now);
  const facts = await readBatchRows(context, period);
  const judged = judgeBatches(facts, choices.today);
  const rows: MethodFigures[] = [];
  for (const container of containerKinds) {
    const own = judged.filter((batch) => batch.facts.containerKind === container && !batch.facts.voided);
    for (const methodKey of [...new Set(own.map((batch) => batch.methodKey))].sort()) {
      const batches = own.filter((batch) => batch.methodKey === methodKey);
      const names =
        choices.methods.find((method) => method.id === methodKey) ?? groupsWithoutMethod[methodKey];
      const ask = {
        batches,
        clusterBy: 'site' as const,
        pooled: { species: true, materials: true },
        asOf: now.toISOString(),
        rowsQuery: '',
      };
      rows.push({
        container,
        methodKey,
        methodEn: names?.en ?? '',
        methodEs: names?.es ?? '',
        contamination: contaminationFigure(ask, 'window'),
        yield: yieldFigure(ask, container, 'all'),
        unitsBySite: bySite(batches, (batch) =>
          batch.contamination.kind === 'counted' ? batch.contamination.units : 0,
        ),
        yieldBySite: bySite(batches, (batch) => (batch.yield.kind === 'counted' ? batch.yield.over : 0)),
        contaminatedBySite: bySite(batches, (batch) =>
          batch.contamination.kind === 'counted' ? batch.contamination.byWindowEnd : 0,
        ),
        freshBySite: bySite(batches, (batch) =>
          batch.yield.kind === 'counted' ? batch.yield.freshGrams : 0,
        ),
      });
    }
  }
  return rows.sort((a, b) => a.container.localeCompare(b.container) || a.methodEn.localeCompare(b.methodEn));
}
