import { checkSuitability } from '@/lib/growing/check-suitability';
import { batchEntries } from './batch-entries';
import { fillWords, type SumAnswer, type SumInput } from './sum-input';

const nothing = { materials: [], methods: [] };

/**
 * What the network's table says about the species, materials and treatments chosen: what does not suit, and what
 * takes care, each with its reason.
 */
export function suitabilitySum(input: SumInput): SumAnswer {
  const batch = batchEntries(input);
  const { facts, words } = input;
  if (batch === undefined || facts === null) return { lines: [] };
  const species = facts.species.find(({ id }) => id === batch.entries.text('speciesId'));
  const ofSpecies = (species === undefined ? undefined : facts.suitability[species.id]) ?? nothing;
  const lines = batch.components
    .filter(({ role }) => role !== 'additive')
    .flatMap(({ row, role, materialKind, methodKind }) => {
      const materials = role === 'substrate' ? ofSpecies.materials : [];
      const table = { ...ofSpecies, materials, pairs: facts.pairs };
      return checkSuitability(table, materialKind, methodKind).map(({ subject, verdict, reason }) => ({
        key: `${row} ${subject}`,
        text: fillWords(verdict === 'unsuited' ? words.unsuited : words.withCare, {
          subject: fillWords(words.subjects[subject], { species: species?.name ?? '' }),
          reason: reason[input.reader.language],
        }),
        tone: 'watch' as const,
      }));
    });
  return { lines };
}
