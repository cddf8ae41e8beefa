import { getTranslations } from 'next-intl/server';
import type { ReportPrint } from '@/lib/report/pdf/report-pdf';

type PrintWords = Pick<ReportPrint, 'howHeading' | 'pageOf'>;

/** The words of a printed report that are not the report's own. `locale`: the reader's, BCP 47. */
export async function printWords(locale: string): Promise<PrintWords> {
  const t = await getTranslations({ locale, namespace: 'report' });
  return {
    howHeading: t('print.how'),
    pageOf: (page, pages) => t('print.page', { page, pages }),
  };
}
