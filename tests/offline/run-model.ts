import fc from 'fast-check';
import type { Client } from 'pg';
import type { Actor } from '@/lib/access/actor';
import { type Meaning, modelSteps, type Real, sendAgain } from './model-commands';
import { modelPhone } from './model-phone';

type Row = { id: string; note: string | null; grams: number; voided: boolean };

/** Sends everything under good conditions until nothing moves any more. */
async function heal(real: Real): Promise<void> {
  const { phone, owner } = real;
  phone.signal(true);
  phone.signIn(owner);
  for (let rounds = 0; rounds < 6; rounds += 1) {
    await sendAgain(real);
    phone.pass(60 * 60_000);
    const { sent } = await phone.send([], true);
    if (sent === 0 && rounds > 1) return;
  }
}

/** Whether the database holds what the person meant: throws with the first thing that it does not. */
async function compare(meaning: Meaning, { phone, admin }: Real, batchId: string): Promise<void> {
  const { rows } = await admin.query<Row>(
    `select w.id::text, w.note, w.fresh_grams as grams, w.voided_at is not null as voided from weighing w
     where exists (select from weighing_line l where l.weighing_id = w.id and l.batch_id = $1)`,
    [batchId],
  );
  const wrong = (what: string, about: unknown) => new Error(`${what}: ${JSON.stringify(about)}`);
  for (const row of rows) if (!meaning.has(row.note ?? '')) throw wrong('invented', row);
  for (const [id, { worded, others, fate }] of meaning) {
    const records = rows.filter(({ note }) => note === id);
    const kept = phone.all().find(({ entry }) => entry.id === id);
    const undo = phone.all().find(({ entry }) => entry.kind === 'undo' && entry.input.entryId === id);
    const about = { id, worded, others, fate, records, kept, undo };
    if (records.length > 1) throw wrong('doubled', about);
    const [record] = records;
    if (fate === 'removed-untried') {
      if (record) throw wrong('sent though taken out', about);
      continue;
    }
    if (!record) throw wrong('lost', about);
    if (![...worded, ...others].includes(record.grams)) throw wrong('another mass than anybody wrote', about);
    const conflict = kept?.trouble?.answer?.kind === 'conflict';
    if (fate === 'meant') {
      if (record.voided) throw wrong('taken back by nobody', about);
      if (kept?.state !== 'sent' && !conflict) throw wrong('neither sent nor asked about', about);
      if (!conflict && others.length === 0 && record.grams !== worded.at(-1))
        throw wrong('an earlier wording', about);
    }
    if (fate === 'taken-back' && !record.voided) {
      const told = undo?.state === 'needs-you' && undo.trouble?.answer !== null;
      if (!told && !conflict) throw wrong('still counted', about);
    }
  }
}

export type ModelWorld = {
  readonly admin: Client;
  /** Whose phones these are, one after the other: each may send only so much a second. */
  readonly owners: readonly Actor[];
  readonly colleague: Actor;
  readonly anotherBatch: () => Promise<string>;
};

/**
 * Random sequences of what can happen to a phone, each before a batch of its own. Undefined when all went well, else
 * what went wrong with the seed, path and replayPath that repeat it.
 */
export async function runModel(
  world: ModelWorld,
  settings: fc.Parameters<[Iterable<fc.AsyncCommand<Meaning, Real>>]>,
): Promise<string | undefined> {
  const commands = fc.commands(modelSteps, { maxCommands: 60, size: 'max' });
  let runs = 0;
  const property = fc.asyncProperty(commands, async (steps) => {
    const batchId = await world.anotherBatch();
    const { admin, owners, colleague } = world;
    const owner = owners[runs++ % owners.length];
    if (!owner) throw new Error('a phone needs its person');
    const real: Real = { admin, owner, colleague, phone: modelPhone(owner, batchId) };
    const meaning: Meaning = new Map();
    await fc.asyncModelRun(() => ({ model: meaning, real }), steps);
    await heal(real);
    await compare(meaning, real, batchId);
  });
  const result = await fc.check(property, settings);
  const report = await fc.asyncDefaultReportMessage(result);
  return report === undefined ? undefined : `${report}\n${String(result.errorInstance)}`;
}
