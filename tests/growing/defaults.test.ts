import { describe, expect, it } from 'vitest';
import { assessmentWindowDefaults, otherSpeciesWindow } from '@/lib/growing/assessment-window-defaults';
import { checkSuitability } from '@/lib/growing/check-suitability';
import { contaminationSigns, lossCauses } from '@/lib/growing/contamination-signs';
import { assessmentWindowFor, expectedDates, nextFlushDates, timingFor } from '@/lib/growing/expected-dates';
import { materialDefaults } from '@/lib/growing/material-defaults';
import { materialMethodDefaults } from '@/lib/growing/material-method-suitability';
import { methodDefaults } from '@/lib/growing/method-defaults';
import { sources } from '@/lib/growing/sources';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { suitabilityDefaults } from '@/lib/growing/suitability-defaults';
import { treatmentEvidence } from '@/lib/growing/treatment-evidence';
import {
  containerKinds,
  contaminationSignKinds,
  lossCauseKinds,
  materialKinds,
  methodKinds,
} from '@/lib/growing/vocabulary';

const species = (code: string) => {
  const found = speciesDefaults.find((one) => one.code === code);
  if (!found) throw new Error(`no species ${code}`);
  return found;
};

/** Every English text of a table with its Spanish one. */
function texts(value: unknown): readonly { en: string; es: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('en' in value && 'es' in value) return [{ en: String(value.en), es: String(value.es) }];
  return Object.values(value).flatMap(texts);
}

describe('species defaults', () => {
  it('are at least nine, each with a code of its own', () => {
    expect(speciesDefaults.length).toBeGreaterThanOrEqual(9);
    expect(new Set(speciesDefaults.map((one) => one.code)).size).toBe(speciesDefaults.length);
  });

  it('carry the taxon ids that FoodOn 2025-02-18 shows, and none where it shows none', () => {
    expect(Object.fromEntries(speciesDefaults.map((one) => [one.scientificName, one.ncbiTaxonId]))).toEqual({
      'Pleurotus ostreatus': 5322,
      'Pleurotus pulmonarius': 28995,
      'Pleurotus citrinopileatus': 98342,
      'Pleurotus djamor': 34470,
      'Hypsizygus ulmarius': 71891,
      'Pleurotus eryngii': 5323,
      'Lentinula edodes': 5353,
      'Hericium erinaceus': 91752,
      'Grifola frondosa': 5627,
      'Pholiota nameko': 61267,
      'Cyclocybe aegerita': 1973307,
      'Stropharia rugosoannulata': null,
      'Agaricus subrufescens': null,
      'Volvariella volvacea': 36659,
    });
  });

  it.each(speciesDefaults.map((one) => [one.code, one] as const))(
    '%s: ranges and tables hold together',
    (_code, one) => {
      for (const row of one.timing) {
        for (const range of [
          row.colonisedDays,
          row.pinsDays,
          row.firstHarvestDays,
          row.betweenFlushesDays,
          row.flushes,
        ]) {
          if (range) expect(range.from).toBeLessThanOrEqual(range.to);
        }
        if (row.pinsDays) expect(row.pinsDays.from).toBeLessThanOrEqual(row.firstHarvestDays.from);
        for (const container of row.containers) {
          const window = assessmentWindowDefaults.find(
            (entry) => entry.speciesCode === one.code && entry.container === container,
          );
          expect(window, `${one.code} ${container}`).toBeDefined();
          expect(window?.yieldDays).toBeGreaterThan(row.firstHarvestDays.to);
        }
      }
      const lime = one.methods.find((row) => row.method === 'cold_lime_soak');
      expect(lime?.verdict).toBe(one.limeTolerant ? 'suits' : 'unsuited');
      expect(one.materials.some((row) => row.verdict === 'suits')).toBe(true);
    },
  );
});

