import { bedLayerAmounts, usualBedLayers } from '@/lib/growing/bed-layers';
import { numberFieldText } from '@/lib/growing/format-quantity';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

export const bedBottoms = ['wood_chips', 'sawdust', 'cardboard'] as const;
export const bedCovers = ['straw', 'wood_chips'] as const;

/** The layers of a bed from the ground up, as loose volumes and spawn for its area. Common practice. */
export function bedSum(input: SumInput): SumAnswer {
  const { words, reader } = input;
  const entries = readEntries(input);
  const write = sumFormat(reader);
  const length = entries.millimetres('plan.bedLength');
  const width = entries.millimetres('plan.bedWidth');
  const bySides = length === null || width === null ? null : (length / 1000) * (width / 1000);
  const area = entries.squareMetres('bedArea') ?? bySides;
  const bottom = bedBottoms.find((one) => one === entries.text('plan.bedBottom')) ?? 'wood_chips';
  const cover = bedCovers.find((one) => one === entries.text('plan.bedCover')) ?? 'straw';
  const amounts = area === null ? null : bedLayerAmounts(area, usualBedLayers(bottom, cover));
  if (area === null || amounts === null || amounts.kind !== 'value')
    return { lines: unclearLines(entries, words) };
  const spawn = amounts.value.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  const layers = amounts.value.map(({ material, litres, grams }, index): SumLine => {
    const amount =
      grams !== null ? write.mass(grams) : litres === null ? words.aFewSheets : write.volume(litres);
    const values = { number: index + 1, material: words.layers[material], amount };
    return { key: `layer${index}`, text: fillWords(words.layer, values) };
  });
  return {
    lines: [
      {
        key: 'bed',
        text: fillWords(words.bed, {
          area: write.area(area),
          spawn: write.mass(spawn),
        }),
      },
      ...layers,
      ...unclearLines(entries, words),
    ],
    carry: {
      container: 'bed',
      bedArea: numberFieldText(area, reader.locale, 4),
      bedArea__unit: 'm2',
      'spawn.0.mass': String(Math.round(spawn)),
      'spawn.0.mass__unit': 'g',
    },
  };
}
