import type { Trace, TraceName, TracePart } from '@/lib/records/trace/trace-view';
import { LossReasons } from './loss-reasons';
import type { TraceWords } from './trace-words';
import { TracedBatchTable } from './traced-batch-table';
import { TracedHarvests } from './traced-harvests';
import { TracedName } from './traced-name';
import { Whereabouts } from './whereabouts';

type Props = { readonly trace: Trace; readonly words: TraceWords };

/** Where something went itself: batches, losses, second lives, and harvests; then the same of spawn made from it. */
export async function TraceOn({ trace, words }: Props) {
  const { t } = words;
  const { own, made } = trace;
  const reached = [...new Set(trace.on.links.map(({ to }) => to.id))].flatMap((id) => {
    const name = trace.names.get(id);
    return name === undefined ? [] : [name];
  });
  const lots = reached.filter(({ kind }) => kind === 'spawn-lot');
  const hidden = reached.filter(({ visible }) => !visible);
  return (
    <>
      <section>
        <h2>{t('went.heading')}</h2>
        <Whereabouts went={own.went} of={trace.start.kind === 'batch' ? 'batch' : 'lot'} words={words} />
        <PartOn trace={trace} part={own} of="own" words={words} />
      </section>
      {made === null ? null : (
        <section>
          <h2>{t('went.madeHeading')}</h2>
          <Names names={lots} words={words} />
          <Whereabouts went={made.went} of="made" words={words} />
          <PartOn trace={trace} part={made} of="made" words={words} />
        </section>
      )}
      {hidden.length === 0 ? null : (
        <section>
          <h2>{t('went.outOfSight')}</h2>
          <Names names={hidden} words={words} />
        </section>
      )}
    </>
  );
}

type PartProps = Props & { readonly part: TracePart; readonly of: 'own' | 'made' };

async function PartOn({ trace, part, of, words }: PartProps) {
  const { t } = words;
  if (part.batches.length === 0) return null;
  const made = of === 'made';
  return (
    <>
      {made ? null : <p className="quiet">{t('went.secondLives')}</p>}
      <LossReasons went={part.went} words={words} />
      <TracedBatchTable
        trace={trace}
        part={part}
        caption={t(made ? 'went.madeBatches' : 'went.batches')}
        words={words}
      />
      {part.harvests.length === 0 ? null : (
        <TracedHarvests
          trace={trace}
          part={part}
          caption={t(made ? 'went.madeHarvests' : 'went.harvests')}
          words={words}
        />
      )}
    </>
  );
}

function Names({ names, words }: { readonly names: readonly TraceName[]; readonly words: TraceWords }) {
  return (
    <ul>
      {names.map((name) => (
        <li key={name.id}>
          <TracedName name={name} words={words} />
        </li>
      ))}
    </ul>
  );
}