describe('the other defaults', () => {
  it('have codes of their own and cover every method and sign', () => {
    expect(new Set(materialDefaults.map((one) => one.code)).size).toBe(materialDefaults.length);
    expect(methodDefaults.map((one) => one.kind)).toEqual([...methodKinds]);
    expect(contaminationSigns.map((one) => one.sign)).toEqual([...contaminationSignKinds]);
    expect(lossCauses.map((one) => one.cause)).toEqual([...lossCauseKinds]);
    expect(new Set(materialDefaults.map((one) => one.kind))).toEqual(new Set(materialKinds));
    expect(Object.keys(otherSpeciesWindow).sort()).toEqual([...containerKinds].sort());
  });

  it('hold only moistures that can be, and wetter after draining than as received', () => {
    for (const material of materialDefaults) {
      const received = material.asReceivedMoistureWetPercent;
      for (const drained of Object.values(material.drainedMoistureWetPercent)) {
        expect(drained).toBeGreaterThanOrEqual(received ?? 0);
        expect(drained).toBeLessThan(85);
      }
    }
  });

  it('windows are within one species and container once, contamination before yield', () => {
    const keys = assessmentWindowDefaults.map((row) => `${row.speciesCode} ${row.container}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const row of assessmentWindowDefaults) {
      expect(row.contaminationDays).toBeLessThan(row.yieldDays);
      expect(speciesDefaults.some((one) => one.code === row.speciesCode)).toBe(true);
    }
  });

  it('say everything in both languages', () => {
    const all = texts([
      speciesDefaults,
      materialDefaults,
      methodDefaults,
      contaminationSigns,
      lossCauses,
      treatmentEvidence,
    ]);
    expect(all.length).toBeGreaterThan(200);
    for (const text of all) {
      expect(text.en.trim()).not.toBe('');
      expect(text.es.trim()).not.toBe('');
    }
  });

  it('show no evidence for cold-water fermentation, because none is published', () => {
    expect(treatmentEvidence.filter((row) => row.method === 'cold_ferment')).toEqual([]);
    expect(new Set(treatmentEvidence.map((row) => row.method)).size).toBe(4);
    for (const row of treatmentEvidence) expect(sources[row.source]).toBeTruthy();
  });
});

describe('suitability', () => {
  const table = (code: string) => ({ ...species(code), pairs: materialMethodDefaults });

  it('warns of a lime soak for anything but oysters and the like, with the reason', () => {
    expect(checkSuitability(table('pleurotus_ostreatus'), 'straw', 'cold_lime_soak')).toEqual([]);
    const warnings = checkSuitability(table('lentinula_edodes'), 'sawdust', 'cold_lime_soak');
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ subject: 'method', verdict: 'unsuited' });
    expect(warnings[0]?.reason.en).toMatch(/only for oysters/);
  });

  it('knows shiitake on hardwood logs, wine cap on chips, oysters on coffee grounds', () => {
    expect(checkSuitability(table('lentinula_edodes'), 'log_wood', 'untreated')).toEqual([]);
    expect(checkSuitability(table('stropharia_rugosoannulata'), 'wood_chips', 'untreated')).toEqual([]);
    expect(checkSuitability(table('pleurotus_ostreatus'), 'coffee_grounds', 'steam')).toEqual([]);
    expect(checkSuitability(table('lentinula_edodes'), 'straw', 'steam')[0]?.subject).toBe('material');
  });

  it('warns of a treated log and of soaked coffee grounds whatever the species', () => {
    expect(checkSuitability(table('lentinula_edodes'), 'log_wood', 'steam')[0]?.subject).toBe(
      'material-method',
    );
    expect(checkSuitability(table('pleurotus_ostreatus'), 'coffee_grounds', 'hot_water_bath')).toHaveLength(
      1,
    );
  });

  it('is silent where the table says nothing', () => {
    expect(checkSuitability({ materials: [], methods: [], pairs: [] }, 'straw', 'steam')).toEqual([]);
    expect(checkSuitability(table('pleurotus_ostreatus'), null, null)).toEqual([]);
  });

  it('lists each pair of species, material and method once, with a reason in both languages', () => {
    const keys = suitabilityDefaults.map((row) => [row.speciesCode, row.material, row.method].join(' '));
    expect(new Set(keys).size).toBe(keys.length);
    for (const row of suitabilityDefaults) {
      expect([row.speciesCode, row.material, row.method].filter((one) => one === null)).toHaveLength(1);
      expect(row.reason.en && row.reason.es).toBeTruthy();
    }
  });
});

describe('expected dates', () => {
  const bag = timingFor(species('pleurotus_ostreatus').timing, 'bag');

  it('count from inoculation and from the last picking', () => {
    expect(bag).not.toBeNull();
    if (!bag) return;
    const dates = expectedDates('2026-04-01', bag);
    expect(dates.colonised).toEqual({ from: '2026-04-13', to: '2026-04-26' });
    expect(dates.firstHarvest).toEqual({ from: '2026-04-22', to: '2026-05-11' });
    expect(nextFlushDates('2026-05-01', bag)).toEqual({ from: '2026-05-08', to: '2026-05-15' });
  });

  it('fall back to the container for a species without a row', () => {
    expect(assessmentWindowFor('pleurotus_ostreatus', 'bag')).toEqual({
      contaminationDays: 28,
      yieldDays: 90,
    });
    expect(assessmentWindowFor('pleurotus_sapidus', 'bag')).toEqual(otherSpeciesWindow.bag);
    expect(timingFor(species('pleurotus_ostreatus').timing, 'bed')).toBeNull();
  });
});
