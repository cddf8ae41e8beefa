import { getTranslations } from 'next-intl/server';
import type { WorkbookWords } from '@/lib/report/workbook/report-workbook';

/** The words of a report's workbook that are not the report's own. `locale`: the reader's, BCP 47. */
export async function workbookWords(locale: string): Promise<WorkbookWords> {
  const t = await getTranslations({ locale, namespace: 'report' });
  return {
    asNumber: (header, unit) =>
      unit === undefined ? t('workbook.asNumber', { header }) : t('workbook.asNumberIn', { header, unit }),
    limit: (header, end) => t(end === 'low' ? 'workbook.low' : 'workbook.high', { header }),
    how: t('print.how'),
  };
}
