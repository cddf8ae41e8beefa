/**
 * The published sources that default values and check values of this module name, by short key.
 * A key stands beside every figure that was read in that source; anything without a key is common practice.
 */
export const sources = {
  ADJAPONG15: 'Adjapong et al. 2015, Advances in Agriculture, 213251',
  AGUILAR17: 'Aguilar-Rivera et al. 2017, InTech, doi 10.5772/intechopen.69071',
  AJIS24: 'Ajis, Tan & Chai 2024, Fungal Biology 128(7):2197-2206, doi 10.1016/j.funbio.2024.09.005',
  AJONINA12: 'Ajonina & Tatah 2012, trial of oyster mushroom in Cameroon',
  AKHTAR: 'Akhtar, Khan & Rahim, spent coffee grounds with agricultural wastes for Pleurotus pulmonarius',
  AKHTER17: 'Akhter, Chowdhury & Aminuzzaman 2017, Scholars J Agric Vet Sci 4(11):464-471',
  AKHTER18: 'Akhter & Chowdhury 2018, effect of steam pasteurization of substrate on Pleurotus ostreatus',
  ARGAW23: 'Argaw et al. 2023, Int J Agronomy, 8013491, doi 10.1155/2023/8013491',
  ATILA16: 'Atila 2016, J Agricultural Studies 4(4), doi 10.5296/jas.v4i4.10051',
  BATES56: 'Bates, Bower & Smith 1956, J Res NBS 56(6):305-312, doi 10.6028/jres.056.040',
  BEF10: 'Biomass Energy Foundation 2010, moisture on wet and dry basis',
  BRUHN09: 'Bruhn, Mihail & Pickens 2009, Bioresource Technology 100(24):6472-6480',
  COFFEEHUSK: 'Trial of four Pleurotus species on coffee husk and parchment',
  CONTRERAS04: 'Contreras et al. 2004, J Hort Sci Biotech 79(2):234-240',
  ECHO33: 'ECHO Asia Note 33, solar pasteurisation of mushroom substrate',
  FIA: 'USDA Forest Service, FIA reference species table; Miles & Smith 2009, Research Note NRS-38',
  FOODON: 'FoodOn release 2025-02-18, NCBI Taxonomy identifiers',
  GRIMM24: 'Grimm, Sonntag & Rahmann 2024, J Microbiol Biotech Food Sci 13(5), doi 10.55251/jmbfs.10428',
  HERICIUM25: 'Horticulturae 2025, 11(10), 1220, Hericium erinaceus with wood replaced by straw',
  HJ1147: 'HJ 1147-2020, water quality, determination of pH, buffer table',
  IJA21: 'Int J Agronomy 2021, 9962285, oyster mushroom on cotton waste and mixes',
  IJBSM: 'Hisar trial 2020-21 of straw pasteurisation, Int J Bio-resource Stress Management, art. 4291',
  INFONET: 'Infonet-Biovision, mushroom diseases',
  JARAMILLO13: 'Jaramillo Mejia & Alberto 2013, Rev Iberoam Micol 30(2):125-129',
  MUSHROOM_INSTITUTE: 'American Mushroom Institute, disease pages',
  NAJM22: 'Najm & Alqaisi 2022, Bionatura 7(2):45',
  NASIR: 'Nasir et al., Ukrainian J Ecology, maize residues and sawdust for Pleurotus sapidus',
  OLIVE20: 'Scientifica 2020, 3950357, oyster mushroom on olive pruning residues',
  PAGOSO23: 'Pagoso & dela Cruz 2023, Asian Mycological Congress, abstract',
  PENN_STATE: 'Penn State Extension, Cultivation of Oyster Mushrooms',
  SANCHEZ_SH: 'Sanchez, Moreno Ruiz & Andrade Gallegos, 7th ICMBMP, self-heating pasteurisation',
  SIF23: 'Studies in Fungi 2023, 8, doi 10.48130/SIF-2023-0007, lignocellulosic wastes for oyster mushroom',
  SUST22: 'Akter et al. 2022, Sustainability, agro-industrial wastes for oyster mushrooms',
  UKY_FOR82: 'University of Kentucky FOR-82, shiitake log moisture (Hill 2011)',
  UKY_FOR85: 'University of Kentucky FOR-85, shiitake on logs',
  WASTEPAPER: 'Trial of oyster mushroom on waste paper with peat, chicken manure and rice husk',
  WINECAP06: 'University of Missouri 2006, Wine-cap stropharia: a new mushroom for Missouri (abstract)',
  WINOHGA18: 'Win & Ohga 2018, Advances in Microbiology 8:778-789',
  WUEST70: 'Wuest, Baker & Conway 1970, Phytopathology 60:1274-1275',
  ZIM_MANUAL: 'Zimbabwean oyster mushroom growing manual',
} as const;

export type SourceKey = keyof typeof sources;

/** Where a default comes from. `published` lists the sources read; `common_practice` has none. */
export type Basis =
  | { readonly kind: 'published'; readonly sources: readonly SourceKey[] }
  | { readonly kind: 'common_practice' };

export const commonPractice: Basis = { kind: 'common_practice' };

export function published(...keys: readonly SourceKey[]): Basis {
  return { kind: 'published', sources: keys };
}
