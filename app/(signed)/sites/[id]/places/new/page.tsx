import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { isId } from '@/lib/records/fields/id-field';
import { getSite } from '@/lib/records/site/get-site.query';
import { placeFields } from '@/lib/ui/conditions/place-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { addPlaceAction } from '../actions';

export default async function NewPlacePage({ params }: PageProps<'/sites/[id]/places/new'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const site = isId(id) ? await readAs(actor, (context) => getSite(context, id)) : undefined;
  if (!site || site.voided !== null) return <NotThere />;
  const t = await getTranslations('conditions');
  return (
    <RecordForm
      action={addPlaceAction}
      heading={t('addPlaceHeading', { site: site.name })}
      fields={await placeFields('add')}
      values={{ siteId: id, id: newId() }}
      submitLabel={t('submitAdd')}
      words={await loadFormWords()}
    />
  );
}
