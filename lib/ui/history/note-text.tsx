import type { Route } from 'next';
import Link from 'next/link';
import { getTranslations } from 'next-intl/server';
import type { NotedKind } from '@/lib/records/words/take-out-note.input';

type Props = {
  readonly kind: NotedKind;
  readonly id: string;
  readonly note: string;
  /** The site has left: nothing is corrected there any more, but a note can be taken out. */
  readonly left: boolean;
};

/** The note of a record; where it cannot be corrected any more, with the way to take it out. */
export async function NoteText({ kind, id, note, left }: Props) {
  const t = await getTranslations('common.takeOut');
  return (
    <>
      {note}
      {left ? (
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
