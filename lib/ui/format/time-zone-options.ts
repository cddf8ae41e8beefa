import type { ChoiceOption } from '../form/field-spec';

/** Every time zone this machine knows, by its IANA name. */
export function timeZoneOptions(): ChoiceOption[] {
  return ['UTC', ...Intl.supportedValuesOf('timeZone')].map((zone) => ({
    value: zone,
    label: zone.replaceAll('_', ' '),
  }));
}
