import type { getTranslations } from 'next-intl/server';

/** The two catalogues that a figure is told in, and how the reader writes numbers and dates. */
export type FigureWords = {
  readonly t: Awaited<ReturnType<typeof getTranslations<'figures'>>>;
  readonly common: Awaited<ReturnType<typeof getTranslations<'common.figure'>>>;
  readonly locale: string;
  /** The network's zone, for "data as of". */
  readonly timeZone: string;
};
