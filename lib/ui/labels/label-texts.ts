import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { LabelText } from '@/lib/labels/print/label-text';
import { labelAddress } from '@/lib/labels/sheet/label-address';
import type { LabelPrintView } from '@/lib/records/label/get-label-print.query';
import { formatDate } from '../format/date-text';

/** What each label says, in the reader's words; `site` is the address of this installation. */
export async function labelTexts(
  view: LabelPrintView,
  language: Language,
  site: string,
): Promise<LabelText[]> {
  const t = await getTranslations('labels.unit');
  const locale = await getLocale();
  return view.labels.flatMap(({ batch: at, unit }) => {
    const batch = view.batches[at];
    if (!batch) return [];
    const { species } = batch;
    return [
      {
        code: batch.code,
        ...(unit === undefined ? {} : { unit: t(batch.containerKind, { unit, count: batch.unitCount }) }),
        species: [species[language], species.scientific],
        site: [batch.site.name, batch.site.code],
        date: formatDate(batch.inoculatedOn, locale),
        address: labelAddress(site, batch.labelKey, unit),
      },
    ];
  });
}
