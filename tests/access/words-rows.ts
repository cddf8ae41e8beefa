import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { getNote } from '@/lib/records/words/get-note.query';
import { takeOutNote } from '@/lib/records/words/take-out-note.command';
import { takeOutNoteInput } from '@/lib/records/words/take-out-note.input';
import { twentyBags } from '../support/shed';
import { command, type OperationRow } from './operation-rows';
import { arrange, type World } from './world';

const noted = ({ people, stock }: World) =>
  arrange(people.coordinator, startBatchInput, startBatch, { ...twentyBags(people, stock), note: 'words' });

/** Notes that are taken out by themselves: of records that one may see, and no others. */
export const wordsRows: readonly OperationRow[] = [
  command('records/words/take-out-note.command', 'yy---', takeOutNoteInput, takeOutNote, async (world) => ({
    ...{ kind: 'batch', revision: 1, reason: 'tried' },
    id: (await noted(world)).id,
  })),
  {
    file: 'records/words/get-note.query',
    may: 'yy---',
    prepare: noted,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) =>
        getNote(context, 'batch', z.object({ id: z.string() }).parse(prepared).id),
      )) !== undefined,
  },
];
