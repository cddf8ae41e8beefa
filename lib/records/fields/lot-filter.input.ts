import { z } from 'zod';
import { optionalIdField } from './id-field';

export const lotsPerPage = 50;

/** The filter in the address of a list of lots: `of` is the material or the species. */
export const lotFilterInput = z.object({
  of: optionalIdField.catch(null),
  after: z.string().max(60).nullable().catch(null).default(null),
});

export type LotFilter = z.output<typeof lotFilterInput>;

/** Where a page of a list goes on: after this date and id. */
export function lotCursor(after: string | null): { date: string; id: string } | undefined {
  const [date = '', id = ''] = (after ?? '').split('_');
  return /^\d{4}-\d{2}-\d{2}$/.test(date) && /^[0-9a-f-]{36}$/.test(id) ? { date, id } : undefined;
}
