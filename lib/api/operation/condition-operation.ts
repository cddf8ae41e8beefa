import { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import { invalid, ok } from '@/lib/base/result';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addConditionsInput } from '@/lib/records/condition/condition.input';
import { apiBody } from '../body';
import { conditions } from '../resource/conditions';
import { readOne } from '../resource/resource';
import type { WriteOperation } from './operation';

/** What a sensor reads in a place at one moment: one to three values, each a record of its own. */
export const createConditions: WriteOperation = {
  name: 'createConditions',
  method: 'POST',
  path: '/conditions',
  tag: conditions.name,
  summary: 'Record what was read at a place',
  about: 'Temperature, humidity and carbon dioxide at one moment: one to three of them.',
  area: 'conditions',
  body: apiBody(addConditionsInput),
  ifMatch: false,
  status: 201,
  answer: z.object({ items: z.array(conditions.schema) }),
  write: async (context, { input, now }) => {
    const readAt = input.readAt ?? now.toISOString();
    const raw = { ...input, id: input.id ?? newId(), readAt };
    const parsed = parseInput(addConditionsInput, raw, readerLocale(context.actor));
    if (parsed.kind !== 'ok') return parsed;
    const { id } = parsed.value;
    // A sensor that sends one id for ever is told so, instead of losing all but its first reading.
    if (id !== null && (await readOne(context, conditions, id))) return invalid('id', 'already-there');
    const done = await addConditions(context, parsed.value);
    if (done.kind !== 'ok') return done;
    const made = await context.db.conditionReading.findMany({
      where: { placeId: done.value.placeId, readAt: new Date(String(readAt)), voidedAt: null },
      select: { id: true },
      orderBy: { id: 'asc' },
    });
    const items: unknown[] = [];
    for (const { id } of made) items.push((await readOne(context, conditions, id))?.body);
    return ok({ status: 201, body: { items } });
  },
};
