import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addParticipant } from '@/lib/records/participant/add-participant.command';
import { correctParticipant } from '@/lib/records/participant/correct-participant.command';
import { eraseParticipant } from '@/lib/records/participant/erase-participant.command';
import { getParticipant } from '@/lib/records/participant/get-participant.query';
import { listParticipantChoices } from '@/lib/records/participant/list-participant-choices.query';
import { listParticipants } from '@/lib/records/participant/list-participants.query';
import {
  addParticipantInput,
  correctParticipantInput,
  eraseParticipantInput,
} from '@/lib/records/participant/participant.input';
import { correctPractice } from '@/lib/records/practice/correct-practice.command';
import { getPractice } from '@/lib/records/practice/get-practice.query';
import { listPractices } from '@/lib/records/practice/list-practices.query';
import { correctPracticeInput, recordPracticeInput } from '@/lib/records/practice/practice.input';
import { recordPractice } from '@/lib/records/practice/record-practice.command';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { correctSale } from '@/lib/records/sale/correct-sale.command';
import { getSale } from '@/lib/records/sale/get-sale.query';
import { listSales } from '@/lib/records/sale/list-sales.query';
import { recordSale } from '@/lib/records/sale/record-sale.command';
import { correctSaleInput, recordSaleInput } from '@/lib/records/sale/sale.input';
import { changeMoney } from '@/lib/records/settings/change-money.command';
import { getMoney } from '@/lib/records/settings/get-money.query';
import { changeMoneyInput } from '@/lib/records/settings/money.input';
import { correctTraining } from '@/lib/records/training/correct-training.command';
import { getTraining } from '@/lib/records/training/get-training.query';
import { lastQuestions } from '@/lib/records/training/last-questions.query';
import { listTrainings } from '@/lib/records/training/list-trainings.query';
import { recordTraining } from '@/lib/records/training/record-training.command';
import { correctTrainingInput, recordTrainingInput } from '@/lib/records/training/training.input';
import { command, type OperationRow } from './operation-rows';
import { arrange, revisionOf, type World } from './world';

const reason = 'tried';
const sale = { soldOn: '2026-06-01', outlet: 'farm_gate', mass: 900, amount: '9.5' };
const practice = { practice: 'hygiene', since: '2026-06-01' };
const training = {
  heldOn: '2026-06-02',
  title: 'Clean hands',
  topic: 'hygiene',
  headCount: '9',
  questions: [{ wording: 'I can do it', scaleMost: '5', before: '2 3', after: '4 4' }],
};
const person = () => ({ name: `Person ${newId()}`, consents: 'counted', agreedOn: '2026-06-01' });

/** One of each at Mill Lane, made by the coordinator. */
const kept = {
  sale: async ({ people }: World) =>
    (await arrange(people.coordinator, recordSaleInput, recordSale, { siteId: people.millLane, ...sale })).id,
  practice: async ({ people }: World) =>
    (
      await arrange(people.coordinator, recordPracticeInput, recordPractice, {
        siteId: people.millLane,
        ...practice,
      })
    ).id,
  training: async ({ people }: World) =>
    (
      await arrange(people.coordinator, recordTrainingInput, recordTraining, {
        siteId: people.millLane,
        ...training,
      })
    ).id,
  participant: async ({ people }: World) =>
    (
      await arrange(people.coordinator, addParticipantInput, addParticipant, {
        siteId: people.millLane,
        ...person(),
      })
    ).id,
};

/** A query about a record of Mill Lane that is made beforehand. */
function about(
  file: string,
  kind: keyof typeof kept,
  seen: (context: ReadContext, id: string) => Promise<boolean>,
): OperationRow {
  return {
    file: `records/${file}.query`,
    may: 'yy---',
    prepare: kept[kind],
    attempt: (_world, actor, id) => readAs(actor, (context) => seen(context, String(id))),
  };
}

const all = programmeFilterInput.parse({});
const holds = (rows: readonly { id: string }[], id: string) => rows.some((row) => row.id === id);
const stale = async (world: World, table: string, id: string) => ({
  id,
  revision: await revisionOf(world, table, id),
  reason,
});

