import type { LocalText } from './local-text';
import type { MaterialSuitability, MethodSuitability, SuitabilityVerdict } from './species-default';
import type { MaterialKind, MethodKind } from './vocabulary';

/** The suitability rows of one species, the network's own or the defaults. */
export type SuitabilityTable = {
  readonly materials: readonly MaterialSuitability[];
  readonly methods: readonly MethodSuitability[];
};

/** A warning with its reason; never a refusal. */
export type SuitabilityWarning = {
  readonly subject: 'material' | 'method' | 'material-method';
  readonly verdict: Exclude<SuitabilityVerdict, 'suits'>;
  readonly reason: LocalText;
};

/** Materials and methods that do not go together whatever the species. Common practice. */
const mismatches: readonly {
  readonly material: MaterialKind;
  readonly methods: readonly MethodKind[];
  readonly reason: LocalText;
}[] = [
  {
    material: 'log_wood',
    methods: ['hot_water_bath', 'cold_lime_soak', 'cold_ferment', 'steam'],
    reason: {
      en: 'Logs are inoculated fresh and untreated; the bark keeps competitors out.',
      es: 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.',
    },
  },
  {
    material: 'coffee_grounds',
    methods: ['hot_water_bath', 'cold_lime_soak', 'cold_ferment'],
    reason: {
      en: 'Brewing has already heated the grounds, and soaked grounds hold too much water.',
      es: 'El poso ya se calentó al preparar el café, y remojado retiene demasiada agua.',
    },
  },
  {
    material: 'sawdust',
    methods: ['cold_ferment'],
    reason: {
      en: 'Sawdust packs under water and is hard to drain.',
      es: 'El aserrín se compacta bajo el agua y escurre mal.',
    },
  },
];

/**
 * Warnings for a species, material and method chosen together, each with its reason. A material or method that the
 * table does not list gives no warning. On logs the method row is not asked: they are never treated.
 */
export function checkSuitability(
  table: SuitabilityTable,
  material: MaterialKind | null,
  method: MethodKind | null,
): readonly SuitabilityWarning[] {
  const warnings: SuitabilityWarning[] = [];
  const ofMaterial = table.materials.find((row) => row.material === material);
  if (ofMaterial && ofMaterial.verdict !== 'suits') {
    warnings.push({ subject: 'material', verdict: ofMaterial.verdict, reason: ofMaterial.reason });
  }
  const ofMethod = material === 'log_wood' ? undefined : table.methods.find((row) => row.method === method);
  if (ofMethod && ofMethod.verdict !== 'suits') {
    warnings.push({ subject: 'method', verdict: ofMethod.verdict, reason: ofMethod.reason });
  }
  const clash = mismatches.find(
    (row) => row.material === material && method !== null && row.methods.includes(method),
  );
  if (clash) warnings.push({ subject: 'material-method', verdict: 'unsuited', reason: clash.reason });
  return warnings;
}
