/**
 * UCUM codes for the units in exports and labels of columns. Source: UCUM `ucum-essence.xml`; the codes for
 * compound units follow UCUM's grammar.
 */
export const ucumCodes = {
  gram: 'g',
  kilogram: 'kg',
  pound: '[lb_av]',
  ounce: '[oz_av]',
  millilitre: 'mL',
  litre: 'L',
  usGallon: '[gal_us]',
  usCup: '[cup_us]',
  millimetre: 'mm',
  centimetre: 'cm',
  metre: 'm',
  inch: '[in_i]',
  foot: '[ft_i]',
  squareMetre: 'm2',
  squareFoot: '[sft_i]',
  cubicMetre: 'm3',
  celsius: 'Cel',
  fahrenheit: '[degF]',
  percent: '%',
  ph: '[pH]',
  minute: 'min',
  hour: 'h',
  day: 'd',
  kilogramPerSquareMetre: 'kg/m2',
  gramPerKilogram: 'g/kg',
  percentPerDay: '%/d',
  gramPerYear: 'g/a',
  gramPerLitre: 'g/L',
  kilowattHour: 'kW.h',
  one: '1',
} as const;

export type UcumUnit = keyof typeof ucumCodes;
