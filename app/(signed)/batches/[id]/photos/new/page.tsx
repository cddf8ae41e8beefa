import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { isId } from '@/lib/records/fields/id-field';
import { mostPhotoMegabytes, mostPhotosPerBatch } from '@/lib/records/photo/photo.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { dynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { NotThere } from '@/lib/ui/page/not-there';
import { PhotoForm } from '@/lib/ui/photo/photo-form';
import { readBatch } from '../../read-batch';

/** A picture of a batch, or of a finding of it. Posts to a handler of its own: a picture is larger than a form. */
export default async function NewPhotoPage({ params, searchParams }: PageProps<'/batches/[id]/photos/new'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { batch } = read.page;
  const { problem, finding } = await searchParams;
  const t = await getTranslations('photos');
  const words = await dynamicWords();
  const findingId = typeof finding === 'string' && isId(finding) ? finding : '';
  const code = typeof problem === 'string' && words.has(`errors.${problem}`) ? problem : undefined;
  const most = code === 'too-many-photos' ? mostPhotosPerBatch : mostPhotoMegabytes;
  return (
    <PhotoForm
      heading={t(findingId === '' ? 'new' : 'newOfFinding', { code: batch.code })}
      batchId={batch.id}
      findingId={findingId}
      photoId={newId()}
      words={{
        file: sentenceCase(t('fields.file')),
        caption: sentenceCase(t('fields.caption')),
        hint: t('hint', { max: mostPhotoMegabytes }),
        people: t('people'),
        working: t('working'),
        submit: t('submit'),
        form: await loadFormWords(),
      }}
      {...(code === undefined ? {} : { error: words(`errors.${code}`, { max: most, label: '' }) })}
    />
  );
}
