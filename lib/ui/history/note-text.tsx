import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { NotedKind } from '@/lib/records/words/take-out-note.input';
import { Link } from '../page/link';

type Props = {
  readonly kind: NotedKind;
  readonly id: string;
  readonly note: string;
  /** Its site has left or it is voided: nothing is corrected any more, but the note can be taken out. */
  readonly fixed: boolean;
};

/** The note of a record; where it cannot be corrected any more, with the way to take it out. */
export async function NoteText({ kind, id, note, fixed }: Props) {
  const t = await getTranslations('common.takeOut');
  return (
    <>
      {note}
      {fixed ? (
        <>
          {' '}
          <Link className="no-print" href={`/words/${kind}/${id}` as Route}>
            {t('submit')}
          </Link>
        </>
      ) : null}
    </>
  );
}
