import type { Route } from 'next';
import type { LotWent } from '@/lib/records/trace/get-whereabouts.query';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import { Link } from '../page/link';
import { type TraceReader, traceWords } from './trace-words';
import { Whereabouts } from './whereabouts';

type Props = {
  readonly kind: TracedKind;
  readonly id: string;
  readonly went: LotWent;
  readonly reader: TraceReader;
};

/** On a lot's page: where it went itself, apart from it where spawn made from it went, and the whole trace. */
export async function LotWhereabouts({ kind, id, went: { own, made }, reader }: Props) {
  const words = await traceWords(reader);
  return (
    <section>
      <h2>{words.t('went.heading')}</h2>
      <Whereabouts went={own} words={words} />
      {made === null ? null : (
        <>
          <h3>{words.t('went.madeHeading')}</h3>
          <Whereabouts went={made} of="made" words={words} />
        </>
      )}
      <p>
        <Link href={`/trace/${kind}/${id}` as Route}>{words.t('lotLink')}</Link>
      </p>
    </section>
  );
}
