import type { TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption } from './field-spec';

/** Units of a temperature field, the person's own first. */
export function temperatureUnits(own: TemperatureUnit): ChoiceOption[] {
  const celsius = { value: 'celsius', label: '°C' };
  const fahrenheit = { value: 'fahrenheit', label: '°F' };
  return own === 'celsius' ? [celsius, fahrenheit] : [fahrenheit, celsius];
}

/** Units of a volume field, the person's own first. */
export function volumeUnits(own: VolumeUnit): ChoiceOption[] {
  const litre = { value: 'L', label: 'L' };
  const gallon = { value: 'gal', label: 'US gal' };
  return own === 'litre' ? [litre, gallon] : [gallon, litre];
}
