import { boxLitres, bucketLitres, cylinderLitres, layFlatBagLitres } from '@/lib/growing/container-volume';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput } from './sum-input';
import { unclearLines } from './unclear-lines';

export const containerShapes = ['box', 'bucket', 'cylinder', 'flat_bag'] as const;
export type ContainerShape = (typeof containerShapes)[number];

type Measure =
  `plan.${'length' | 'width' | 'height' | 'topDiameter' | 'bottomDiameter' | 'diameter' | 'flatWidth'}`;

/** The measures that a shape asks for, as field names. */
export const measuresOf: Readonly<Record<ContainerShape, readonly Measure[]>> = {
  box: ['plan.length', 'plan.width', 'plan.height'],
  bucket: ['plan.topDiameter', 'plan.bottomDiameter', 'plan.height'],
  cylinder: ['plan.diameter', 'plan.height'],
  flat_bag: ['plan.flatWidth', 'plan.height'],
};

function litresOf(shape: ContainerShape, [a = 0, b = 0, c = 0]: readonly number[]) {
  switch (shape) {
    case 'box':
      return boxLitres(a, b, c);
    case 'bucket':
      return bucketLitres(a, b, c);
    case 'cylinder':
      return cylinderLitres(a, b);
    case 'flat_bag':
      return layFlatBagLitres(a, b);
  }
}

/** Volume of one container from its inside measures, and of several. */
export function volumeSum(input: SumInput): SumAnswer {
  const { words, reader } = input;
  const entries = readEntries(input);
  const write = sumFormat(reader);
  const shape = containerShapes.find((one) => one === entries.text('shape')) ?? 'box';
  const measures = measuresOf[shape].map((name) => entries.millimetres(name));
  const known = measures.filter((one) => one !== null);
  const units = entries.count('unitCount') ?? 1;
  const litres = known.length === measures.length ? litresOf(shape, known) : null;
  const lines =
    litres === null
      ? []
      : litres.kind !== 'value'
        ? [{ key: 'volumeRange', text: words.volumeRange, tone: 'watch' as const }]
        : [
            {
              key: 'volume',
              text:
                units === 1
                  ? fillWords(words.volumeOne, { volume: write.volume(litres.value) })
                  : fillWords(words.volumeSeveral, {
                      volume: write.volume(litres.value),
                      units,
                      total: write.volume(litres.value * units),
                    }),
            },
          ];
  return { lines: [...lines, ...unclearLines(entries, words)] };
}
