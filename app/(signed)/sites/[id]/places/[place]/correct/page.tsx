import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { placeFields } from '@/lib/ui/conditions/place-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctPlaceAction } from '../../actions';
import { loadPlace } from '../load-place';

export default async function CorrectPlacePage({ params }: PageProps<'/sites/[id]/places/[place]/correct'>) {
  const actor = await requireActor('coordinator', 'member');
  const place = await loadPlace(actor, await params, new Date());
  if (!place) return <NotThere />;
  const t = await getTranslations('conditions');
  const { id, name, note, revision } = place;
  return (
    <RecordForm
      action={correctPlaceAction}
      heading={t('correct', { name })}
      fields={await placeFields('correct')}
      values={{ id, revision: String(revision), name, note: note ?? '' }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
