import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { IntakeView, NeedyRow } from '@/lib/intake/table/view-file';
import { Link } from '../page/link';
import { Pager } from '../page/pager';
import { DataTable } from '../table/data-table';
import { columnName } from './column-name';
import { problemSentences } from './problem-lines';

type Props = {
  readonly file: IntakeView;
  readonly rows: readonly NeedyRow[];
  /** How many come before the first one shown. */
  readonly before: number;
};

const cellLength = 40;

/** Rows that need a person: what is wrong, the way to mend it, and the cells as they are. */
export async function NeedyRows({ file, rows, before }: Props) {
  const t = await getTranslations('import');
  const sentence = await problemSentences(file);
  const at = `/import/${file.id}`;
  const last = rows.at(-1)?.line;
  const unnamed = (letter: string) => t('understood.unnamed', { letter });
  const total = file.counts.needs;
  return (
    <section aria-labelledby="needs">
      <h2 id="needs">{t('needs.heading')}</h2>
      <p>
        <a href={`${at}/refused`}>{t('needs.download')}</a>
      </p>
      <DataTable
        caption={t('needs.caption', { from: before + 1, to: before + rows.length, count: total })}
        rows={rows}
        rowKey={({ line }) => String(line)}
        columns={[
          {
            key: 'line',
            header: t('needs.line'),
            cell: ({ line }) => <Link href={`${at}/rows/${line}` as Route}>{t('needs.mend', { line })}</Link>,
          },
          {
            key: 'why',
            header: t('needs.why'),
            cell: ({ problems }) => (
              <ul className="plain-list sm:min-w-56">
                {problems.map((problem) => (
                  <li key={`${problem.field} ${problem.code}`}>{sentence(problem)}</li>
                ))}
              </ul>
            ),
          },
          ...file.layout.columns.flatMap(({ field }, index) =>
            field === null
              ? []
              : [
                  {
                    key: String(index),
                    header: columnName(file.layout.headers, index, unnamed),
                    cell: ({ cells }: NeedyRow) => (cells[index] ?? '').slice(0, cellLength),
                  },
                ],
          ),
        ]}
      />
      <Pager
        newer={before === 0 ? undefined : (at as Route)}
        older={
          before + rows.length < total && last !== undefined
            ? (`${at}?after=${last}#needs` as Route)
            : undefined
        }
      />
    </section>
  );
}
