import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getPractice } from '@/lib/records/practice/get-practice.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { RecordLinks } from '@/lib/ui/page/record-links';

export default async function PracticePage({ params, searchParams }: PageProps<'/programme/practices/[id]'>) {
  const { id } = await params;
  const { saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const practice = isId(id) ? await readAs(actor, (context) => getPractice(context, id)) : undefined;
  if (!practice) return <NotThere />;
  const t = await getTranslations('programme.practices');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <>
      <Heading text={words(`practiceKind.${practice.practice}`)} />
      {saved === 'yes' ? <Notice>{(await getTranslations('programme'))('saved')}</Notice> : null}
      <DefinitionList
        items={[
          { label: t('columns.site'), value: practice.siteName },
          { label: t('columns.since'), value: formatDate(practice.since, locale) },
          {
            label: t('columns.until'),
            value: practice.until === null ? t('goesOn') : formatDate(practice.until, locale),
          },
          ...(practice.growers === null ? [] : [{ label: t('columns.growers'), value: practice.growers }]),
          ...(practice.description === null
            ? []
            : [{ label: t('columns.description'), value: practice.description }]),
        ]}
      />
      <RecordLinks
        path={`/programme/practices/${id}`}
        kind="practice"
        id={id}
        voided={practice.voided}
        mayChange={true}
      />
    </>
  );
}
