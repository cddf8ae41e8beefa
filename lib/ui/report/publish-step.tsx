import { getTranslations } from 'next-intl/server';
import type { PersonView } from '@/lib/records/person/list-people.query';
import { Notice } from '../page/notice';
import { reportReaders } from './report-readers';

type Props = {
  readonly id: string;
  readonly people: readonly PersonView[];
  readonly language: string;
  readonly action: (data: FormData) => Promise<void>;
};

/** What publishing does, before it is done: who reads the report at once, and that it cannot be taken back. */
export async function PublishStep({ id, people, language, action }: Props) {
  const t = await getTranslations('report');
  const { coordinators, members, funders } = reportReaders(people);
  const names = new Intl.ListFormat(language, { type: 'conjunction' }).format(funders);
  return (
    <>
      <p className="lead">{t('publishReaders', { coordinators, members })}</p>
      <p>
        {funders.length === 0 ? t('publishNoFunder') : t('publishFunders', { names, count: funders.length })}
      </p>
      <Notice tone="watch">
        <p>{t('publishFinal')}</p>
      </Notice>
      <p>{t('publishBefore')}</p>
      <form action={action}>
        <input type="hidden" name="id" value={id} />
        <button type="submit" className="button button-action">
          {t('publishNow')}
        </button>
      </form>
    </>
  );
}
