import type { Route } from 'next';
import Link from 'next/link';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import type { Trace } from '@/lib/records/trace/trace-view';
import { whereItWent } from '@/lib/records/trace/where-it-went';
import { type TraceReader, traceWords } from './trace-words';
import { Whereabouts } from './whereabouts';

type Props = {
  readonly kind: TracedKind;
  readonly trace: Trace | undefined;
  readonly reader: TraceReader;
};

/** On a lot's page: where it went, and the whole trace. */
export async function LotWhereabouts({ kind, trace, reader }: Props) {
  if (trace === undefined) return null;
  const words = await traceWords(reader);
  return (
    <section>
      <h2>{words.t('went.heading')}</h2>
      <Whereabouts went={whereItWent(trace.on)} words={words} />
      <p>
        <Link href={`/trace/${kind}/${trace.start.id}` as Route}>{words.t('lotLink')}</Link>
      </p>
    </section>
  );
}
