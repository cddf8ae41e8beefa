import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { DefinitionList } from '../page/definition-list';
import { Link } from '../page/link';
import type { FigureView } from './figure-view';

type Props = {
  readonly view: FigureView;
  readonly rows?: Route;
  /** Which figure, where several stand together. */
  readonly of?: string;
};

/** How a figure was worked out: sums, rows, what was left out and why, method with its source, data as of. */
export async function FigureHistory({ view, rows, of }: Props) {
  const t = await getTranslations('common.figure');
  const { history } = view;
  const leftOut =
    history.leftOut.length === 0 ? (
      t('nothingLeftOut')
    ) : (
      <ul>
        {history.leftOut.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    );
  const source = history.source === '' ? [] : [{ label: t('source'), value: history.source }];
  const basis = [history.parts, view.size.join(', ')].filter((text) => text !== '').join('; ');
  return (
    <details className="figure-history">
      <summary>{of === undefined ? t('howComputed') : t('howComputedOf', { of })}</summary>
      <DefinitionList
        items={[
          { label: t('basedOn'), value: basis },
          { label: t('leftOut'), value: leftOut },
          { label: t('method'), value: `${history.method}. ${history.clusteredBy}.` },
          ...source,
          { label: t('asOf'), value: history.asOf },
        ]}
      />
      {rows === undefined ? null : (
        <p>
          <Link href={rows}>{t('openRecords')}</Link>
        </p>
      )}
    </details>
  );
}
