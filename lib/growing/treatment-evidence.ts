import type { LocalText } from './local-text';
import type { SourceKey } from './sources';
import type { MethodKind } from './vocabulary';

/** One published treatment with what it reported, shown beside a method's window. */
export type TreatmentEvidence = {
  readonly method: MethodKind;
  readonly conditions: LocalText;
  readonly outcome: LocalText;
  readonly source: SourceKey;
};

function row(
  method: MethodKind,
  source: SourceKey,
  conditions: readonly [en: string, es: string],
  outcome: readonly [en: string, es: string],
): TreatmentEvidence {
  return {
    method,
    source,
    conditions: { en: conditions[0], es: conditions[1] },
    outcome: { en: outcome[0], es: outcome[1] },
  };
}

/**
 * Published evidence by method. It is thinner than the windows look: different materials, loads and ways to measure.
 * Cold-water fermentation has no row because no published trial with numbers was found.
 */
export const treatmentEvidence: readonly TreatmentEvidence[] = [
  row(
    'hot_water_bath',
    'AKHTER17',
    ['Rice straw, 60, 80 and 100 C for 1, 2 and 3 h', 'Paja de arroz, 60, 80 y 100 C por 1, 2 y 3 h'],
    [
      'Best at 80 C for 3 h (BE 57.44 %); untreated and 60 C most contaminated',
      'Mejor a 80 C por 3 h (EB 57.44 %); sin tratar y 60 C, los más contaminados',
    ],
  ),
  row(
    'hot_water_bath',
    'ATILA16',
    ['60 and 80 C, times not shown', '60 y 80 C, tiempos no indicados'],
    ['BE 46.92 % at 60 C, 90.83 % at 80 C', 'EB 46.92 % a 60 C, 90.83 % a 80 C'],
  ),
  row(
    'hot_water_bath',
    'IJBSM',
    ['Wheat and paddy straw, 70 C for 20 min', 'Paja de trigo y de arroz, 70 C por 20 min'],
    [
      'Lowest counts of bacteria and fungi of the treatments tried',
      'Los conteos más bajos de bacterias y hongos',
    ],
  ),
  row(
    'hot_water_bath',
    'ZIM_MANUAL',
    [
      '70 C held for 1.5 h, cooled to 25 C or less, spawned at 70 % moisture',
      '70 C por 1.5 h, enfriar a 25 C o menos, sembrar a 70 % de humedad',
    ],
    ['Practice of the manual', 'Práctica del manual'],
  ),
  row(
    'hot_water_bath',
    'JARAMILLO13',
    ['Wheat straw, immersion in hot water', 'Paja de trigo, inmersión en agua caliente'],
    [
      'BE 75.83 %, lowest of four treatments; at least 20 % below steam, chemical or untreated',
      'EB 75.83 %, la más baja de cuatro; al menos 20 % menos que vapor, químico o sin tratar',
    ],
  ),
  row(
    'hot_water_bath',
    'WUEST70',
    ['Aerated steam in soil, 54.4 C for 30 min', 'Vapor aireado en suelo, 54.4 C por 30 min'],
    [
      'Trichoderma viride and four others not recovered',
      'Trichoderma viride y otros cuatro no se recuperaron',
    ],
  ),
  row(
    'cold_lime_soak',
    'CONTRERAS04',
    ['0.5 % lime in water (5 g/L), 0-48 h, no heat', 'Cal al 0.5 % en agua (5 g/L), 0-48 h, sin calor'],
    [
      'BE 37.3-126 %; no fungal contamination; bacteria present',
      'EB 37.3-126 %; sin contaminación de hongos; con bacterias',
    ],
  ),
  row(
    'cold_lime_soak',
    'GRIMM24',
    ['Bath with hydrated lime', 'Baño con cal hidratada'],
    [
      'As little as 270 kJ per kg dry substrate, but much water',
      'Apenas 270 kJ por kg de sustrato seco, pero mucha agua',
    ],
  ),
  row(
    'steam',
    'SANCHEZ_SH',
    ['90 C for 1 h (control treatment)', '90 C por 1 h (tratamiento testigo)'],
    [
      'Control of the self-heating trial (BE 70.5-88.1 %)',
      'Testigo del ensayo de autocalentamiento (EB 70.5-88.1 %)',
    ],
  ),
  row(
    'steam',
    'AKHTER18',
    ['Steam for 2-5 h against autoclave and none', 'Vapor por 2-5 h frente a autoclave y nada'],
    [
      'Spawn run 0.96 cm per day after 3 h, 0.36 untreated; 49 fruit bodies per packet after 5 h, 20 untreated',
      'Avance 0.96 cm por día tras 3 h, 0.36 sin tratar; 49 setas por bolsa tras 5 h, 20 sin tratar',
    ],
  ),
  row(
    'steam',
    'AJONINA12',
    ['Bags at 100 C for 5 h, cooled 6 h', 'Bolsas a 100 C por 5 h, enfriadas 6 h'],
    ['Practice of the trial', 'Práctica del ensayo'],
  ),
  row(
    'untreated',
    'AKHTER17',
    ['Rice straw, untreated', 'Paja de arroz sin tratar'],
    ['More contaminated packets than at 80 and 100 C', 'Más bolsas contaminadas que a 80 y 100 C'],
  ),
  row(
    'untreated',
    'AKHTER18',
    ['Untreated packets', 'Bolsas sin tratar'],
    ['29 days to full colonisation against 7 autoclaved', '29 días hasta colonizar frente a 7 con autoclave'],
  ),
];
