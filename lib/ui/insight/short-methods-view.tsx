import type { Route } from 'next';
import type { ShortMethod } from '@/lib/analysis/treatment-question/short-methods';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import { Caution } from '../page/caution';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';
import { shortSentence } from './short-sentence';

type Props = {
  readonly short: readonly ShortMethod[];
  readonly reader: { readonly role: string; readonly temperatureUnit: TemperatureUnit };
  readonly words: InsightWords;
};

/** Methods that a site's own runs mostly did not hold, before whatever else is advised. */
export function ShortMethodsView({ short, reader, words }: Props) {
  const { t } = words;
  if (short.length === 0) return null;
  return (
    <>
      <Caution
        title={t('short.title')}
        lines={short.map((one) => shortSentence(one, reader.temperatureUnit, words))}
      />
      {reader.role === 'coordinator' ? (
        <p className="no-print">
          <Link href={'/questions/treatments' as Route}>{t('short.runs')}</Link>
        </p>
      ) : null}
    </>
  );
}
