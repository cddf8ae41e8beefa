import type { Question } from '@/lib/base/result';
import type { Language } from '@/lib/database/generated/enums';
import { checkSuitability } from '@/lib/growing/check-suitability';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import type { ResolvedBatch, ResolvedComponent } from './resolve-batch';

const codes = {
  material: { code: 'material-unsuited', field: 'lotId' },
  method: { code: 'method-unsuited', field: 'treatment' },
  'material-method': { code: 'material-method-unsuited', field: 'treatment' },
} as const;

/**
 * Asks about a material or treatment that does not suit the species (common practice): the network's own word on
 * lime goes before the default tables, and a species of the network's own has no table.
 */
export function suitabilityQuestions({ species, components }: ResolvedBatch, language: Language): Question[] {
  const table = speciesDefaults.find(({ code }) => code === species.code) ?? { materials: [], methods: [] };
  const name = language === 'es' ? species.nameEs : species.nameEn;
  const ask = ({ input, lot, method }: ResolvedComponent, index: number): Question[] => {
    if (input.role === 'additive') return [];
    const lime = method.kind === 'cold_lime_soak';
    const warnings = checkSuitability(
      { materials: input.role === 'substrate' ? table.materials : [], methods: lime ? [] : table.methods },
      lot.material.kind,
      method.kind,
    ).filter(({ verdict }) => verdict === 'unsuited');
    const questions = warnings.map(({ subject, reason }): Question => {
      const { code, field } = codes[subject];
      const values = { species: name, reason: reason[language] };
      return { field: `components.${index}.${field}`, code, values };
    });
    const notBorne = {
      field: `components.${index}.treatment`,
      code: 'lime-not-borne',
      values: { species: name },
    };
    return lime && !species.limeTolerant ? [notBorne, ...questions] : questions;
  };
  return components.flatMap(ask);
}
