import type { Prisma } from '@/lib/database/generated/client';
import { asDate } from '../fields/stored-date';
import type { WeighingFilter } from './weighing-filter.input';

/** The weighings that a filter lets through; the same for the list and for what is saved from it. */
export function weighingWhere({ site, batch, from, to, voided }: WeighingFilter): Prisma.WeighingWhereInput {
  return {
    ...(voided === 'yes' ? {} : { voidedAt: null }),
    ...(site === null ? {} : { siteId: site }),
    ...(batch === null ? {} : { lines: { some: { batchId: batch, voidedAt: null } } }),
    weighedOn: {
      ...(from === null ? {} : { gte: asDate(from) }),
      ...(to === null ? {} : { lte: asDate(to) }),
    },
  };
}
