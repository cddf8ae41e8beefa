import type { Route } from 'next';
import type { OriginQuestion } from '@/lib/analysis/lot-question/answer-origins';
import type { JudgedOrigin } from '@/lib/analysis/lot-question/judged-origin';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';

export type LotApart = { readonly id: string; readonly code: string };

type Props = {
  readonly of: OriginQuestion;
  readonly origins: readonly Pick<JudgedOrigin, 'origin'>[];
  readonly apartFrom: (origin: string) => readonly LotApart[];
  readonly words: Pick<InsightWords, 't'>;
};

const folders = {
  spawnMakers: '/spawn-lots',
  materialSources: '/substrate-lots',
  materialLots: '/substrate-lots',
} as const;

/** Of each maker or source the lots that it is judged without, since they are called out themselves, each by its own page. */
export function LotsToldApart({ of, origins, apartFrom, words: { t } }: Props) {
  const some = origins.flatMap(({ origin }) => apartFrom(origin).map((lot) => ({ origin, lot })));
  if (some.length === 0) return null;
  return (
    <ul>
      {some.map(({ origin, lot }) => (
        <li key={lot.id}>
          {t('origins.toldApart', { name: origin })}{' '}
          <Link href={`${folders[of]}/${lot.id}` as Route} className="whitespace-nowrap">
            {lot.code}
          </Link>
        </li>
      ))}
    </ul>
  );
}
