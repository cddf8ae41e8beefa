import type { ContainerKind } from './vocabulary';

/**
 * Days from inoculation to which a batch is judged, per species and container. Common practice, all of them:
 * long enough for the slowest ordinary batch to have shown contamination, or to have given its crop.
 */
export type AssessmentWindowDefault = {
  readonly speciesCode: string;
  readonly container: ContainerKind;
  /** Contamination found up to and including this day counts in the headline rate. */
  readonly contaminationDays: number;
  /** Harvests up to and including this day count in BE, in kg per m2 of a bed or in g per log. */
  readonly yieldDays: number;
};

function rows(
  speciesCode: string,
  containers: readonly ContainerKind[],
  contaminationDays: number,
  yieldDays: number,
): readonly AssessmentWindowDefault[] {
  return containers.map((container) => ({ speciesCode, container, contaminationDays, yieldDays }));
}

const filled = ['bag', 'bucket', 'tray', 'block'] as const;

export const assessmentWindowDefaults: readonly AssessmentWindowDefault[] = [
  ...rows('pleurotus_ostreatus', filled, 28, 90),
  ...rows('pleurotus_ostreatus', ['log'], 365, 1460),
  ...rows('pleurotus_ostreatus', ['bed'], 90, 365),
  ...rows('pleurotus_pulmonarius', filled, 28, 90),
  ...rows('pleurotus_pulmonarius', ['log'], 365, 1460),
  ...rows('pleurotus_pulmonarius', ['bed'], 90, 365),
  ...rows('pleurotus_citrinopileatus', filled, 28, 80),
  ...rows('pleurotus_djamor', filled, 21, 70),
  ...rows('hypsizygus_ulmarius', filled, 30, 90),
  ...rows('hypsizygus_ulmarius', ['bed'], 90, 365),
  ...rows('pleurotus_eryngii', filled, 35, 100),
  ...rows('lentinula_edodes', ['log'], 365, 1825),
  ...rows('lentinula_edodes', ['bag', 'block'], 60, 200),
  ...rows('hericium_erinaceus', ['bag', 'block', 'bucket'], 35, 110),
  ...rows('hericium_erinaceus', ['log'], 365, 1825),
  ...rows('grifola_frondosa', ['bag', 'block'], 50, 130),
  ...rows('grifola_frondosa', ['log'], 365, 1825),
  ...rows('pholiota_nameko', ['bag', 'block'], 50, 150),
  ...rows('pholiota_nameko', ['log'], 365, 1825),
  ...rows('cyclocybe_aegerita', ['bag', 'block', 'bucket'], 35, 120),
  ...rows('cyclocybe_aegerita', ['log'], 365, 1825),
  ...rows('stropharia_rugosoannulata', ['bed', 'tray'], 90, 365),
  ...rows('agaricus_subrufescens', ['bed', 'tray'], 60, 180),
  ...rows('volvariella_volvacea', ['bed', 'tray'], 14, 45),
];

/** Windows for a species or container a network adds without a row of its own. Common practice. */
export const otherSpeciesWindow: Readonly<
  Record<ContainerKind, { readonly contaminationDays: number; readonly yieldDays: number }>
> = {
  bag: { contaminationDays: 30, yieldDays: 100 },
  bucket: { contaminationDays: 30, yieldDays: 100 },
  tray: { contaminationDays: 30, yieldDays: 100 },
  block: { contaminationDays: 45, yieldDays: 150 },
  bed: { contaminationDays: 90, yieldDays: 365 },
  log: { contaminationDays: 365, yieldDays: 1825 },
};
