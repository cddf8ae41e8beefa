import { z } from 'zod';
import { newId } from '@/lib/base/new-id';
import { correctCheckInput, recordCheckInput } from '@/lib/records/check/check.input';
import { correctCheck } from '@/lib/records/check/correct-check.command';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { takeEntryInput } from '@/lib/records/entry/entry.input';
import { takeEntry } from '@/lib/records/entry/take-entry.command';
import { correctFinding } from '@/lib/records/finding/correct-finding.command';
import { correctFollowUp } from '@/lib/records/finding/correct-follow-up.command';
import { correctFindingInput, recordFindingInput } from '@/lib/records/finding/finding.input';
import { correctFollowUpInput, recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { correctLook } from '@/lib/records/look/correct-look.command';
import { correctLookInput } from '@/lib/records/look/correct-look.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { correctLoss } from '@/lib/records/loss/correct-loss.command';
import { correctLossInput, recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { command, type OperationRow } from './operation-rows';
import { revisionOf, type World } from './world';

const reason = 'tried';

const correction = async (world: World, table: string, id: string) => ({
  id,
  revision: await revisionOf(world, table, id),
  reason,
});

const finding = { foundOn: '2026-04-15', units: 2, sign: 'green', stage: 'colonising', action: 'isolated' };
const followUp = { doneOn: '2026-04-17', action: 'discarded', units: 1 };
const loss = { lostOn: '2026-04-21', units: 1, cause: 'eaten' };

/** What happens to a batch: done at one's own site or, by the coordinator, anywhere. */
export const batchEventRows: readonly OperationRow[] = [
  command('records/look/record-look.command', 'yy---', recordLookInput, recordLook, (w) => ({
    id: newId(),
    batchId: w.batch,
    lookedOn: '2026-06-01',
  })),
  command('records/look/correct-look.command', 'yy---', correctLookInput, correctLook, async (w, actor) => ({
    ...(await correction(w, 'look', w.look)),
    lookedOn: '2026-04-13',
    note: `looked again by ${actor.name}`,
  })),
  command(
    'records/entry/take-entry.command',
    'yy---',
    takeEntryInput.extend({ undoReason: z.string() }),
    takeEntry,
    (w, { personId, networkId }) => ({
      ...{ id: newId(), key: newId(), kind: 'look', personId, networkId, confirmed: [] },
      madeAt: '2026-06-01T12:00:00.000Z',
      input: { batchId: w.batch, lookedOn: '2026-06-01' },
      requestHash: 'a'.repeat(64),
      undoReason: reason,
    }),
  ),
  command('records/finding/record-finding.command', 'yy---', recordFindingInput, recordFinding, (w) => ({
    ...finding,
    id: newId(),
    batchId: w.batch,
    units: 1,
  })),
  command(
    'records/finding/correct-finding.command',
    'yy---',
    correctFindingInput,
    correctFinding,
    async (w, actor) => ({
      ...finding,
      ...(await correction(w, 'finding', w.finding)),
      note: `seen by ${actor.name}`,
    }),
  ),
  command('records/finding/record-follow-up.command', 'yy---', recordFollowUpInput, recordFollowUp, (w) => ({
    ...followUp,
    id: newId(),
    findingId: w.finding,
  })),
  command(
    'records/finding/correct-follow-up.command',
    'yy---',
    correctFollowUpInput,
    correctFollowUp,
    async (w, actor) => ({
      ...followUp,
      ...(await correction(w, 'finding_follow_up', w.followUp)),
      note: `done by ${actor.name}`,
    }),
  ),
  command('records/loss/record-loss.command', 'yy---', recordLossInput, recordLoss, (w) => ({
    ...loss,
    id: newId(),
    batchId: w.batch,
  })),
  command('records/loss/correct-loss.command', 'yy---', correctLossInput, correctLoss, async (w, actor) => ({
    ...loss,
    ...(await correction(w, 'loss', w.loss)),
    note: `told by ${actor.name}`,
  })),
  command('records/check/record-check.command', 'yy---', recordCheckInput, recordCheck, (w) => ({
    id: newId(),
    batchId: w.batch,
    checkedOn: '2026-05-01',
    kind: 'pins_seen',
  })),
  command(
    'records/check/correct-check.command',
    'yy---',
    correctCheckInput,
    correctCheck,
    async (w, actor) => ({
      ...(await correction(w, 'check', w.check)),
      checkedOn: '2026-04-19',
      kind: 'fully_colonised',
      note: `checked by ${actor.name}`,
    }),
  ),
];
