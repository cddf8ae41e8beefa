import { compostMaterials, compostMethods } from './compost-suitability';
import { paddyStrawMaterials } from './paddy-straw-suitability';
import type { SpeciesDefault } from './species-default';
import { bedMethods, wineCapMaterials } from './wine-cap-suitability';

/** Mushrooms grown in beds on the ground, on straw piles or on compost. */
export const bedSpecies: readonly SpeciesDefault[] = [
  {
    code: 'stropharia_rugosoannulata',
    scientificName: 'Stropharia rugosoannulata',
    commonName: { en: 'Wine cap', es: 'Estrofaria' },
    ncbiTaxonId: null,
    limeTolerant: false,
    isOyster: false,
    materials: wineCapMaterials,
    methods: bedMethods,
    timing: [
      {
        containers: ['bed', 'tray'],
        colonisedDays: { from: 30, to: 60 },
        pinsDays: { from: 40, to: 110 },
        // Summer beds in Missouri fruited after 44 and 58 days; a bed laid in autumn waits for spring.
        firstHarvestDays: { from: 44, to: 240 },
        betweenFlushesDays: { from: 10, to: 30 },
        flushes: null,
        evidence: ['WINECAP06'],
      },
    ],
    colonisingCelsius: { from: 18, to: 27 },
    fruitingCelsius: { from: 12, to: 25 },
  },
  {
    code: 'agaricus_subrufescens',
    scientificName: 'Agaricus subrufescens',
    commonName: { en: 'Almond agaricus', es: 'Champiñón almendrado' },
    ncbiTaxonId: null,
    limeTolerant: false,
    isOyster: false,
    materials: compostMaterials,
    methods: compostMethods,
    timing: [
      {
        containers: ['bed', 'tray'],
        colonisedDays: { from: 17, to: 30 },
        pinsDays: { from: 35, to: 60 },
        firstHarvestDays: { from: 42, to: 75 },
        betweenFlushesDays: { from: 10, to: 20 },
        flushes: { from: 2, to: 4 },
        evidence: ['WINOHGA18'],
      },
    ],
    colonisingCelsius: { from: 22, to: 28 },
    fruitingCelsius: { from: 22, to: 30 },
  },
  {
    code: 'volvariella_volvacea',
    scientificName: 'Volvariella volvacea',
    commonName: { en: 'Paddy straw mushroom', es: 'Seta de la paja' },
    ncbiTaxonId: 36659,
    limeTolerant: false,
    isOyster: false,
    materials: paddyStrawMaterials,
    methods: compostMethods,
    timing: [
      {
        containers: ['bed', 'tray'],
        colonisedDays: { from: 5, to: 10 },
        pinsDays: { from: 8, to: 14 },
        firstHarvestDays: { from: 10, to: 20 },
        betweenFlushesDays: { from: 5, to: 10 },
        flushes: { from: 1, to: 3 },
        evidence: [],
      },
    ],
    colonisingCelsius: { from: 30, to: 35 },
    fruitingCelsius: { from: 28, to: 32 },
  },
];
