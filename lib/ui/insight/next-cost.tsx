import type { MethodCost, PerTenKilograms } from '@/lib/analysis/next-question/method-cost';
import type { VolumeUnit } from '@/lib/database/generated/enums';
import { formatMoney } from '../format/money-text';
import { formatVolume } from '../format/volume-text';
import { formatWorkMinutes } from '../format/work-text';
import type { InsightWords } from './insight-words';

type Props = {
  readonly cost: MethodCost;
  readonly volumeUnit: VolumeUnit;
  /** How many of the reader's unit of mass make one kilogram, the amounts being for 10 kg. */
  readonly perKilogram: number;
  readonly words: InsightWords;
};

/** Work, fuel, water and cost for 10 of dry material, as far as they are written down; what is missing is named. */
export function NextCost({ cost, volumeUnit, perKilogram, words }: Props) {
  const { t, locale, language } = words;
  if (cost.of === 'nobody') return <p className="quiet">{t('next.cost.nobody')}</p>;
  const money = (minor: number) => formatMoney({ minor: Math.round(minor), currency: cost.currency }, locale);
  const line = (amount: PerTenKilograms, write: (value: number) => string) =>
    amount === null
      ? []
      : [t('next.cost.batches', { what: write(amount.amount / perKilogram), count: amount.batches })];
  const lines = [
    ...line(cost.labourMinutes, (minutes) =>
      t('next.cost.labour', { minutes: formatWorkMinutes(minutes, locale) }),
    ),
    ...line(cost.fuelMinor, (minor) => t('next.cost.fuel', { amount: money(minor) })),
    ...line(cost.waterMinor, (minor) => t('next.cost.water', { amount: money(minor) })),
    ...line(cost.waterLitres, (litres) =>
      t('next.cost.litres', { volume: formatVolume(litres, volumeUnit, locale) }),
    ),
    ...line(cost.fullMinor, (minor) => t('next.cost.full', { amount: money(minor) })),
  ];
  const missing = [
    ...(cost.labourMinutes === null ? [t('next.cost.part.labour')] : []),
    ...(cost.fuelMinor === null ? [t('next.cost.part.fuel')] : []),
    ...(cost.waterMinor === null && cost.waterLitres === null ? [t('next.cost.part.water')] : []),
    ...(cost.fullMinor === null ? [t('next.cost.part.full')] : []),
  ];
  const join = new Intl.ListFormat(language, { type: 'conjunction' });
  return (
    <>
      <ul>
        {lines.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p className="quiet">
        {missing.length === 0 ? '' : `${t('next.cost.missing', { parts: join.format(missing) })} `}
        {t(`next.cost.${cost.of}`)}
      </p>
    </>
  );
}
