import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addLabelSheet } from '@/lib/records/label/add-label-sheet.command';
import { correctLabelSheet } from '@/lib/records/label/correct-label-sheet.command';
import { findLabelledBatch } from '@/lib/records/label/find-labelled-batch.query';
import { getLabelPrint } from '@/lib/records/label/get-label-print.query';
import { addLabelSheetInput, correctLabelSheetInput } from '@/lib/records/label/label-sheet.input';
import { listLabelSheets } from '@/lib/records/label/list-label-sheets.query';
import { printLabelsInput } from '@/lib/records/label/print-labels.input';
import { command, type OperationRow } from './operation-rows';
import { arrange, type World } from './world';

const sheet = () => ({
  name: `Sheet ${newId()}`,
  pageWidthMm: '210',
  pageHeightMm: '297',
  labelWidthMm: '70',
  labelHeightMm: '37',
  columns: '3',
  rows: '8',
  leftMm: '0',
  topMm: '0',
  gapAcrossMm: '0',
  gapDownMm: '0',
});

const kept = (world: World) => arrange(world.people.coordinator, addLabelSheetInput, addLabelSheet, sheet());

/** Label sheets are the network's; what stands on a label is the batch's. */
export const labelRows: readonly OperationRow[] = [
  command('records/label/add-label-sheet.command', 'yyy-o', addLabelSheetInput, addLabelSheet, sheet),
  command(
    'records/label/correct-label-sheet.command',
    'y----',
    correctLabelSheetInput,
    correctLabelSheet,
    async (world) => ({ ...sheet(), id: (await kept(world)).id, revision: 1, reason: 'tried' }),
  ),
  {
    file: 'records/label/list-label-sheets.query',
    may: 'yyy--',
    prepare: kept,
    attempt: async (_world, actor, prepared) =>
      JSON.stringify(await readAs(actor, listLabelSheets)).includes(JSON.stringify(prepared).slice(7, 43)),
  },
  {
    file: 'records/label/find-labelled-batch.query',
    may: 'yy---',
    prepare: (world) =>
      readAs(world.people.coordinator, ({ db }) =>
        db.batch.findFirst({ where: { id: world.batch }, select: { labelKey: true } }),
      ),
    attempt: async (world, actor, prepared) => {
      const key =
        prepared !== null && typeof prepared === 'object' && 'labelKey' in prepared ? prepared.labelKey : '';
      return (await readAs(actor, (context) => findLabelledBatch(context, String(key)))) === world.batch;
    },
  },
  {
    file: 'records/label/get-label-print.query',
    may: 'yy---',
    prepare: async () => undefined,
    attempt: async (world, actor) => {
      const input = printLabelsInput.parse({
        batch: [world.batch],
        sheet: '',
        per: 'unit',
        units: '',
        outline: '',
      });
      return (await readAs(actor, (context) => getLabelPrint(context, input))).batches.length > 0;
    },
  },
];
