import type { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';

/** The two catalogues that a figure is told in, and how the reader writes numbers and dates. */
export type FigureWords = {
  readonly t: Awaited<ReturnType<typeof getTranslations<'figures'>>>;
  readonly common: Awaited<ReturnType<typeof getTranslations<'common.figure'>>>;
  readonly locale: string;
  readonly massUnit: MassUnit;
  /** The network's zone, for "data as of". */
  readonly timeZone: string;
};
