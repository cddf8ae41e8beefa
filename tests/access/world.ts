import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { publishReport } from '@/lib/report/publish-report.command';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed, twentyBags } from '../support/shed';

export const now = new Date('2026-07-20T15:00:00Z');

class Everything extends Set<string> {
  override has(): boolean {
    return true;
  }
}

export const allConfirmed = new Everything();

/** Runs a command and answers its value; anything but ok fails the test that arranged it. */
export async function arrange<S extends z.ZodType, T>(
  actor: Actor,
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
): Promise<T> {
  const result = await runAs(actor, schema, command, raw, {
    now,
    confirmed: allConfirmed,
    reason: 'arranged',
  });
  if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
  return result.value;
}

/** One batch of Mill Lane with everything that can hang on it, and a published and an unpublished report. */
export type World = {
  readonly people: Growers;
  readonly stock: Shed;
  readonly batch: string;
  readonly look: string;
  readonly finding: string;
  readonly followUp: string;
  readonly loss: string;
  readonly check: string;
  readonly weighing: string;
  readonly draft: string;
  readonly published: string;
};

export async function makeWorld(superuser: string): Promise<World> {
  const people = await growers(superuser);
  const stock = await shed(people);
  const { coordinator, member } = people;
  const batch = (await arrange(member, startBatchInput, startBatch, twentyBags(people, stock))).id;
  const look = (
    await arrange(member, recordLookInput, recordLook, { batchId: batch, lookedOn: '2026-04-12' })
  ).id;
  const finding = (
    await arrange(member, recordFindingInput, recordFinding, {
      batchId: batch,
      foundOn: '2026-04-14',
      units: 2,
      sign: 'green',
      stage: 'colonising',
      action: 'isolated',
    })
  ).id;
  const followUp = (
    await arrange(member, recordFollowUpInput, recordFollowUp, {
      findingId: finding,
      doneOn: '2026-04-16',
      action: 'discarded',
      units: 1,
    })
  ).id;
  const loss = (
    await arrange(member, recordLossInput, recordLoss, {
      batchId: batch,
      lostOn: '2026-04-20',
      units: 1,
      cause: 'eaten',
    })
  ).id;
  const check = (
    await arrange(member, recordCheckInput, recordCheck, {
      batchId: batch,
      checkedOn: '2026-04-20',
      kind: 'fully_colonised',
    })
  ).id;
  const weighing = (
    await arrange(member, recordWeighingInput, recordWeighing, {
      weighedOn: '2026-05-04',
      fresh: 3_000,
      lines: [{ batchId: batch, flush: 1 }],
      sold: 2_000,
    })
  ).id;
  const year = {
    title: 'A year',
    from: '2026-01-01',
    to: '2026-07-20',
    indicators: [...reportIndicators],
  };
  const draft = (await arrange(coordinator, buildReportInput, buildReport, year)).id;
  const published = (await arrange(coordinator, buildReportInput, buildReport, year)).id;
  await arrange(coordinator, publishReportInput, publishReport, { id: published });
  return { people, stock, batch, look, finding, followUp, loss, check, weighing, draft, published };
}

/** The present revision of a record, as its network's coordinator reads it. */
export async function revisionOf(world: World, table: string, id: string): Promise<number> {
  return readAs(world.people.coordinator, async ({ db }) => {
    const rows = await db.$queryRawUnsafe<{ revision: number }[]>(
      `select revision from "${table}" where id = '${id}'::uuid`,
    );
    return rows[0]?.revision ?? 0;
  });
}
