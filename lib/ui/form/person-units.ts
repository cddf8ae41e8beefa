import type { MassUnit, TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
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

/** Units of an area field; who weighs in pounds measures in feet. */
export function areaUnits(mass: MassUnit): ChoiceOption[] {
  const squareMetre = { value: 'm2', label: 'm²' };
  const squareFoot = { value: 'ft2', label: 'ft²' };
  return mass === 'kg' ? [squareMetre, squareFoot] : [squareFoot, squareMetre];
}

/** Units of a length field; who weighs in pounds measures in inches. */
export function lengthUnits(mass: MassUnit): ChoiceOption[] {
  const units = mass === 'kg' ? ['cm', 'mm', 'm', 'in'] : ['in', 'ft', 'cm', 'mm'];
  return units.map((unit) => ({ value: unit, label: unit }));
}
