import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import type { ContainerKind } from '@/lib/database/generated/enums';
import { nextFreePlace } from '@/lib/labels/sheet/fill-sheets';
import { type PlannedLabel, planLabels } from '@/lib/labels/sheet/plan-labels';
import { readySheets } from '@/lib/labels/sheet/ready-sheets';
import { labelsPerPage, type SheetLayout } from '@/lib/labels/sheet/sheet-layout';
import { usualSheet } from '@/lib/labels/sheet/usual-sheet';
import { asCalendarDate } from '../fields/stored-date';
import { listLabelSheets, type OwnSheet } from './list-label-sheets.query';
import type { PrintLabels } from './print-labels.input';

/** What a label says of its batch. */
export type LabelledBatch = {
  readonly id: string;
  readonly code: string;
  readonly labelKey: string;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly inoculatedOn: string;
  readonly species: { readonly en: string; readonly es: string; readonly scientific: string };
  readonly site: { readonly name: string; readonly code: string };
};

export type LabelPrintView = {
  readonly batches: readonly LabelledBatch[];
  readonly ownSheets: readonly OwnSheet[];
  readonly sheet: { readonly key: string; readonly layout: SheetLayout };
  readonly labels: readonly PlannedLabel[];
  readonly firstPlace: number;
  readonly nextPlace: number | undefined;
  readonly problems: readonly FieldError[];
};

function planOf(batches: readonly LabelledBatch[], input: PrintLabels, layout: SheetLayout) {
  const { per, units, copies, from } = input;
  const problems: FieldError[] = [];
  const places = labelsPerPage(layout);
  if (from > places) problems.push({ field: 'from', code: 'too-large', values: { max: places } });
  const planned = planLabels(
    batches.map(({ unitCount }) => unitCount),
    { per, units, copies },
  );
  if (!('code' in planned)) return { problems, labels: planned };
  const { code, ...values } = planned;
  return {
    labels: [],
    problems: [...problems, { field: code === 'unit-numbers' ? 'units' : 'copies', code, values }],
  };
}

/** The labels of the chosen batches on the chosen sheet, with what is wrong with the choice. */
export async function getLabelPrint(context: ReadContext, input: PrintLabels): Promise<LabelPrintView> {
  const rows = await context.db.batch.findMany({
    where: { id: { in: input.batch }, voidedAt: null },
    include: { species: true, site: true },
    orderBy: [{ inoculatedOn: 'asc' }, { code: 'asc' }],
  });
  const batches = rows.map((row) => ({
    ...{ id: row.id, code: row.code, labelKey: row.labelKey },
    ...{ containerKind: row.containerKind, unitCount: row.unitCount },
    inoculatedOn: asCalendarDate(row.inoculatedOn),
    species: { en: row.species.nameEn, es: row.species.nameEs, scientific: row.species.scientificName },
    site: { name: row.site.name, code: row.site.code },
  }));
  const ownSheets = await listLabelSheets(context);
  const ready = readySheets.find(({ key }) => key === input.sheet);
  const kept = ownSheets.find(({ id }) => id === input.sheet);
  const usual = usualSheet(context.actor.region);
  const layout = ready ?? kept ?? usual;
  const { problems, labels } = planOf(batches, input, layout);
  const gone = new Set(input.batch).size > batches.length;
  const firstPlace = Math.min(input.from, labelsPerPage(layout));
  return {
    ...{ batches, ownSheets, labels, firstPlace },
    sheet: { key: ready?.key ?? kept?.id ?? usual.key, layout },
    nextPlace: nextFreePlace(layout, labels.length, firstPlace),
    problems: [
      ...(gone ? [{ field: 'batch', code: 'not-found' }] : []),
      ...(input.sheet !== null && !ready && !kept ? [{ field: 'sheet', code: 'not-an-option' }] : []),
      ...problems,
    ],
  };
}
