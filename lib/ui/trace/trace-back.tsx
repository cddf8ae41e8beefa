import type { TracedKind, TraceLink } from '@/lib/records/trace/trace-link';
import type { Trace, TraceName } from '@/lib/records/trace/trace-view';
import { DataTable } from '../table/data-table';
import type { TraceWords } from './trace-words';
import { TracedName } from './traced-name';

type Props = { readonly trace: Trace; readonly words: TraceWords };

const order: readonly TracedKind[] = ['batch', 'spawn-lot', 'substrate-lot', 'treatment', 'weighing'];

/** Where something came from: the answer in a sentence, then every step. */
export function TraceBack({ trace, words }: Props) {
  const { t, list } = words;
  const { links } = trace.back;
  const nameOf = (id: string) => trace.names.get(id);
  const steps = [...links].sort((a, b) => order.indexOf(a.from.kind) - order.indexOf(b.from.kind));
  const sources = (kind: TracedKind) =>
    [...new Set(steps.filter(({ from }) => from.kind === kind).map(({ from }) => from.id))].flatMap((id) => {
      const name = nameOf(id);
      return name === undefined ? [] : [described(name, words)];
    });
  const [batches, spawn, materials, runs] = (
    ['batch', 'spawn-lot', 'substrate-lot', 'treatment'] as const
  ).map(sources) as [string[], string[], string[], string[]];
  const ofWeighing = trace.start.kind === 'weighing';
  return (
    <section>
      <h2>{t('back.heading')}</h2>
      {links.length === 0 ? (
        <p className="answer-sentence">{t('back.none')}</p>
      ) : (
        <>
          <p className="answer-sentence">
            {[
              ...(batches.length === 0
                ? []
                : [t(ofWeighing ? 'back.batches' : 'back.earlier', { list: list(batches) })]),
              spawn.length === 0 ? t('back.noSpawn') : t('back.spawn', { list: list(spawn) }),
              ...(materials.length === 0 ? [] : [t('back.material', { list: list(materials) })]),
              ...(runs.length === 0 ? [] : [t('back.treatment', { list: list(runs) })]),
            ].join(' ')}
          </p>
          {ofWeighing && links.filter(({ to }) => to.id === trace.start.id).length > 1 ? (
            <p className="quiet">{t('back.several')}</p>
          ) : null}
          <DataTable
            caption={t('back.table')}
            rows={steps.map((link, row) => ({ ...link, row }))}
            rowKey={({ row }) => String(row)}
            groupOf={({ from }) => t(`back.group.${from.kind}`)}
            columns={[
              {
                key: 'what',
                header: t('columns.what'),
                cell: ({ from }: TraceLink) => <What name={nameOf(from.id)} words={words} />,
              },
              {
                key: 'into',
                header: t('columns.into'),
                cell: ({ to }: TraceLink) => <TracedName name={nameOf(to.id)} words={words} />,
              },
              { key: 'amount', header: t('columns.amount'), numeric: true, cell: words.amount },
            ]}
          />
        </>
      )}
    </section>
  );
}

/** The code with what it is, and whose. */
function described(name: TraceName, words: TraceWords): string {
  const more = [name.what?.[words.language], name.maker ?? undefined].filter((part) => part !== undefined);
  return more.length === 0 ? words.name(name) : `${words.name(name)} (${more.join(', ')})`;
}

function What({ name, words }: { readonly name: TraceName | undefined; readonly words: TraceWords }) {
  const more = [
    name?.what?.[words.language],
    name?.maker,
    name?.kind === 'weighing' || name?.visible === false ? undefined : name?.siteName,
    name?.on == null ? undefined : words.date(name.on),
  ].filter((part) => part != null);
  return (
    <>
      <TracedName name={name} words={words} />
      {more.length === 0 ? null : <span className="cell-reason">{more.join(', ')}</span>}
    </>
  );
}
