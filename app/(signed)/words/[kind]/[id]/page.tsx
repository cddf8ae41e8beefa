import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { parseInput } from '@/lib/access/parse-input';
import { readAs } from '@/lib/access/scoped-db';
import { getNote } from '@/lib/records/words/get-note.query';
import { type NotedKind, notedInput } from '@/lib/records/words/take-out-note.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { voidFields } from '@/lib/ui/history/void-fields';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { takeOutNoteAction } from './actions';

/** Where the record is read: a voided run has its history alone. */
function pathOf(kind: NotedKind, voided: boolean): string {
  if (kind === 'batch') return '/batches';
  return voided ? '/history' : '/treatments';
}

export default async function TakeOutNotePage({ params }: PageProps<'/words/[kind]/[id]'>) {
  const actor = await requireActor('coordinator', 'member');
  const wanted = parseInput(notedInput, await params);
  if (wanted.kind !== 'ok') return <NotThere />;
  const { kind, id } = wanted.value;
  const found = await readAs(actor, (context) => getNote(context, kind, id));
  if (!found) return <NotThere />;
  const back = `${pathOf(kind, found.voided)}/${id}`;
  const t = await getTranslations('common');
  return (
    <RecordForm
      action={takeOutNoteAction}
      heading={t('takeOut.heading', { code: found.code })}
      fields={await voidFields(t('takeOut.reasonHint'))}
      values={{ kind, id, revision: String(found.revision), back }}
      submitLabel={t('takeOut.submit')}
      words={await loadFormWords()}
      tone="bad"
      after={<Link href={back as Route}>{t('cancel')}</Link>}
    >
      <blockquote className="my-6 text-lg">{found.note}</blockquote>
      <p>{t('takeOut.explain')}</p>
    </RecordForm>
  );
}
