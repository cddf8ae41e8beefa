import { z } from 'zod';
import { newId } from '@/lib/base/new-id';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { reopenBatch } from '@/lib/records/batch/reopen-batch.command';
import { reopenBatchInput } from '@/lib/records/batch/reopen-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { addBedLayers } from '@/lib/records/bed-layer/add-bed-layers.command';
import { addBedLayersInput } from '@/lib/records/bed-layer/bed-layer.input';
import { addDefaults } from '@/lib/records/network/add-defaults.command';
import { changeMembership } from '@/lib/records/person/change-membership.command';
import { changeMembershipInput } from '@/lib/records/person/change-membership.input';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { correctSecondLife } from '@/lib/records/second-life/correct-second-life.command';
import { correctSecondLifeInput, startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { addSite } from '@/lib/records/site/add-site.command';
import { correctSite } from '@/lib/records/site/correct-site.command';
import { addSiteInput, correctSiteInput } from '@/lib/records/site/site.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { correctWeighing } from '@/lib/records/weighing/correct-weighing.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { correctWeighingInput, recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { twentyBags } from '../support/shed';
import { batchEventRows } from './batch-event-rows';
import { conditionRows } from './condition-rows';
import { costRows } from './cost-rows';
import { invitationRows } from './invitation-rows';
import { labelRows } from './label-rows';
import { leavingRows } from './leaving-rows';
import { lotRows } from './lot-rows';
import { noticeRows } from './notice-rows';
import { command } from './operation-rows';
import { photoRows } from './photo-rows';
import { programmeRows } from './programme-rows';
import { reportRows } from './report-rows';
import { reportSharingRows } from './report-sharing-rows';
import { settingRows } from './setting-rows';
import { sharingRows } from './sharing-rows';
import { signalRows } from './signal-rows';
import { siteMethodRows } from './site-method-rows';
import { tokenRows } from './token-rows';
import { traceRows } from './trace-rows';
import { trialRows } from './trial-rows';
import { wordsRows } from './words-rows';
import { arrange, revisionOf, type World } from './world';

const reason = 'tried';
const site = {
  code: 'NEW',
  name: 'New site',
  kind: 'farm',
  timeZone: 'America/New_York',
  trimDefault: 'trimmed',
};

/** A fresh batch of Mill Lane, so that a row changes nothing that another row stands on. */
async function anotherBatch(world: World): Promise<string> {
  return (
    await arrange(
      world.people.coordinator,
      startBatchInput,
      startBatch,
      twentyBags(world.people, world.stock),
    )
  ).id;
}

async function closedBatch(world: World): Promise<string> {
  const batchId = await anotherBatch(world);
  await arrange(world.people.coordinator, closeBatchInput, closeBatch, {
    batchId,
    closedOn: '2026-07-01',
    closeReason: 'finished',
    spentDestination: 'composted',
    noHarvest: 'none_picked',
  });
  return batchId;
}

const secondLife = (world: World, sourceBatch: string) => ({
  siteId: world.people.millLane,
  speciesId: world.stock.oyster,
  containerKind: 'bed',
  unitCount: 1,
  inoculatedOn: '2026-07-10',
  moistureSource: 'none',
  sources: [{ batchId: sourceBatch, units: 2 }],
});

async function startedSecondLife(world: World) {
  const source = await anotherBatch(world);
  const { id } = await arrange(
    world.people.coordinator,
    startSecondLifeInput,
    startSecondLife,
    secondLife(world, source),
  );
  return { id, source };
}

async function membershipOfMember({ people }: World) {
  return { id: people.member.membershipId, role: 'member', state: 'active', siteIds: [people.millLane] };
}

/** Every command, and who can do it to the records of Mill Lane. */
export const commandRows = [
  ...batchEventRows,
  ...trialRows,
  ...traceRows,
  ...noticeRows,
  ...photoRows,
  ...wordsRows,
  ...signalRows,
  ...labelRows,
  ...invitationRows,
  ...siteMethodRows,
  ...sharingRows,
  ...leavingRows,
  ...tokenRows,
  ...lotRows,
  ...settingRows,
  ...conditionRows,
  ...programmeRows,
  ...costRows,
  command('records/batch/start-batch.command', 'yy---', startBatchInput, startBatch, (w) => ({
    ...twentyBags(w.people, w.stock),
    id: newId(),
  })),
  command('records/batch/correct-batch.command', 'yy---', correctBatchInput, correctBatch, async (w) => {
    const id = await anotherBatch(w);
    return {
      ...twentyBags(w.people, w.stock),
      id,
      revision: await revisionOf(w, 'batch', id),
      reason,
      note: 'corrected',
    };
  }),
  command('records/batch/close-batch.command', 'yy---', closeBatchInput, closeBatch, async (w) => ({
    batchId: await anotherBatch(w),
    closedOn: '2026-07-01',
    closeReason: 'finished',
    spentDestination: 'composted',
    noHarvest: 'none_picked',
  })),
  command('records/batch/reopen-batch.command', 'yy---', reopenBatchInput, reopenBatch, async (w) => {
    const id = await closedBatch(w);
    return { id, revision: await revisionOf(w, 'batch', id), reason };
  }),
  command(
    'records/bed-layer/add-bed-layers.command',
    'yy---',
    addBedLayersInput,
    addBedLayers,
    async (w) => ({
      batchId: (await startedSecondLife(w)).id,
      laidOn: '2026-07-12',
      layers: [{ material: 'straw' }],
    }),
  ),
  command(
    'records/second-life/start-second-life.command',
    'yy---',
    startSecondLifeInput,
    startSecondLife,
    async (w) => secondLife(w, await anotherBatch(w)),
  ),
  command(
    'records/second-life/correct-second-life.command',
    'yy---',
    correctSecondLifeInput,
    correctSecondLife,
    async (w) => {
      const { id, source } = await startedSecondLife(w);
      return {
        ...secondLife(w, source),
        id,
        revision: await revisionOf(w, 'batch', id),
        reason,
        note: 'corrected',
      };
    },
  ),
  command('records/weighing/record-weighing.command', 'yy---', recordWeighingInput, recordWeighing, (w) => ({
    id: newId(),
    weighedOn: '2026-05-20',
    fresh: 900,
    lines: [{ batchId: w.batch }],
  })),
  command(
    'records/weighing/correct-weighing.command',
    'yy---',
    correctWeighingInput,
    correctWeighing,
    async (w) => ({
      id: w.weighing,
      revision: await revisionOf(w, 'weighing', w.weighing),
      reason,
      weighedOn: '2026-05-05',
      fresh: 3_100,
      lines: [{ batchId: w.batch, flush: 1 }],
    }),
  ),
  command('records/void/void-record.command', 'yy---', voidRecordInput, voidRecord, async (w) => {
    const id = await anotherBatch(w);
    return { kind: 'batch', id, revision: await revisionOf(w, 'batch', id), reason };
  }),
  command('records/network/add-defaults.command', 'y---o', z.object({}), addDefaults, () => ({})),
  command('records/site/add-site.command', 'y---o', addSiteInput, addSite, () => site),
  command('records/site/correct-site.command', 'y----', correctSiteInput, correctSite, async (w) => ({
    ...site,
    code: 'MILL',
    id: w.people.millLane,
    revision: await revisionOf(w, 'site', w.people.millLane),
    reason,
  })),
  command('records/person/invite-person.command', 'y----', invitePersonInput, invitePerson, (w) => ({
    role: 'member',
    siteIds: [w.people.millLane],
  })),
  command(
    'records/person/change-membership.command',
    'y----',
    changeMembershipInput,
    changeMembership,
    async (w) => {
      const wanted = await membershipOfMember(w);
      return { ...wanted, revision: await revisionOf(w, 'membership', wanted.id), reason };
    },
  ),
  ...reportRows,
  ...reportSharingRows,
];
