import { getLocale, getTranslations } from 'next-intl/server';
import type { CostGroup, PerKilogram } from '@/lib/analysis/costs/cost-group';
import type { CostsAnswer } from '@/lib/analysis/costs/read-costs';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { currencyDigits } from '@/lib/growing/money';
import { perMassUnit } from '@/lib/growing/per-mass-unit';
import { formatInterval } from '../format/interval-text';
import { formatMoney } from '../format/money-text';
import { formatNumber } from '../format/number-text';

type Reader = { readonly language: Language; readonly massUnit: MassUnit };

/** Costs in the reader's words: money of a kilogram or a pound with its limits, names of methods and sites. */
export async function costsWords(answer: CostsAnswer, { language, massUnit }: Reader) {
  const t = await getTranslations('insight.costs');
  const locale = await getLocale();
  const money = (minor: number) =>
    formatMoney({ minor: Math.round(minor), currency: answer.currency }, locale);
  const digits = currencyDigits(answer.currency);
  const inMajor = (minor: number) => minor / 10 ** digits;
  /** What is for a kilogram, for one of the reader's unit of mass. */
  const perUnit = (perKg: number) => perMassUnit(perKg, massUnit);
  /** In a column whose header names the currency. */
  const amount = (minor: number) => formatNumber(inMajor(minor), locale, digits);
  const plural: Readonly<Record<string, string>> = {
    mixed: t('mixed'),
    'second-life': t('secondLife'),
    none: t('notRecorded'),
  };
  const method = (key: string) => plural[key] ?? answer.methodNames.get(key)?.[language] ?? '–';
  const site = (key: string) => answer.siteNames.get(key) ?? '–';
  const limits = ({ interval }: Extract<PerKilogram, { kind: 'figure' }>) =>
    interval.kind === 'interval'
      ? formatInterval(inMajor(perUnit(interval.low)), inMajor(perUnit(interval.high)), locale, digits)
      : t(interval.reason === 'not-enough-data' ? 'noLimits' : 'fewGroups');
  const missing = ({ missing: parts }: Pick<CostGroup, 'missing'>) => {
    const [first] = parts;
    return first
      ? t('missingPart', { part: t(`part.${first.part}`), batches: first.batches })
      : t('nothingMissing');
  };
  return {
    ...{ t, locale, massUnit, currency: answer.currency, money, amount, perUnit },
    ...{ method, site, limits, missing },
  };
}

export type CostsWords = Awaited<ReturnType<typeof costsWords>>;
