import { bathHeat, type FuelKind, fuels } from '@/lib/growing/bath-heat';
import { numberFieldText } from '@/lib/growing/format-quantity';
import { wetBasisPercent } from '@/lib/growing/moisture-basis';
import { formatMassWithTwin } from '../format/mass-text';
import { withUnit } from '../format/twin-text';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

export const fuelKinds = [
  'propane',
  'natural_gas',
  'firewood',
  'electricity',
] as const satisfies readonly FuelKind[];
/** Air-dry straw, percent wet basis; common practice, said beside the figure. */
const usualLoadMoisture = 12;

/** Heat and fuel to bring water and load from the start to the target temperature. */
export function heatSum(input: SumInput): SumAnswer {
  const { words, reader } = input;
  const entries = readEntries(input);
  const write = sumFormat(reader);
  const water = entries.volume('water');
  const load = entries.mass('load');
  const typedMoisture = entries.percent('plan.loadMoisture');
  const start = entries.celsius('plan.startCelsius');
  const target = entries.celsius('plan.targetCelsius');
  const fuel = fuelKinds.find((kind) => kind === entries.text('plan.fuel')) ?? 'propane';
  const lines: SumLine[] = [];
  const moisture = wetBasisPercent(typedMoisture ?? usualLoadMoisture);
  if (water !== null && start !== null && target !== null && moisture.kind === 'value') {
    const heat = bathHeat({
      waterLitres: water,
      loadWetGrams: load ?? 0,
      loadMoisture: moisture.value,
      startCelsius: start,
      targetCelsius: target,
      fuel,
    });
    if (heat.kind !== 'value') lines.push({ key: 'heatRange', text: words.heatRange, tone: 'watch' });
    else {
      const { heatKilowattHours, fuelKilowattHours, fuelAmount, fuelUnit, efficiency } = heat.value;
      const amounts = {
        kg: formatMassWithTwin(Math.round(fuelAmount * 1000), reader.massUnit, reader.locale),
        m3: withUnit(write.number(fuelAmount), 'm³'),
        kWh: write.kilowattHours(fuelKilowattHours),
      };
      lines.push(
        {
          key: 'heat',
          text: fillWords(words.heat, {
            heat: write.kilowattHours(heatKilowattHours),
            volume: write.volume(water),
            load: load === null ? words.noLoad : write.mass(load),
            start: write.temperature(start),
            target: write.temperature(target),
          }),
        },
        {
          key: 'fuel',
          text: fillWords(words.fuel, {
            fuel: words.fuels[fuel],
            amount: amounts[fuelUnit],
            efficiency: write.percent(efficiency * 100),
            perUnit: withUnit(
              write.number(fuels[fuel].kilowattHoursPerUnit),
              `kWh/${fuelUnit === 'm3' ? 'm³' : fuelUnit}`,
            ),
          }),
        },
      );
      if (load !== null && typedMoisture === null)
        lines.push({
          key: 'loadAssumed',
          text: fillWords(words.loadAssumed, { percent: write.percent(usualLoadMoisture) }),
        });
    }
  }
  const carry =
    water === null
      ? undefined
      : {
          methodKind: 'hot_water_bath',
          water: numberFieldText(water, reader.locale, 3),
          water__unit: 'L',
          ...(load === null ? {} : { load: String(Math.round(load)), load__unit: 'g' }),
        };
  return { lines: [...lines, ...unclearLines(entries, words)], ...(carry ? { carry } : {}) };
}
