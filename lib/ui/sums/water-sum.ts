import { wetBasisPercent } from '@/lib/growing/moisture-basis';
import { waterToAdd } from '@/lib/growing/water-to-add';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

/** Sentences about the water that brings a mass from one moisture to another, percent wet basis. */
export function waterLines(
  { words, reader }: Pick<SumInput, 'words' | 'reader'>,
  wetGrams: number,
  from: number,
  target: number,
): SumLine[] {
  const write = sumFormat(reader);
  const [now, wanted] = [wetBasisPercent(from), wetBasisPercent(target)];
  if (now.kind !== 'value' || wanted.kind !== 'value')
    return [{ key: 'moistureRange', text: words.moistureRange, tone: 'watch' }];
  const water = waterToAdd(wetGrams, now.value, wanted.value);
  if (water.kind === 'value')
    return [
      {
        key: 'waterNeeded',
        text: fillWords(words.waterNeeded, {
          mass: write.mass(wetGrams),
          from: write.percent(from),
          target: write.percent(target),
          // A kilogram of water is a litre.
          volume: write.volume(water.value.waterGrams / 1000),
          final: write.mass(water.value.finalGrams),
          dry: write.mass(water.value.dryGrams),
        }),
      },
    ];
  if (water.reason !== 'already-wetter') return [];
  const excess = Number(water.values.excessGrams);
  return [
    {
      key: 'alreadyWetter',
      text: fillWords(words.alreadyWetter, {
        from: write.percent(from),
        target: write.percent(target),
        mass: write.mass(excess),
      }),
      tone: 'watch',
    },
  ];
}

/** Dry mass of a material and the water that brings it to the wanted moisture. */
export function waterSum(input: SumInput): SumAnswer {
  const entries = readEntries(input);
  const mass = entries.mass('plan.wetMass');
  const from = entries.percent('plan.fromMoisture');
  const target = entries.percent('plan.targetMoisture');
  const lines =
    mass === null || from === null || target === null ? [] : waterLines(input, mass, from, target);
  const carry =
    mass === null
      ? undefined
      : {
          'components.0.mass': String(mass),
          'components.0.mass__unit': 'g',
          'components.0.massStage': 'before_treatment',
        };
  return { lines: [...lines, ...unclearLines(entries, input.words)], ...(carry ? { carry } : {}) };
}
