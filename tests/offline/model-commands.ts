import fc from 'fast-check';
import type { Client } from 'pg';
import type { Actor } from '@/lib/access/actor';
import { newId } from '@/lib/base/new-id';
import type { KeptEntry } from '@/lib/offline/outbox-store';
import { ask, fates, type ModelPhone } from './model-phone';

/** What the person means, apart from how phone and server bring it about. */
export type Meaning = Map<
  string,
  {
    /** Every mass this entry was ever given, grams, the last one meant. */
    readonly worded: number[];
    /** Masses that somebody else put in. */
    readonly others: number[];
    fate: 'meant' | 'removed-untried' | 'taken-back' | 'theirs-kept';
  }
>;

export type Real = {
  readonly phone: ModelPhone;
  readonly admin: Client;
  readonly owner: Actor;
  readonly colleague: Actor;
};

type Step = fc.AsyncCommand<Meaning, Real>;

function step(name: string, run: (meaning: Meaning, real: Real) => Promise<void>): Step {
  return { check: () => true, run, toString: () => name };
}

function pick(kept: readonly KeptEntry[], index: number): KeptEntry | undefined {
  return kept.length === 0 ? undefined : kept[index % kept.length];
}
const harvests = ({ phone }: Real) => phone.all().filter(({ entry }) => entry.kind === 'weighing');
const inConflict = ({ trouble, state }: KeptEntry) =>
  state === 'needs-you' && trouble?.answer?.kind === 'conflict' ? trouble.answer : undefined;

const write = (grams: number) =>
  step(`write ${grams}`, async (meaning, { phone }) => {
    meaning.set(await phone.write(grams), { worded: [grams], others: [], fate: 'meant' });
  });

const reword = (index: number, grams: number) =>
  step(`reword ${index} ${grams}`, async (meaning, real) => {
    const kept = pick(
      harvests(real).filter((one) => one.state !== 'sent' && !inConflict(one)),
      index,
    );
    const meant = kept && meaning.get(kept.entry.id);
    if (
      kept &&
      meant?.fate === 'meant' &&
      (await real.phone.reword(kept, real.phone.input(kept.entry.id, grams)))
    )
      meant.worded.push(grams);
  });

const takeBack = (index: number) =>
  step(`take back ${index}`, async (meaning, real) => {
    const kept = pick(
      harvests(real).filter((one) => !inConflict(one)),
      index,
    );
    const meant = kept && meaning.get(kept.entry.id);
    if (!kept || meant?.fate !== 'meant') return;
    if (kept.tries === 0 && (await real.phone.store().remove(kept.entry.id, kept.entry.key)))
      meant.fate = 'removed-untried';
    else {
      await real.phone.undo(kept.entry.id);
      meant.fate = 'taken-back';
    }
  });

const colleagueCorrects = (index: number, grams: number) =>
  step(`colleague corrects ${index} ${grams}`, async (meaning, { phone, admin, colleague }) => {
    const ids = [...meaning.keys()];
    const id = ids[index % Math.max(1, ids.length)];
    const { rows } = await admin.query('select revision from weighing where id = $1 and voided_at is null', [
      id ?? null,
    ]);
    if (id === undefined || rows.length === 0) return;
    const input = { ...phone.input(id, grams), id, revision: rows[0].revision, reason: 'Weighed again' };
    const base = {
      id: newId(),
      key: newId(),
      kind: 'weighing',
      confirmed: [],
      madeAt: new Date().toISOString(),
    } as const;
    const { personId, networkId } = colleague;
    const reply = await ask({ ...base, personId, networkId, input }, colleague);
    if (reply.kind === 'answered' && reply.status === 200) meaning.get(id)?.others.push(grams);
  });

const useMine = (index: number) =>
  step(`use mine ${index}`, async (_meaning, real) => {
    const kept = pick(harvests(real).filter(inConflict), index);
    const conflict = kept && inConflict(kept);
    if (kept && conflict)
      await real.phone.reword(kept, {
        ...kept.entry.input,
        revision: conflict.revision,
        reason: 'Mine is right',
      });
  });

const keepTheirs = (index: number) =>
  step(`keep theirs ${index}`, async (meaning, real) => {
    const kept = pick(harvests(real).filter(inConflict), index);
    const meant = kept && meaning.get(kept.entry.id);
    if (kept && meant && (await real.phone.store().remove(kept.entry.id, kept.entry.key)))
      meant.fate = 'theirs-kept';
  });

export const sendAgain = async ({ phone }: Real): Promise<void> => {
  for (const kept of phone.all())
    if (kept.state === 'needs-you' && kept.trouble?.answer === null)
      await phone.store().change(kept.entry.id, kept.entry.key, { state: 'waiting', notBefore: 0 });
};

const index = fc.nat(20);
const grams = fc.integer({ min: 1, max: 20 });
const luck = fc.array(fc.constantFrom(...fates), { maxLength: 4 });

/** Everything that can happen to a phone with an outbox. */
export const modelSteps: fc.Arbitrary<Step>[] = [
  grams.map(write),
  grams.map(write),
  fc.tuple(index, grams).map(([at, mass]) => reword(at, mass)),
  index.map(takeBack),
  fc.tuple(index, grams).map(([at, mass]) => colleagueCorrects(at, mass)),
  index.map(useMine),
  index.map(keepTheirs),
  fc.constant(step('send again what needs a person', (_meaning, real) => sendAgain(real))),
  fc.constant(step('no signal', async (_meaning, { phone }) => phone.signal(false))),
  fc.constant(step('signal', async (_meaning, { phone }) => phone.signal(true))),
  fc.constant(step('sign-in lapses', async (_meaning, { phone }) => phone.signIn(undefined))),
  fc.constant(
    step('somebody else signs in', async (_meaning, { phone, colleague }) => phone.signIn(colleague)),
  ),
  fc.constant(step('sign in', async (_meaning, { phone, owner }) => phone.signIn(owner))),
  fc.constant(step('wait a minute', async (_meaning, { phone }) => phone.pass(60_000))),
  fc.tuple(luck, fc.boolean()).map(([fate, eager]) =>
    step(`send ${fate.join(' ')}${eager ? ' eagerly' : ''}`, async (_meaning, { phone }) => {
      await phone.send(fate, eager);
    }),
  ),
  luck.map((fate) =>
    step(`switch off while sending ${fate.join(' ')}`, async (_meaning, { phone }) => {
      const dying = phone.send(fate, true);
      await new Promise((resolve) => setTimeout(resolve, 3));
      phone.restart();
      await dying;
    }),
  ),
];
