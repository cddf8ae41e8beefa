import { getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatTotalMass } from '@/lib/growing/format-quantity';
import { massIn } from '@/lib/growing/per-mass-unit';
import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FigureView } from '../../figure/figure-view';
import { toFigureView } from '../../figure/to-figure-view';
import { formatDate } from '../../format/date-text';
import type { DynamicWords } from '../../i18n/dynamic-words';

/** For whom a report is written: words, writing of numbers, unit of mass, and the network's clock. */
export type ReportReader = {
  readonly language: 'en' | 'es';
  /** BCP 47, language with the country of the numbers. */
  readonly locale: string;
  readonly massUnit: MassUnit;
  readonly timeZone: string;
};

/** Everything that turns stored content into the words of one reader. */
export type ReportTongue = ReportReader & {
  readonly t: Awaited<ReturnType<typeof getTranslations<'report'>>>;
  readonly words: DynamicWords;
  readonly view: (figure: ShownFigure) => FigureView;
  readonly date: (day: string) => string;
  /** A mass in one unit, one decimal. */
  readonly mass: (grams: number) => string;
  /** The same as a number for a spreadsheet, and its unit. */
  readonly massValue: (grams: number) => number;
  readonly massUcum: string;
  readonly own: (names: { readonly en: string; readonly es: string }) => string;
};

export async function reportTongue(reader: ReportReader): Promise<ReportTongue> {
  const { locale, massUnit, timeZone, language } = reader;
  const figures = {
    t: await getTranslations({ locale, namespace: 'figures' }),
    common: await getTranslations({ locale, namespace: 'common.figure' }),
    ...{ locale, massUnit, timeZone },
  };
  return {
    ...reader,
    t: await getTranslations({ locale, namespace: 'report' }),
    words: (await getTranslations({ locale })) as unknown as DynamicWords,
    view: (figure) => toFigureView(figure, figures),
    date: (day) => formatDate(day, locale),
    mass: (grams) => formatTotalMass(grams, massUnit, locale),
    massValue: (grams) => massIn(massUnit, grams),
    massUcum: ucumCodes[massUnit === 'kg' ? 'kilogram' : 'pound'],
    own: (names) => names[language],
  };
}
