import { getLocale, getTranslations } from 'next-intl/server';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import { formatNumber } from '../format/number-text';
import { asInside } from '../insight/next-names';
import { notHeldAgainst } from './comparison-sentence';
import type { PlaceNames } from './place-names';

/** Which methods the range leaves out, with what was counted of each and why; '' where it has them all. */
export async function notHeldSentence(
  methods: readonly ComparedRow[],
  { methodName }: Pick<PlaceNames, 'methodName'>,
): Promise<string> {
  const t = await getTranslations('comparison.notHeld');
  const locale = await getLocale();
  const parts = notHeldAgainst(methods).map(({ method, percent, behind, ...counted }, at) =>
    t('part', {
      method: at === 0 ? methodName(method) : asInside(methodName(method)),
      value: formatNumber(percent, locale, 1),
      behind: t(behind.of, { count: behind.count }),
      ...counted,
    }),
  );
  if (parts.length === 0) return '';
  const list = new Intl.ListFormat(locale, { type: 'conjunction' }).format(parts);
  return t('sentence', { list, count: parts.length });
}
