import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { millimetresToInches } from '@/lib/growing/length-units';
import { type ReadySheet, readySheets } from '@/lib/labels/sheet/ready-sheets';
import { labelsPerPage } from '@/lib/labels/sheet/sheet-layout';
import type { OwnSheet } from '@/lib/records/label/list-label-sheets.query';
import type { ChoiceOption } from '../form/field-spec';
import { formatNumber } from '../format/number-text';

/** Names of label sheets by their sizes; in inches, too, for those who buy them so. */
export async function sheetNames(unit: MassUnit) {
  const t = await getTranslations('labels');
  const locale = await getLocale();
  const number = (value: number, places: number) =>
    formatNumber(value, locale, Number.isInteger(value) ? 0 : places);
  const size = (width: number, height: number) => `${number(width, 1)} × ${number(height, 1)} mm`;
  const inches = ({ paper, labelWidthMm, labelHeightMm }: ReadySheet) =>
    unit === 'lb' && paper === 'letter'
      ? ` (${[labelWidthMm, labelHeightMm].map((side) => number(millimetresToInches(side), 2)).join(' × ')} in)`
      : '';
  const ready = (sheet: ReadySheet) =>
    t(`sheet.${sheet.paper}`, {
      size: size(sheet.labelWidthMm, sheet.labelHeightMm) + inches(sheet),
      count: labelsPerPage(sheet),
    });
  const own = (sheet: OwnSheet) =>
    t('sheet.own', {
      name: sheet.name,
      size: size(sheet.labelWidthMm, sheet.labelHeightMm),
      count: labelsPerPage(sheet),
    });
  /** The network's own first, then the paper of the reader's region, then the others. */
  const options = (kept: readonly OwnSheet[], usual: ReadySheet['paper']): ChoiceOption[] => {
    const rank = ({ paper }: ReadySheet) => (paper === usual ? 0 : paper === 'roll' ? 1 : 2);
    const sorted = [...readySheets].sort((a, b) => rank(a) - rank(b));
    return [
      ...kept.map((sheet) => ({ value: sheet.id, label: own(sheet) })),
      ...sorted.map((sheet) => ({ value: sheet.key, label: ready(sheet) })),
    ];
  };
  return { size, options };
}
