import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { ButtonLink } from '../page/button-link';

type Props = {
  readonly page: BatchPage;
  /** Posts "looked at all, none contaminated" for today. */
  readonly lookAction: (data: FormData) => Promise<void>;
  readonly lookId: string;
};

/** One clear next step, and whatever else can have happened as quieter buttons. */
export async function BatchSteps({ page, lookAction, lookId }: Props) {
  const t = await getTranslations('batches');
  const { batch, next, today } = page;
  const isBed = batch.containerKind === 'bed';
  const to = (path: string) => `/batches/${batch.id}/${path}` as Route;
  const repeat = { href: `/batches/new?repeat=${batch.id}` as Route, text: t('repeat.this') };
  const labels = { href: `/labels?batch=${batch.id}` as Route, text: t('do.labels') };
  const links = {
    weigh: { href: `/weighings/new?batch=${batch.id}` as Route, text: t('do.weigh') },
    check: { href: to('checks/new'), text: t('do.check') },
    close: { href: to('close'), text: t('do.close') },
  } as const;
  const main = next === 'weigh' || next === 'check' || next === 'close' ? links[next] : undefined;
  const others = [
    ...Object.values(links).filter(({ href }) => href !== main?.href),
    { href: to('losses/new'), text: t(isBed ? 'do.lossBed' : 'do.loss') },
    { href: to('looks/new'), text: t('do.lookOther') },
    ...(batch.containerKind === 'bed' ? [{ href: to('layers/new'), text: t('do.layers') }] : []),
    { href: to('second-life'), text: t('do.secondLife') },
    ...(batch.secondLife ? [] : [repeat]),
    labels,
  ];
  if (batch.closedOn !== null)
    return (
      <section className="no-print">
        <p>{t('next.none')}</p>
        <p className="chips">
          <ButtonLink href={to('second-life')} plain>
            {t('do.secondLife')}
          </ButtonLink>
          <ButtonLink href={to('reopen')} plain>
            {t('do.reopen')}
          </ButtonLink>
          {batch.secondLife ? null : (
            <ButtonLink href={repeat.href} plain>
              {repeat.text}
            </ButtonLink>
          )}
        </p>
      </section>
    );
  return (
    <section className="no-print">
      <p>{t(isBed && next === 'look' ? 'next.lookBed' : `next.${next}`)}</p>
      <div className="chips">
        {main === undefined ? null : <ButtonLink href={main.href}>{main.text}</ButtonLink>}
        <form action={lookAction}>
          <input type="hidden" name="id" value={lookId} />
          <input type="hidden" name="batchId" value={batch.id} />
          <input type="hidden" name="lookedOn" value={today} />
          <button type="submit" className={`button ${main === undefined ? 'button-action' : 'button-plain'}`}>
            {t(isBed ? 'do.lookNoneBed' : 'do.lookNone')}
          </button>
        </form>
        <ButtonLink href={to('findings/new')} plain>
          {t('do.finding')}
        </ButtonLink>
      </div>
      <details>
        <summary>{t('page.more')}</summary>
        <p className="chips">
          {others.map(({ href, text }) => (
            <ButtonLink key={href} href={href} plain>
              {text}
            </ButtonLink>
          ))}
        </p>
      </details>
    </section>
  );
}
