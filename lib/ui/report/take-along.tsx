import { getLocale, getTranslations } from 'next-intl/server';

type Props = {
  /** The report's own address. */
  readonly base: string;
  /** The report's, where it is not the reader's own. */
  readonly locale?: string;
};

/** Where a report can be had as a file; plain links, since a file is no page. */
export async function TakeAlong({ base, locale }: Props) {
  const t = await getTranslations({ locale: locale ?? (await getLocale()), namespace: 'report' });
  return (
    <nav aria-label={t('takeHeading')} className="no-print">
      <ul className="chips plain-list">
        <li>
          <a href={`${base}/pdf`}>{t('takePdf')}</a>
        </li>
        <li>
          <a href={`${base}/xlsx`}>{t('takeWorkbook')}</a>
        </li>
        <li>
          <a href={`${base}/package`}>{t('takePackage')}</a>
        </li>
      </ul>
    </nav>
  );
}
