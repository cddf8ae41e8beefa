import type { Question } from '@/lib/base/result';
import type { Language } from '@/lib/database/generated/enums';
import { checkSuitability, type SuitabilityTable } from '@/lib/growing/check-suitability';
import type { ResolvedBatch, ResolvedComponent } from './resolve-batch';

const codes = {
  material: { code: 'material-unsuited', field: 'lotId' },
  method: { code: 'method-unsuited', field: 'treatment' },
  'material-method': { code: 'material-method-unsuited', field: 'treatment' },
} as const;

/**
 * Asks about a material or treatment that does not suit the species, or the other, by the network's own table. What
 * is possible with care is shown while choosing and not asked.
 */
export function suitabilityQuestions(
  { species, components }: ResolvedBatch,
  table: SuitabilityTable,
  language: Language,
): Question[] {
  const name = language === 'es' ? species.nameEs : species.nameEn;
  const ask = ({ input, lot, method }: ResolvedComponent, index: number): Question[] => {
    if (input.role === 'additive') return [];
    const asked = input.role === 'substrate' ? table : { ...table, materials: [] };
    return checkSuitability(asked, lot.material.kind, method.kind)
      .filter(({ verdict }) => verdict === 'unsuited')
      .map(({ subject, reason }) => {
        const { code, field } = codes[subject];
        return {
          field: `components.${index}.${field}`,
          code,
          values: { species: name, reason: reason[language] },
        };
      });
  };
  return components.flatMap(ask);
}
