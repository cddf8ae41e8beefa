import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asDate } from '../fields/stored-date';
import type { addSubstrateLotInput } from './substrate-lot.input';

type Fields = Omit<z.output<typeof addSubstrateLotInput>, 'id' | 'code'>;

/** The columns of a lot. An assumed moisture takes the material's default and is marked as such for ever. */
export async function prepareSubstrateLot({ db, actor, now }: WriteContext, input: Fields) {
  const material = await db.material.findFirst({ where: { id: input.materialId, voidedAt: null } });
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
