import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getSite } from '@/lib/records/site/get-site.query';
import { leftFigures } from '@/lib/records/site/leave-site.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { wordField } from '@/lib/ui/leaving/word-field';
import { NotThere } from '@/lib/ui/page/not-there';
import { leaveSiteAction } from './actions';

export default async function LeaveSitePage({ params }: PageProps<'/sites/[id]/leave'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const site = isId(id) ? await readAs(actor, (context) => getSite(context, id)) : undefined;
  if (!site || site.voided !== null || site.left !== null) return <NotThere />;
  const t = await getTranslations('leaving');
  const { name } = site;
  return (
    <RecordForm
      action={leaveSiteAction}
      heading={t('site.heading', { site: name })}
      fields={[
        { kind: 'hidden', name: 'id' },
        {
          kind: 'radio',
          name: 'figures',
          label: sentenceCase(t('fields.figures')),
          options: leftFigures.map((value) => ({
            value,
            label: t(`figures.${value}`),
            hint: t(`figures.${value}Hint`),
          })),
        },
        {
          kind: 'text',
          name: 'reason',
          label: sentenceCase(t('fields.reason')),
          hint: t('hints.siteReason'),
        },
        await wordField(),
      ]}
      values={{ id }}
      submitLabel={t('site.submit', { site: name })}
      tone="bad"
      words={await loadFormWords()}
    >
      <p className="lead">{t('site.lead', { site: name, network: actor.networkName })}</p>
      <h2>{t('archive.heading')}</h2>
      <p>{t('archive.site')}</p>
      <p>
        <a className="button button-plain" href={`/sites/${id}/leave/archive`} download>
          {t('archive.save')}
        </a>
      </p>
      <h2>{t('site.thenHeading')}</h2>
      <p>{t('site.then')}</p>
      <h2>{t('stays.heading')}</h2>
      <p>{t('site.stays')}</p>
      <p>{t('law')}</p>
    </RecordForm>
  );
}
