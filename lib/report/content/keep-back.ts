import type { BuiltReport } from './build-content';
import type { FunderReportContent, ReportCell, ReportTable } from './funder-report';
import type { GroundPart } from './ground';

const kept = ({ key }: { readonly key: string }): ReportCell => ({ key, kind: 'protected' });
const keptTable = ({ total, cells }: ReportTable) => ({ total: kept(total), cells: cells.map(kept) });

const keptSales = (sales: FunderReportContent['sales']) =>
  sales.map(({ currency, outlets, grams, customers }) => ({
    ...{ currency, outlets: keptTable(outlets), grams: kept(grams), customers: kept(customers) },
  }));

/** A report whose part tells nothing: what can be done with one that no earlier report told. */
export function keepBack({ content, ground }: BuiltReport, part: GroundPart): BuiltReport {
  const told = { content, ground: { ...ground, [part]: {} } };
  if (part === 'harvest') return { ...told, content: { ...content, harvest: keptTable(content.harvest) } };
  if (part === 'residues') return { ...told, content: { ...content, residues: keptTable(content.residues) } };
  if (part === 'sales') return { ...told, content: { ...content, sales: keptSales(content.sales) } };
  if (part !== 'protein') return { content, ground };
  const protein = content.protein.map((row) => ({
    ...row,
    ...{ fresh: kept(row.fresh), range: { kind: 'protected' as const } },
  }));
  return { ...told, content: { ...content, protein } };
}
