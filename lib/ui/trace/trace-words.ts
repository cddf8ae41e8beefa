import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { formatMass, formatTotalMass } from '@/lib/growing/format-quantity';
import type { TracedKind, TraceLink } from '@/lib/records/trace/trace-link';
import type { TraceName } from '@/lib/records/trace/trace-view';
import { formatDate } from '../format/date-text';

export type TraceReader = { readonly language: Language; readonly massUnit: MassUnit };

const folders: Readonly<Record<TracedKind, string>> = {
  'spawn-lot': '/spawn-lots',
  'substrate-lot': '/substrate-lots',
  treatment: '/treatments',
  batch: '/batches',
  weighing: '/weighings',
};

/** The page of something in a trace. */
export const tracedPath = ({ kind, id }: Pick<TraceName, 'kind' | 'id'>): Route =>
  `${folders[kind]}/${id}` as Route;

/** What traces are written with, in the reader's language and unit. */
export async function traceWords({ language, massUnit }: TraceReader) {
  const t = await getTranslations('trace');
  const locale = await getLocale();
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const date = (day: string) => formatDate(day, locale);
  const mass = (grams: number) => formatMass(grams, massUnit, locale);
  return {
    t,
    locale,
    language,
    date,
    mass,
    totalMass: (grams: number) => formatTotalMass(grams, massUnit, locale),
    list: (parts: Iterable<string>) => list.format(parts),
    /** The code, or for a weighing its day and site. */
    name: ({ code, on, siteName }: TraceName): string =>
      code ?? t('harvestName', { date: on === null ? '–' : date(on), site: siteName ?? '–' }),
    /** Grams, or units of a batch that went on. */
    amount: ({ from, to, amount }: TraceLink): string => {
      if (amount === null) return '–';
      return from.kind === 'batch' && to.kind === 'batch' ? t('units', { count: amount }) : mass(amount);
    },
  };
}

export type TraceWords = Awaited<ReturnType<typeof traceWords>>;
