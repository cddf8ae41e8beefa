import type { MaterialMethodSuitability } from './check-suitability';
import type { LocalText } from './local-text';
import type { MaterialKind, MethodKind } from './vocabulary';

function unsuited(
  material: MaterialKind,
  methods: readonly MethodKind[],
  reason: LocalText,
): readonly MaterialMethodSuitability[] {
  return methods.map((method) => ({ material, method, verdict: 'unsuited', reason }));
}

/** Materials and methods that do not go together whatever the species. Common practice. */
export const materialMethodDefaults: readonly MaterialMethodSuitability[] = [
  ...unsuited('log_wood', ['hot_water_bath', 'cold_lime_soak', 'cold_ferment', 'steam'], {
    en: 'Logs are inoculated fresh and untreated; the bark keeps competitors out.',
    es: 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.',
  }),
  ...unsuited('coffee_grounds', ['hot_water_bath', 'cold_lime_soak', 'cold_ferment'], {
    en: 'Brewing has already heated the grounds, and soaked grounds hold too much water.',
    es: 'El poso ya se calentó al preparar el café, y remojado retiene demasiada agua.',
  }),
  ...unsuited('sawdust', ['cold_ferment'], {
    en: 'Sawdust packs under water and is hard to drain.',
    es: 'El aserrín se compacta bajo el agua y escurre mal.',
  }),
];
