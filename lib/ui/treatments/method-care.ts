import type { MethodKind } from '@/lib/growing/vocabulary';

type Care = 'lime' | 'heat' | 'burner' | 'lifting' | 'disposal';

/** The dangers of each method, said where the step is taken: keys of `treatments.care`. */
export const careOf: Readonly<Record<MethodKind, readonly Care[]>> = {
  hot_water_bath: ['heat', 'burner', 'lifting'],
  cold_lime_soak: ['lime', 'disposal', 'lifting'],
  cold_ferment: ['lifting'],
  steam: ['heat', 'burner', 'lifting'],
  untreated: [],
};
