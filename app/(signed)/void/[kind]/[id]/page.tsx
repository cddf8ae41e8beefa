import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { parseInput } from '@/lib/access/parse-input';
import { readAs } from '@/lib/access/scoped-db';
import { getVoidable } from '@/lib/records/void/get-voidable.query';
import { voidableInput } from '@/lib/records/void/void-record.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { ownPath } from '@/lib/ui/history/own-path';
import { voidFields } from '@/lib/ui/history/void-fields';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { voidRecordAction } from './actions';

export default async function VoidPage({ params, searchParams }: PageProps<'/void/[kind]/[id]'>) {
  const actor = await requireActor('coordinator', 'member');
  const wanted = parseInput(voidableInput, await params);
  if (wanted.kind !== 'ok') return <NotThere />;
  const { kind, id } = wanted.value;
  const found = await readAs(actor, (context) => getVoidable(context, kind, id));
  if (!found) return <NotThere />;
  const back = ownPath((await searchParams).back);
  const t = await getTranslations('common');
  const record = t(`voidableKind.${kind}`);
  return (
    <RecordForm
      action={voidRecordAction}
      heading={t('voiding.heading', { record })}
      fields={await voidFields()}
      values={{ kind, id, revision: String(found.revision), back }}
      submitLabel={t('voiding.submit')}
      words={await loadFormWords()}
      tone="bad"
      after={<Link href={back as Route}>{t('cancel')}</Link>}
    >
      <p>{t('voiding.explain')}</p>
    </RecordForm>
  );
}
