import type { Question } from '@/lib/base/result';
import type { Language } from '@/lib/database/generated/enums';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import type { ResolvedBatch } from './resolve-batch';

/**
 * Asks about a material or treatment that does not suit the species (common practice): the network's own word on
 * lime goes before the default tables, and a species of the network's own has no table.
 */
export function suitabilityQuestions({ species, components }: ResolvedBatch, language: Language): Question[] {
  const table = speciesDefaults.find(({ code }) => code === species.code);
  const name = language === 'es' ? species.nameEs : species.nameEn;
  const questions: Question[] = [];
  for (const [index, { input, lot, method }] of components.entries()) {
    if (input.role === 'additive') continue;
    const field = `components.${index}`;
    if (method.kind === 'cold_lime_soak' && !species.limeTolerant) {
      questions.push({ field: `${field}.treatment`, code: 'lime-not-borne', values: { species: name } });
    } else {
      const treated = table?.methods.find((row) => row.method === method.kind && row.verdict === 'unsuited');
      if (treated && method.kind !== 'cold_lime_soak')
        questions.push({
          field: `${field}.treatment`,
          code: 'method-unsuited',
          values: { species: name, reason: treated.reason[language] },
        });
    }
    const material = table?.materials.find(
      (row) => row.material === lot.material.kind && row.verdict === 'unsuited',
    );
    if (material && input.role === 'substrate')
      questions.push({
        field: `${field}.lotId`,
        code: 'material-unsuited',
        values: { species: name, reason: material.reason[language] },
      });
  }
  return questions;
}
