import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { mailSetting } from '@/lib/base/mail-setting';
import { getDigestChoice } from '@/lib/records/signal/get-digest-choice.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { Link } from '@/lib/ui/page/link';
import { Notice } from '@/lib/ui/page/notice';
import { chooseDigestAction } from './actions';

export default async function DigestPage({ searchParams }: PageProps<'/account/digest'>) {
  const actor = await requireActor('coordinator');
  const { saved } = await searchParams;
  const wanted = await readAs(actor, getDigestChoice);
  const t = await getTranslations('watch');
  const off = typeof mailSetting(process.env) !== 'object';
  return (
    <>
      {saved === 'choice' ? <Notice>{t('digest.kept')}</Notice> : null}
      <RecordForm
        action={chooseDigestAction}
        heading={t('digest.heading')}
        fields={[
          { kind: 'prose', name: 'what', text: t('digest.explain', { network: actor.networkName }) },
          ...(off ? [{ kind: 'prose' as const, name: 'off', text: t('digest.off') }] : []),
          {
            kind: 'radio',
            name: 'wanted',
            label: sentenceCase(t('fields.wanted')),
            options: (['yes', 'no'] as const).map((value) => ({ value, label: t(`digest.${value}`) })),
          },
        ]}
        values={wanted === undefined ? {} : { wanted: wanted ? 'yes' : 'no' }}
        submitLabel={t('digest.save')}
        words={await loadFormWords()}
        after={<Link href="/account">{(await getTranslations('access.account'))('heading')}</Link>}
      />
    </>
  );
}
