import 'server-only';
import type { z } from 'zod';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { Material } from '@/lib/database/generated/client';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asDate } from '../fields/stored-date';
import type { addSubstrateLotInput } from './substrate-lot.input';

type Fields = Omit<z.output<typeof addSubstrateLotInput>, 'id' | 'code'>;

/** The material of each lot by its id, as far as the actor may see it and it is not voided. */
export async function materialsOf({ db }: ReadContext, inputs: readonly Fields[]) {
  const ids = [...new Set(inputs.map(({ materialId }) => materialId))];
  const rows = await db.material.findMany({ where: { id: { in: ids }, voidedAt: null } });
  return new Map(rows.map((row) => [row.id, row]));
}

export async function prepareSubstrateLot(context: WriteContext, input: Fields) {
  return judgeSubstrateLot(context, input, (await materialsOf(context, [input])).get(input.materialId));
}

/** The columns of a lot. An assumed moisture takes the material's default and is marked as such for ever. */
export function judgeSubstrateLot(
  { actor, now }: Pick<WriteContext, 'actor' | 'now'>,
  input: Fields,
  material: Material | undefined,
) {
  if (!material) return notFound;
  if (input.receivedOn > todayInZone(actor.networkTimeZone, now)) return invalid('receivedOn', 'future-date');
  const assumed = material.receivedMoisturePercent === null ? null : Number(material.receivedMoisturePercent);
  if (input.moistureSource === 'measured' && input.moisturePercent === null)
    return invalid('moisturePercent', 'missing');
  if (input.moistureSource === 'assumed' && input.moisturePercent === null && assumed === null) {
    return invalid('moistureSource', 'no-assumed-moisture');
  }
  const moisturePercent =
    input.moistureSource === 'none'
      ? null
      : (input.moisturePercent ?? (input.moistureSource === 'assumed' ? assumed : null));
  const columns = {
    materialId: input.materialId,
    sourceName: input.sourceName,
    receivedOn: asDate(input.receivedOn),
    receivedGrams: input.received,
    moistureSource: input.moistureSource,
    moisturePercent,
    cutLengthMm: input.cutLength,
    note: input.note,
  };
  const answer: Result<typeof columns> = ok(columns);
  return answer;
}
