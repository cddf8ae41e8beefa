import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Destination } from '@/lib/database/generated/enums';
import { destinations } from '@/lib/growing/vocabulary';
import type { Trace, TracedHarvest, TracePart } from '@/lib/records/trace/trace-view';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { TraceWords } from './trace-words';

type Props = {
  readonly trace: Trace;
  readonly part: TracePart;
  readonly caption: string;
  readonly words: TraceWords;
};

/** Where the mushrooms went, in all and crate by crate. */
export async function TracedHarvests({ trace, part, caption, words }: Props) {
  const { t, date, list, mass, totalMass } = words;
  const vocabulary = await getTranslations('vocabulary.destination');
  const { went } = part;
  const parts = (grams: (of: Destination) => number | undefined, notSaid: number) => [
    ...destinations.flatMap((destination) => {
      const own = grams(destination) ?? 0;
      return own === 0 ? [] : [`${vocabulary(destination)} ${totalMass(own)}`];
    }),
    ...(notSaid === 0 ? [] : [t('went.notSaid', { mass: totalMass(notSaid) })]),
  ];
  const whereOf = ({ destinations: to, notSaidGrams }: TracedHarvest) =>
    parts((destination) => to[destination], notSaidGrams).join(', ');
  return (
    <>
      <h3>{t('went.destinations')}</h3>
      <p>
        {t('went.destinationList', {
          list: list(parts((destination) => went.destinations.get(destination), went.notSaid)),
        })}
      </p>
      {went.mixedCrates === 0 ? null : (
        <p className="quiet">{t('went.mixed', { crates: went.mixedCrates })}</p>
      )}
      <DataTable
        caption={caption}
        rows={part.harvests}
        rowKey={({ id }) => id}
        columns={[
          {
            key: 'day',
            header: t('columns.day'),
            cell: ({ id, weighedOn, siteName }) => (
              <>
                <Link href={`/weighings/${id}` as Route}>{date(weighedOn)}</Link>
                <span className="cell-reason">{siteName}</span>
              </>
            ),
          },
          {
            key: 'batches',
            header: t('columns.batches'),
            cell: ({ batchIds }) =>
              list([...new Set(batchIds)].map((id) => trace.names.get(id)?.code ?? '–')),
          },
          {
            key: 'picked',
            header: t('columns.picked'),
            numeric: true,
            cell: ({ tracedGrams }) => mass(tracedGrams),
          },
          {
            key: 'crate',
            header: t('columns.crate'),
            numeric: true,
            cell: ({ freshGrams }) => mass(freshGrams),
          },
          { key: 'where', header: t('columns.where'), cell: whereOf },
        ]}
      />
    </>
  );
}
