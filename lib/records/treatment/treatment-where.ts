import type { Prisma } from '@/lib/database/generated/client';
import type { TreatmentFilter } from './treatment-filter.input';

/** The runs that a filter lets through; the same for the list and for what is saved from it. */
export function treatmentWhere({ site, method, state }: TreatmentFilter): Prisma.TreatmentRunWhereInput {
  return {
    voidedAt: null,
    ...(site === null ? {} : { siteId: site }),
    ...(method === null ? {} : { methodId: method }),
    ...(state === null ? {} : { endedAt: state === 'running' ? null : { not: null } }),
  };
}
