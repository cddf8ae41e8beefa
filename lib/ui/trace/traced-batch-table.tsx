import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Trace, TracedBatch, TracePart } from '@/lib/records/trace/trace-view';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { TraceWords } from './trace-words';

type Props = {
  readonly trace: Trace;
  readonly part: TracePart;
  readonly caption: string;
  readonly words: TraceWords;
};

/** Every batch that something went into: by what it came there, and what became of its units. */
export async function TracedBatchTable({ trace, part, caption, words }: Props) {
  const { t, date, name, totalMass } = words;
  const containers = await getTranslations('vocabulary.containerCount');
  const state = await getTranslations('batches.state');
  const reasons = await getTranslations('vocabulary.closeReason');
  const { links } = trace.on;
  const { batches, went } = part;
  const through = ({ id }: TracedBatch) => {
    const ways = links
      .filter(({ to }) => to.id === id)
      .flatMap(({ from, amount }) => {
        if (from.kind === 'weighing') return [];
        const source = trace.names.get(from.id);
        const values = { name: source === undefined ? '–' : name(source) };
        return from.kind === 'batch'
          ? t('through.batch', { ...values, units: t('units', { count: amount ?? 0 }) })
          : t(`through.${from.kind}`, values);
      });
    return [...new Set(ways)].map((way) => (
      <span key={way} className="block whitespace-nowrap">
        {way}
      </span>
    ));
  };
  const stateOf = ({ closedOn, closeReason, secondLife }: TracedBatch) =>
    [
      closedOn === null
        ? state('open')
        : `${state('closed')} ${date(closedOn)}${closeReason === null ? '' : `, ${reasons(closeReason)}`}`,
      ...(secondLife ? [state('secondLife')] : []),
    ].join(', ');
  return (
    <DataTable
      caption={caption}
      rows={batches}
      rowKey={({ id }) => id}
      columns={[
        {
          key: 'batch',
          header: t('columns.batch'),
          cell: (batch) => (
            <>
              <Link href={`/batches/${batch.id}` as Route}>{batch.code}</Link>
              <span className="cell-reason">{batch.siteName}</span>
            </>
          ),
        },
        {
          key: 'inoculatedOn',
          header: t('columns.inoculatedOn'),
          cell: (batch) => (
            <>
              {date(batch.inoculatedOn)}
              <span className="cell-reason">
                {containers(batch.containerKind, { count: batch.unitCount })}
              </span>
            </>
          ),
        },
        { key: 'live', header: t('columns.live'), numeric: true, cell: ({ live }) => live },
        {
          key: 'contaminated',
          header: t('columns.contaminated'),
          numeric: true,
          cell: ({ contaminated }) => contaminated,
        },
        { key: 'lost', header: t('columns.lost'), numeric: true, cell: ({ lostClean }) => lostClean },
        {
          key: 'picked',
          header: t('columns.picked'),
          numeric: true,
          cell: (batch) => totalMass(went.picked.get(batch.id) ?? 0),
        },
        { key: 'state', header: t('columns.state'), cell: stateOf },
        { key: 'through', header: t('columns.through'), cell: through },
      ]}
    />
  );
}
