import { spawnNeeded } from '@/lib/growing/spawn-rate';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

/** Spawn as percent of the wet substrate where none is typed: common practice, 5 % (ADJAPONG15 used 5, ARGAW23 6). */
export const usualSpawnPercent = 5;

/** Spawn for a number of units at a rate on the wet substrate. */
export function spawnSum(input: SumInput): SumAnswer {
  const { words, reader } = input;
  const entries = readEntries(input);
  const write = sumFormat(reader);
  const units = entries.count('unitCount');
  const perUnit = entries.mass('plan.wetPerUnit');
  const typedRate = entries.percent('plan.spawnPercent');
  const left = entries.mass('plan.spawnLeft');
  const rate = typedRate ?? usualSpawnPercent;
  const lines: SumLine[] = [];
  const needed = units === null || perUnit === null ? null : spawnNeeded(units, perUnit, rate, left);
  if (units !== null && perUnit !== null && needed?.kind === 'value') {
    const { spawnGrams, shortfallGrams } = needed.value;
    lines.push({
      key: 'spawnNeeded',
      text: fillWords(words.spawnNeeded, {
        mass: write.mass(spawnGrams),
        wet: write.mass(units * perUnit),
        percent: write.percent(rate),
      }),
    });
    if (typedRate === null) lines.push({ key: 'spawnUsual', text: words.spawnUsual });
    if (left !== null && shortfallGrams !== null)
      lines.push(
        shortfallGrams > 0
          ? {
              key: 'spawnShort',
              text: fillWords(words.spawnShort, { mass: write.mass(shortfallGrams) }),
              tone: 'watch',
            }
          : {
              key: 'spawnEnough',
              text: fillWords(words.spawnEnough, { mass: write.mass(left - spawnGrams) }),
            },
      );
  }
  const carry =
    units === null || needed?.kind !== 'value'
      ? undefined
      : {
          unitCount: String(units),
          'spawn.0.mass': String(Math.round(needed.value.spawnGrams)),
          'spawn.0.mass__unit': 'g',
        };
  return { lines: [...lines, ...unclearLines(entries, words)], ...(carry ? { carry } : {}) };
}
