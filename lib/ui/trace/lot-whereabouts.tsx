import type { Route } from 'next';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import type { WhereItWent } from '@/lib/records/trace/where-it-went';
import { Link } from '../page/link';
import { type TraceReader, traceWords } from './trace-words';
import { Whereabouts } from './whereabouts';

type Props = {
  readonly kind: TracedKind;
  readonly id: string;
  readonly went: WhereItWent;
  readonly reader: TraceReader;
};

/** On a lot's page: where it went, and the whole trace. */
export async function LotWhereabouts({ kind, id, went, reader }: Props) {
  const words = await traceWords(reader);
  return (
    <section>
      <h2>{words.t('went.heading')}</h2>
      <Whereabouts went={went} words={words} />
      <p>
        <Link href={`/trace/${kind}/${id}` as Route}>{words.t('lotLink')}</Link>
      </p>
    </section>
  );
}
