import { getTranslations } from 'next-intl/server';
import type { WhereItWent } from '@/lib/records/trace/where-it-went';
import type { TraceWords } from './trace-words';

type Props = { readonly went: WhereItWent; readonly words: TraceWords };

/** Why units were lost: signs of contamination, and other causes, with how many units. */
export async function LossReasons({ went, words }: Props) {
  const { t, list } = words;
  const vocabulary = await getTranslations('vocabulary');
  const lower = (text: string) => text.toLocaleLowerCase(words.locale);
  // What took most first.
  const most = <K,>(counts: Iterable<readonly [K, number]>) => [...counts].sort(([, a], [, b]) => b - a);
  const signs = most(went.signs).map(
    ([sign, units]) => `${lower(vocabulary(`contaminationSign.${sign}`))} (${units})`,
  );
  const causes = most(went.causes).map(
    ([cause, units]) => `${lower(vocabulary(`lossCause.${cause}`))} (${units})`,
  );
  return (
    <>
      <h3>{t('went.lost')}</h3>
      {signs.length + causes.length === 0 ? <p>{t('went.noneLost')}</p> : null}
      {signs.length === 0 ? null : <p>{t('went.contaminated', { list: list(signs) })}</p>}
      {causes.length === 0 ? null : <p>{t('went.otherwise', { list: list(causes) })}</p>}
    </>
  );
}
