import type { Trace } from '@/lib/records/trace/trace-view';
import { LossReasons } from './loss-reasons';
import type { TraceWords } from './trace-words';
import { TracedBatchTable } from './traced-batch-table';
import { TracedHarvests } from './traced-harvests';
import { TracedName } from './traced-name';
import { Whereabouts } from './whereabouts';

type Props = { readonly trace: Trace; readonly words: TraceWords };

/** Where something went: batches, losses, second lives, and the harvests with their destinations. */
export async function TraceOn({ trace, words }: Props) {
  const { t } = words;
  const { went } = trace;
  const reached = [...new Set(trace.on.links.map(({ to }) => to.id))].flatMap((id) => {
    const name = trace.names.get(id);
    return name === undefined ? [] : [name];
  });
  const lots = reached.filter(({ kind }) => kind === 'spawn-lot');
  const hidden = reached.filter(({ visible }) => !visible);
  const named = (heading: string, names: typeof reached) =>
    names.length === 0 ? null : (
      <>
        <h3>{heading}</h3>
        <ul>
          {names.map((name) => (
            <li key={name.id}>
              <TracedName name={name} words={words} />
            </li>
          ))}
        </ul>
      </>
    );
  return (
    <section>
      <h2>{t('went.heading')}</h2>
      <Whereabouts went={went} ofBatch={trace.start.kind === 'batch'} words={words} />
      {went.all.batches === 0 ? null : (
        <>
          <p className="quiet">{t('went.secondLives')}</p>
          <LossReasons went={went} words={words} />
        </>
      )}
      {named(t('went.madeFrom'), lots)}
      {went.all.batches === 0 ? null : <TracedBatchTable trace={trace} went={went} words={words} />}
      {named(t('went.outOfSight'), hidden)}
      {trace.on.harvests.length === 0 ? null : <TracedHarvests trace={trace} went={went} words={words} />}
    </section>
  );
}
