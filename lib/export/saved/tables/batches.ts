import type { ReadContext } from '@/lib/access/context';
import type { Prisma } from '@/lib/database/generated/client';
import { biologicalEfficiency, whyNoBe } from '@/lib/growing/biological-efficiency';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { batchWhere } from '@/lib/records/batch/batch-where';
import { codesCell, dateCell, decimalCell, nameCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = {
  site: true,
  species: true,
  method: true,
  material: true,
  components: { where: { voidedAt: null }, include: { lot: true, run: true }, orderBy: { id: 'asc' } },
  spawnShares: { where: { voidedAt: null }, include: { lot: true }, orderBy: { id: 'asc' } },
} satisfies Prisma.BatchInclude;

type Row = Prisma.BatchGetPayload<{ include: typeof include }>;
type Told = Row & {
  readonly contaminated: number;
  readonly lost: number;
  readonly lastLookedOn: Date | null;
  /** Null where nothing was weighed. */
  readonly weighed: number | null;
};

/** What hangs on the batches of a page, asked for all of them at once. */
async function withEvents({ db }: ReadContext, rows: readonly Row[]): Promise<Told[]> {
  const where = { batchId: { in: rows.map(({ id }) => id) }, voidedAt: null };
  const found = await db.finding.groupBy({ by: ['batchId'], where, _sum: { units: true } });
  const lost = await db.loss.groupBy({ by: ['batchId'], where, _sum: { units: true } });
  const looks = await db.look.groupBy({ by: ['batchId'], where, _max: { lookedOn: true } });
  const weighed = await db.weighingLine.groupBy({
    by: ['batchId'],
    where: { ...where, weighing: { voidedAt: null } },
    _sum: { freshGrams: true },
  });
  const contaminated = new Map(found.map(({ batchId, _sum }) => [batchId, _sum.units ?? 0]));
  const lostUnits = new Map(lost.map(({ batchId, _sum }) => [batchId, _sum.units ?? 0]));
  const lookedOn = new Map(looks.map(({ batchId, _max }) => [batchId, _max.lookedOn]));
  const fresh = new Map(weighed.map(({ batchId, _sum }) => [batchId, _sum.freshGrams ?? 0]));
  return rows.map((row) => ({
    ...row,
    contaminated: contaminated.get(row.id) ?? 0,
    lost: lostUnits.get(row.id) ?? 0,
    lastLookedOn: lookedOn.get(row.id) ?? null,
    weighed: fresh.get(row.id) ?? (row.noHarvest === 'none_picked' ? 0 : null),
  }));
}

function bePercent(row: Told): number | null {
  if (whyNoBe(row.containerKind, row.closedOn !== null) !== null) return null;
  const be = biologicalEfficiency(row.weighed, row.dryGrams);
  return be.kind === 'value' ? be.value.bePercent : null;
}

/** The list of batches: one line a batch, with what was found, lost and weighed of it so far. */
export const batches = savedTable<Told>(
  [
    { key: 'code', kind: 'text', blank: 'never', cell: (row) => row.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.site.name },
    { key: 'siteCode', kind: 'text', blank: 'never', cell: (row) => row.site.code },
    {
      key: 'species',
      kind: 'text',
      blank: 'never',
      cell: (row, language) => nameCell(row.species, language),
    },
    { key: 'scientificName', kind: 'text', blank: 'never', cell: (row) => row.species.scientificName },
    {
      key: 'container',
      kind: 'choice',
      words: 'containerKind',
      blank: 'never',
      cell: (row) => row.containerKind,
    },
    { key: 'units', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.unitCount },
    { key: 'inoculatedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.inoculatedOn) },
    {
      key: 'method',
      kind: 'text',
      blank: 'notApplicable',
      cell: (row, language) => nameCell(row.method, language),
    },
    { key: 'mixedMethod', kind: 'yesNo', blank: 'never', cell: (row) => row.mixedMethod },
    {
      key: 'material',
      kind: 'text',
      blank: 'notApplicable',
      cell: (row, language) => nameCell(row.material, language),
    },
    {
      ...{ key: 'substrateLots', kind: 'text', blank: 'none' },
      cell: (row) => codesCell(row.components.map(({ lot }) => lot.code)),
    },
    {
      ...{ key: 'runs', kind: 'text', blank: 'none' },
      cell: (row) => codesCell(row.components.flatMap(({ run }) => (run ? [run.code] : []))),
    },
    {
      ...{ key: 'spawnLots', kind: 'text', blank: 'none' },
      cell: (row) => codesCell(row.spawnShares.map(({ lot }) => lot.code)),
    },
    { key: 'spawnGrams', kind: 'number', unit: 'gram', blank: 'notRecorded', cell: (row) => row.spawnGrams },
    { key: 'wetGrams', kind: 'number', unit: 'gram', blank: 'notRecorded', cell: (row) => row.wetGrams },
    {
      ...{ key: 'moisturePercent', kind: 'number', unit: 'percent', blank: 'notRecorded' },
      cell: (row) => decimalCell(row.moisturePercent),
    },
    {
      key: 'moistureSource',
      kind: 'choice',
      words: 'moistureSource',
      blank: 'never',
      cell: (row) => row.moistureSource,
    },
    { key: 'dryGrams', kind: 'number', unit: 'gram', blank: 'notRecorded', cell: (row) => row.dryGrams },
    {
      key: 'dryMassFrom',
      kind: 'choice',
      words: 'dryMassFrom',
      blank: 'never',
      cell: (row) => row.dryMassFrom,
    },
    { key: 'lastLookedOn', kind: 'date', blank: 'notYet', cell: (row) => dateCell(row.lastLookedOn) },
    {
      key: 'contaminatedUnits',
      kind: 'number',
      unit: 'one',
      blank: 'never',
      cell: (row) => row.contaminated,
    },
    { key: 'lostUnits', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.lost },
    { key: 'freshSoFar', kind: 'number', unit: 'gram', blank: 'notYet', cell: (row) => row.weighed },
    { key: 'bePercent', kind: 'number', unit: 'percent', blank: 'notApplicable', cell: bePercent },
    { key: 'closedOn', kind: 'date', blank: 'notYet', cell: (row) => dateCell(row.closedOn) },
    {
      key: 'closeReason',
      kind: 'choice',
      words: 'closeReason',
      blank: 'notYet',
      cell: (row) => row.closeReason,
    },
    {
      ...{ key: 'spentDestination', kind: 'choice', words: 'spentDestination', blank: 'notRecorded' },
      cell: (row) => row.spentDestination,
    },
    { key: 'secondLife', kind: 'yesNo', blank: 'never', cell: (row) => row.secondLife },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  async function* (context, query) {
    const where = batchWhere(batchFilterInput.parse(query));
    const rows = readPages(context, (start) =>
      context.db.batch.findMany({
        where,
        include,
        orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
        ...start,
      }),
    );
    for await (const page of rows) yield await withEvents(context, page);
  },
);
