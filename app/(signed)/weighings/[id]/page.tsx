import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getWeighing } from '@/lib/records/weighing/get-weighing.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { TraceLink } from '@/lib/ui/trace/trace-link';
import { loadWeighingWords } from '@/lib/ui/weighings/load-weighing-words';

export default async function WeighingPage({ params, searchParams }: PageProps<'/weighings/[id]'>) {
  const { id } = await params;
  const { saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const weighing = isId(id) ? await readAs(actor, (context) => getWeighing(context, id)) : undefined;
  if (!weighing) return <NotThere />;
  const t = await getTranslations('weighings');
  const common = await getTranslations('common');
  const words = await loadWeighingWords(actor.massUnit);
  const batchId = weighing.lines[0]?.batchId;
  return (
    <>
      <Heading
        text={t('headingOne', {
          mass: words.mass(weighing.freshGrams),
          date: words.date(weighing.weighedOn),
        })}
      />
      {saved === 'yes' ? <Notice>{t('saved', { mass: words.massTwin(weighing.freshGrams) })}</Notice> : null}
      {weighing.voided === null ? null : (
        <Notice tone="watch">{t('voided', { reason: weighing.voided.reason })}</Notice>
      )}
      {saved === 'yes' && batchId ? (
        <p className="chips">
          <ButtonLink href={`/weighings/new?batch=${batchId}` as Route}>{t('again')}</ButtonLink>{' '}
          <ButtonLink href={`/batches/${batchId}` as Route} plain>
            {t('toBatch')}
          </ButtonLink>
        </p>
      ) : null}
      <DefinitionList items={words.facts(weighing)} />
      <h2>{t('batchLines')}</h2>
      <ul>
        {weighing.lines.map((line) => (
          <li key={line.batchId}>
            <Link href={`/batches/${line.batchId}` as Route}>{line.batchCode}</Link>
            {`: ${words.line(line)}`}
          </li>
        ))}
      </ul>
      <TraceLink kind="weighing" id={id} />
      {weighing.voided === null ? (
        <p className="record-links">
          <Link href={`/weighings/${id}/correct`}>{common('correct')}</Link>{' '}
          <Link href={`/void/weighing/${id}?back=/weighings/${id}`}>{common('void')}</Link>{' '}
          <Link href={`/history/${id}`}>{common('history.link')}</Link>
        </p>
      ) : (
        <p className="record-links">
          <Link href={`/history/${id}`}>{common('history.link')}</Link>
        </p>
      )}
    </>
  );
}
