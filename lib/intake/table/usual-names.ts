import type { MethodKind } from '@/lib/growing/vocabulary';

/** What growers call a way of treating, shorter than its name, English and Spanish. */
export const usualMethodNames: Readonly<Record<MethodKind, readonly string[]>> = {
  hot_water_bath: [
    ...['hot water', 'hot bath', 'hot water pasteurisation', 'hot water pasteurization', 'scalded'],
    ...['agua caliente', 'bano caliente', 'pasteurizado en agua caliente', 'escaldado'],
  ],
  cold_lime_soak: [
    ...['lime', 'lime soak', 'lime bath', 'lime water', 'cold lime', 'hydrated lime'],
    ...['cal', 'cal hidratada', 'agua de cal', 'agua con cal', 'remojo en cal', 'encalado'],
  ],
  cold_ferment: [
    ...['fermentation', 'fermented', 'cold fermentation', 'cold water'],
    ...['fermentacion', 'fermentado', 'fermentacion en frio', 'agua fria'],
  ],
  steam: ['steam', 'steamed', 'vapor', 'al vapor'],
  untreated: ['untreated', 'no treatment', 'not treated', 'raw', 'sin tratamiento', 'sin tratar', 'crudo'],
};

/** A name of a mushroom without the word that only says that it is one: "Oyster mushroom" is "Oyster". */
export function shortSpeciesNames(names: readonly string[]): readonly string[] {
  return names.flatMap((name) => {
    const short = name
      .replace(/\s+mushrooms?$/i, '')
      .replace(/^(seta|setas|hongo|hongos)\s+(?!del?\s)/i, '')
      .trim();
    return short === '' || short === name ? [] : [short];
  });
}
