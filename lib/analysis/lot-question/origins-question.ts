import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import type { ModelBatch } from '../adjusted/model-batch';
import { type AskedQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { type AllOrigins, answerOrigins, type LotMakers } from './answer-origins';

type Data = { readonly batches: readonly ModelBatch[]; readonly makers: LotMakers };

/** The answer as last worked out, and the next one on its way. */
export function askOrigins(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<AllOrigins>> {
  return fittedAnswer<Data, AllOrigins>(actor, scope.version, {
    name: 'lot-origins',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { batches, version } = await readQuestionData(context, scope, now);
      return { version, data: { batches, makers: await readMakers(context) } };
    },
    work: ({ batches, makers }, fit) => answerOrigins(batches, makers, fit),
  });
}

/** Who made each spawn lot and whom each material came from. The same name in other capitals is the same maker. */
export async function readMakers({ db }: ReadContext): Promise<LotMakers> {
  const spawn = await db.spawnLot.findMany({
    where: { maker: { not: null } },
    select: { id: true, maker: true },
    orderBy: { id: 'asc' },
  });
  const material = await db.substrateLot.findMany({
    where: { sourceName: { not: null } },
    select: { id: true, sourceName: true },
    orderBy: { id: 'asc' },
  });
  return {
    spawn: byFirstSpelling(spawn.map(({ id, maker }) => [id, maker])),
    material: byFirstSpelling(material.map(({ id, sourceName }) => [id, sourceName])),
  };
}

function byFirstSpelling(
  lots: readonly (readonly [id: string, name: string | null])[],
): Readonly<Record<string, string>> {
  const spelled = new Map<string, string>();
  return Object.fromEntries(
    lots.flatMap(([id, given]) => {
      const name = given?.trim().replace(/\s+/g, ' ') ?? '';
      if (name === '') return [];
      const key = name.toLowerCase();
      const known = spelled.get(key) ?? name;
      spelled.set(key, known);
      return [[id, known] as const];
    }),
  );
}

/** Codes of the network's material lots, by id; voided ones too, since old batches still name them. */
export async function readMaterialCodes({ db }: ReadContext): Promise<ReadonlyMap<string, string>> {
  const lots = await db.substrateLot.findMany({ select: { id: true, code: true } });
  return new Map(lots.map(({ id, code }) => [id, code]));
}
