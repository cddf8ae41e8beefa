import type { CostGroup } from '@/lib/analysis/costs/cost-group';
import type { CostsAnswer } from '@/lib/analysis/costs/read-costs';
import { amountPart } from './amount-part';
import { cellsOf } from './cells-of';
import type { FunderReportContent } from './funder-report';
import { knownSums } from './ground';
import type { ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';

type Told = NonNullable<FunderReportContent['costs']>;
type Row = Told['all'];

const kept = { kind: 'protected' } as const;
const ofMethods = (methods: readonly CostGroup[], of: (site: CostGroup['bySite'][number]) => number) =>
  methods.flatMap(({ key, bySite }) => bySite.map((site) => ({ key, siteId: site.siteId, grams: of(site) })));

/** What a kilogram cost by method; by the mass behind it, as cells of one table whose total is the line of all methods. */
export function costPart(
  { currency, labourMinorPerHour, batches, fullBatches, missing, all, methods, methodNames }: CostsAnswer,
  special: Readonly<Record<string, { readonly en: string; readonly es: string }>>,
  rule: ProtectionRule,
): ReportPart<{ costs: Told }> {
  const fresh = amountPart(
    ofMethods(methods, (site) => site.freshGrams),
    ({ key }) => key,
    rule,
  );
  const priced = amountPart(
    ofMethods(methods, (site) => site.pricedGrams),
    ({ key }) => key,
    rule,
  );
  const behind = (of: (site: CostGroup['bySite'][number]) => number) =>
    cellsOf(ofMethods(methods, of), ({ key }) => key);
  // A cell of nothing may be shown as nothing; a cost of few sites that picked nothing may not.
  const told = (part: typeof fresh, key: string) =>
    [...part.table.cells, part.table.total].some(
      (cell) => cell.key === key && cell.kind === 'shown' && cell.amount > 0,
    );
  const rowOf = (group: CostGroup, key: string): Row => {
    const names = methodNames.get(group.key) ?? special[group.key];
    const costShown = told(fresh, key);
    return {
      key: group.key,
      methodEn: names?.en ?? '',
      methodEs: names?.es ?? '',
      cost: costShown ? group.cost : kept,
      margin: costShown && told(priced, key) ? group.margin : kept,
      labourMinutesPerKg: costShown ? group.labourMinutesPerKg : null,
    };
  };
  return {
    content: {
      costs: {
        ...{ currency, labourMinorPerHour, batches, fullBatches, missing: [...missing] },
        all: rowOf(all, 'total'),
        methods: methods.map((group) => rowOf(group, group.key)),
      },
    },
    ground: {
      fresh: fresh.known,
      priced: priced.known,
      minor: knownSums(
        fresh.table,
        behind((site) => site.minor),
      ),
      // A margin tells what was paid, work for a kilogram its minutes: one site's alone may have changed.
      sold: knownSums(
        priced.table,
        behind((site) => site.soldMinor),
      ),
      minutes: knownSums(
        fresh.table,
        behind((site) => site.labourMinutes),
      ),
    },
  };
}
