import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getToken } from '@/lib/records/token/get-token.query';
import { withdrawFields } from '@/lib/ui/api/token-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { withdrawTokenAction } from '../../actions';

export default async function WithdrawTokenPage({ params }: PageProps<'/account/tokens/[id]/withdraw'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id } = await params;
  const token = isId(id) ? await readAs(actor, (context) => getToken(context, id, new Date())) : undefined;
  if (!token) return <NotThere />;
  const t = await getTranslations('api');
  const { name } = token;
  const back = <Link href={'/account/tokens' as Route}>{t('tokens.back')}</Link>;
  if (token.state !== 'works') {
    return (
      <>
        <Heading text={t('withdraw.heading', { name })} />
        <p>{t('withdraw.already')}</p>
        <p>{back}</p>
      </>
    );
  }
  return (
    <RecordForm
      action={withdrawTokenAction}
      heading={t('withdraw.heading', { name })}
      fields={await withdrawFields()}
      values={{ id, revision: String(token.revision) }}
      submitLabel={t('withdraw.submit')}
      words={await loadFormWords()}
      tone="bad"
      after={back}
    >
      <p>{t('withdraw.explain')}</p>
    </RecordForm>
  );
}
