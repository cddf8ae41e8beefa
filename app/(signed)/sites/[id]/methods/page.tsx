import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getSiteMethods } from '@/lib/records/site-method/get-site-methods.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { siteMethodFields } from '@/lib/ui/sites/site-method-fields';
import { chooseSiteMethodsAction } from './actions';

export default async function SiteMethodsPage({ params }: PageProps<'/sites/[id]/methods'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const found = await readAs(actor, (context) => getSiteMethods(context, id));
  if (!found) return <NotThere />;
  const t = await getTranslations('sites.methods');
  return (
    <RecordForm
      action={chooseSiteMethodsAction}
      heading={t('heading', { site: found.site.name })}
      fields={await siteMethodFields(found.methods, actor.language)}
      values={{
        id: found.site.id,
        revision: String(found.revision),
        methodIds: found.methods.filter(({ available }) => available).map((method) => method.id),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
