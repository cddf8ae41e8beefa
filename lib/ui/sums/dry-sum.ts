import { deriveBatch } from '@/lib/growing/derive-batch';
import { batchEntries } from './batch-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

/** The dry mass that the batch will be saved with, worked out as the records do, or that it is not known yet. */
export function drySum(input: SumInput): SumAnswer {
  const batch = batchEntries(input);
  const { words, reader } = input;
  if (batch === undefined || batch.components.length === 0) return { lines: [] };
  const { dryGrams, dryMassFrom, dryAssumed, moisturePercent, wetGrams } = deriveBatch(batch.facts);
  const write = sumFormat(reader);
  const unclear = unclearLines(batch.entries, words);
  if (dryGrams === null || dryMassFrom === 'none')
    return { lines: [{ key: 'dry', text: words.dryUnknown }, ...unclear] };
  const units = batch.facts.unitCount;
  const lines: SumLine[] = [
    {
      key: 'dry',
      text: fillWords(words.dryFrom[dryMassFrom], {
        dry: write.mass(dryGrams),
        wet: wetGrams === null ? '' : write.mass(wetGrams),
        percent: moisturePercent === null ? '' : write.percent(moisturePercent),
      }),
    },
    ...(dryAssumed ? [{ key: 'assumed', text: words.dryAssumed }] : []),
    ...(units > 1 && wetGrams !== null
      ? [{ key: 'perUnit', text: fillWords(words.perUnit, { mass: write.mass(wetGrams / units) }) }]
      : []),
  ];
  return { lines: [...lines, ...unclear] };
}
