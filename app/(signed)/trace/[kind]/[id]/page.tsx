import { requireActor } from '@/lib/access/current';
import { readSnapshot } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getTrace } from '@/lib/records/trace/get-trace.query';
import { tracedKinds } from '@/lib/records/trace/trace-link';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { TakenOut } from '@/lib/ui/trace/taken-out';
import { TraceBack } from '@/lib/ui/trace/trace-back';
import { TraceOn } from '@/lib/ui/trace/trace-on';
import { traceWords } from '@/lib/ui/trace/trace-words';
import { TracedName } from '@/lib/ui/trace/traced-name';

export default async function TracePage({ params }: PageProps<'/trace/[kind]/[id]'>) {
  const { kind: asked, id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const kind = tracedKinds.find((one) => one === asked);
  const trace =
    kind === undefined || !isId(id)
      ? undefined
      : await readSnapshot(actor, (context) => getTrace(context, kind, id));
  if (!trace) return <NotThere />;
  const words = await traceWords(actor);
  const { t, locale } = words;
  const { start } = trace;
  const root = start.kind === 'substrate-lot' || start.kind === 'treatment';
  return (
    <>
      <Heading text={t(`heading.${start.kind}`, { name: words.name(start) })} />
      {start.voided === null ? null : <Notice tone="watch">{t('voided', { reason: start.voided })}</Notice>}
      <p className="quiet">
        <TracedName name={start} words={words} />
        {start.what === null ? null : `, ${start.what[actor.language]}`}
        {start.maker === null ? null : `, ${start.maker}`}
        {'. '}
        {t('asOf', { when: formatInstant(new Date(), actor.networkTimeZone, locale) })}
        {actor.role === 'member' ? ` ${t('ownSites')}` : null}
      </p>
      {root || (start.kind === 'spawn-lot' && trace.back.links.length === 0) ? null : (
        <TraceBack trace={trace} words={words} />
      )}
      {start.kind === 'weighing' ? null : <TraceOn trace={trace} words={words} />}
      <TakenOut trace={trace} words={words} />
    </>
  );
}