/** What a programme does at a site: its members and the coordinator write it down, nobody else sees it. */
export const programmeRows: readonly OperationRow[] = [
  command('records/sale/record-sale.command', 'yy---', recordSaleInput, recordSale, ({ people }) => ({
    id: newId(),
    siteId: people.millLane,
    ...sale,
  })),
  command('records/sale/correct-sale.command', 'yy---', correctSaleInput, correctSale, async (w) => ({
    ...sale,
    ...(await stale(w, 'sale', await kept.sale(w))),
    mass: 950,
  })),
  about('sale/list-sales', 'sale', async (c, id) => holds((await listSales(c, all)).sales, id)),
  about('sale/get-sale', 'sale', async (c, id) => (await getSale(c, id)) !== undefined),
  command(
    'records/practice/record-practice.command',
    'yy---',
    recordPracticeInput,
    recordPractice,
    ({ people }) => ({ id: newId(), siteId: people.millLane, ...practice }),
  ),
  command(
    'records/practice/correct-practice.command',
    'yy---',
    correctPracticeInput,
    correctPractice,
    async (w) => ({
      ...practice,
      ...(await stale(w, 'adopted_practice', await kept.practice(w))),
      growers: '3',
    }),
  ),
  about('practice/list-practices', 'practice', async (c, id) =>
    holds((await listPractices(c, all)).practices, id),
  ),
  about('practice/get-practice', 'practice', async (c, id) => (await getPractice(c, id)) !== undefined),
  command(
    'records/participant/add-participant.command',
    'yy---',
    addParticipantInput,
    addParticipant,
    ({ people }) => ({ id: newId(), siteId: people.millLane, ...person() }),
  ),
  command(
    'records/participant/correct-participant.command',
    'yy---',
    correctParticipantInput,
    correctParticipant,
    async (w) => ({
      ...person(),
      ...(await stale(w, 'participant', await kept.participant(w))),
      consents: ['counted', 'named'],
    }),
  ),
  command(
    'records/participant/erase-participant.command',
    'yy---',
    eraseParticipantInput,
    eraseParticipant,
    async (w) => stale(w, 'participant', await kept.participant(w)),
  ),
  about('participant/list-participants', 'participant', async (c, id) =>
    holds((await listParticipants(c, all)).participants, id),
  ),
  about('participant/list-participant-choices', 'participant', async (c, id) =>
    holds(await listParticipantChoices(c), id),
  ),
  about(
    'participant/get-participant',
    'participant',
    async (c, id) => (await getParticipant(c, id)) !== undefined,
  ),
  command(
    'records/training/record-training.command',
    'yy---',
    recordTrainingInput,
    recordTraining,
    ({ people }) => ({ id: newId(), siteId: people.millLane, ...training }),
  ),
  command(
    'records/training/correct-training.command',
    'yy---',
    correctTrainingInput,
    correctTraining,
    async (w) => ({
      ...training,
      ...(await stale(w, 'training', await kept.training(w))),
      headCount: '11',
    }),
  ),
  about('training/list-trainings', 'training', async (c, id) =>
    holds((await listTrainings(c, all)).trainings, id),
  ),
  about('training/get-training', 'training', async (c, id) => (await getTraining(c, id)) !== undefined),
  about('training/last-questions', 'training', async (c) => (await lastQuestions(c)).length > 0),
  command(
    'records/settings/change-money.command',
    'y---o',
    changeMoneyInput,
    changeMoney,
    async (w, actor) => ({
      revision: await readAs(actor, async ({ db }) => (await db.network.findFirst())?.revision ?? 1),
      reason,
      currency: 'USD',
      labourPerHour: w.people.coordinator.personId === actor.personId ? '12.50' : '11',
    }),
  ),
  {
    file: 'records/settings/get-money.query',
    may: 'yyy-o',
    prepare: async () => undefined,
    attempt: async (_world, actor) => (await readAs(actor, getMoney)) !== undefined,
  },
];
