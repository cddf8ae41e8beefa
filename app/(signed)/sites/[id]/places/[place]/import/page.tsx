import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { newId } from '@/lib/base/new-id';
import { ImportForm } from '@/lib/ui/conditions/import-form';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadPlace } from '../load-place';
import { importConditionsAction } from './actions';

export default async function ImportConditionsPage({
  params,
}: PageProps<'/sites/[id]/places/[place]/import'>) {
  const actor = await requireActor('coordinator', 'member');
  const place = await loadPlace(actor, await params, new Date());
  if (!place) return <NotThere />;
  const t = await getTranslations('conditions.import');
  return (
    <ImportForm
      action={importConditionsAction}
      id={newId()}
      placeId={place.id}
      path={`/sites/${place.site.id}/places/${place.id}/import`}
      words={{
        heading: t('heading', { name: place.name }),
        text: t('text'),
        textHint: t('textHint'),
        file: t('file'),
        look: t('look'),
        lookAgain: t('lookAgain'),
        save: t('save'),
        found: t('found'),
        written: t('written'),
        firstLines: t('firstLines'),
        problems: t('problems'),
        other: t('other'),
      }}
      formWords={await loadFormWords()}
    />
  );
}
