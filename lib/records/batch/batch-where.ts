import type { Prisma } from '@/lib/database/generated/client';
import { parseBatchCode } from '@/lib/growing/batch-code';
import { asDate } from '../fields/stored-date';
import type { BatchFilter } from './batch-filter.input';

/** The batches that a filter lets through; the same for the list and for what is saved from it. */
export function batchWhere(filter: BatchFilter): Prisma.BatchWhereInput {
  const { site, species, container, method, state, from, to, code, voided } = filter;
  return {
    ...(voided === 'yes' ? {} : { voidedAt: null }),
    ...(site === null ? {} : { siteId: site }),
    ...(species === null ? {} : { speciesId: species }),
    ...(container === null ? {} : { containerKind: container }),
    ...(method === null ? {} : method === 'mixed' ? { mixedMethod: true } : { methodId: method }),
    ...(state === null ? {} : { closedOn: state === 'open' ? null : { not: null } }),
    ...(code === null ? {} : { code: { startsWith: parseBatchCode(code) ?? code.toUpperCase() } }),
    inoculatedOn: {
      ...(from === null ? {} : { gte: asDate(from) }),
      ...(to === null ? {} : { lte: asDate(to) }),
    },
  };
}
