import { numberFieldText } from '@/lib/growing/format-quantity';
import { limeDose, limeForBath } from '@/lib/growing/lime-dose';
import { limeSolubility } from '@/lib/growing/lime-solubility';
import { limeWindowDefault } from '@/lib/growing/method-defaults';
import { questionPh } from '@/lib/growing/question-ph';
import { readEntries } from './read-entries';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';
import { unclearLines } from './unclear-lines';

/** Grams per litre when no other dose is typed: 0.5 % (CONTRERAS04). */
export const usualLimeGramsPerLitre = 5;
/** Taken for the water when its temperature is not typed, and said so. */
const usualCelsius = 20;

/**
 * Lime for the volume of the bath at the wanted dose, and what the lime put in does at that temperature: how much
 * dissolves, what stays as reserve, the pH to expect. A pH read is questioned above saturation + 0.2.
 */
export function limeSum(input: SumInput): SumAnswer {
  const { words, reader } = input;
  const entries = readEntries(input);
  const write = sumFormat(reader);
  const water = entries.volume('water');
  const typedLime = entries.mass('lime');
  const wanted = entries.number('plan.gramsPerLitre') ?? usualLimeGramsPerLitre;
  const celsius = entries.celsius('plan.waterCelsius');
  const ph = entries.number('plan.ph');
  const lines: SumLine[] = [];
  const needed = water === null ? null : limeForBath(water, wanted);
  if (water !== null && needed?.kind === 'value')
    lines.push({
      key: 'limeNeeded',
      text: fillWords(words.limeNeeded, {
        volume: write.volume(water),
        dose: write.gramsPerLitre(wanted),
        mass: write.mass(needed.value),
      }),
    });
  const lime = typedLime ?? (needed?.kind === 'value' ? needed.value : null);
  if (water !== null && lime !== null) lines.push(...doseLines(input, water, lime, celsius));
  if (ph !== null) lines.push(...phLines(input, ph, celsius));
  const carry =
    lime === null || water === null
      ? undefined
      : {
          methodKind: 'cold_lime_soak',
          water: numberFieldText(water, reader.locale, 3),
          water__unit: 'L',
          lime: String(Math.round(lime)),
          lime__unit: 'g',
        };
  return { lines: [...lines, ...unclearLines(entries, words)], ...(carry ? { carry } : {}) };
}

function doseLines(
  { words, reader }: SumInput,
  water: number,
  lime: number,
  typed: number | null,
): SumLine[] {
  const write = sumFormat(reader);
  const celsius = typed ?? usualCelsius;
  const dose = limeDose(lime, water, celsius);
  if (dose.kind !== 'value')
    return dose.reason === 'outside-table'
      ? [{ key: 'limeOutside', text: words.limeOutside, tone: 'watch' }]
      : [];
  const { gramsPerLitre, dissolvedGramsPerLitre, reserveGramsPerLitre, expectedPh } = dose.value;
  const values = {
    mass: write.mass(lime),
    dose: write.gramsPerLitre(gramsPerLitre),
    dissolved: write.gramsPerLitre(dissolvedGramsPerLitre),
    reserve: write.gramsPerLitre(reserveGramsPerLitre),
    temperature: write.temperature(celsius),
    ph: expectedPh === null ? '' : write.number(Math.round(expectedPh * 100) / 100),
  };
  const assumed: SumLine[] =
    typed === null ? [{ key: 'limeAssumed', text: fillWords(words.limeAssumed, values) }] : [];
  if (expectedPh !== null)
    return [{ key: 'limeReserve', text: fillWords(words.limeReserve, values) }, ...assumed];
  const solubility = limeSolubility(celsius);
  const least = solubility.kind === 'value' ? solubility.value : 0;
  return [
    {
      key: 'limeNoReserve',
      text: fillWords(words.limeNoReserve, {
        ...values,
        solubility: write.gramsPerLitre(least),
        least: write.mass(Math.ceil(least * water) + 1),
      }),
      tone: 'watch',
    },
    ...assumed,
  ];
}

function phLines({ words, reader }: SumInput, ph: number, celsius: number | null): SumLine[] {
  const write = sumFormat(reader);
  const question = questionPh(ph, celsius, limeWindowDefault);
  if (question === null) return [{ key: 'phFits', text: fillWords(words.phFits, { ph: write.number(ph) }) }];
  const sentence = {
    impossible: words.phImpossible,
    'above-saturation': words.phAbove,
    'very-high': words.phAbove,
    'below-window': words.phBelow,
  }[question.code];
  const values = { ph: write.number(ph), limit: write.number(Math.round(question.limitPh * 100) / 100) };
  return [{ key: 'ph', text: fillWords(sentence, values), tone: 'watch' }];
}
