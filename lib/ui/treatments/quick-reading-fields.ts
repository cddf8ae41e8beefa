import { getTranslations } from 'next-intl/server';
import type { MethodKind, TemperatureUnit } from '@/lib/database/generated/enums';
import type { FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';

/** The one number of a running treatment that is read again and again, as of now; the lime bath's pH comes first. */
export async function quickReadingFields(method: MethodKind, unit: TemperatureUnit): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const hint = t(method === 'hot_water_bath' || method === 'steam' ? 'hints.nowLoad' : 'hints.nowWater');
  const celsius: FieldSpec = {
    kind: 'temperature',
    name: 'celsius',
    label: sentenceCase(t('fields.celsius')),
    units: temperatureUnits(unit),
    ...(method === 'cold_lime_soak' ? { optional: true } : { hint }),
  };
  const hidden: FieldSpec[] = [
    { kind: 'hidden', name: 'treatmentRunId' },
    { kind: 'hidden', name: 'id' },
  ];
  if (method !== 'cold_lime_soak') return [celsius, ...hidden];
  return [{ kind: 'decimal', name: 'ph', label: sentenceCase(t('fields.ph')), hint }, celsius, ...hidden];
}
