import 'server-only';
import { z } from 'zod';
import type { Person } from './actor';

/** A person as the look-up functions of the database tell them. */
export const personRow = z.object({
  person_id: z.string(),
  person_name: z.string().nullable(),
  language: z.enum(['en', 'es']),
  region: z.string(),
  mass_unit: z.enum(['kg', 'lb']),
  temperature_unit: z.enum(['celsius', 'fahrenheit']),
  volume_unit: z.enum(['litre', 'gallon']),
});

/** The person of a row; the session that stands behind them, if any, is said by whoever looked it up. */
export function personOf(row: z.output<typeof personRow>, sessionId: string): Person {
  return {
    sessionId,
    personId: row.person_id,
    name: row.person_name ?? '',
    language: row.language,
    region: row.region,
    massUnit: row.mass_unit,
    temperatureUnit: row.temperature_unit,
    volumeUnit: row.volume_unit,
  };
}
