import { describe, expect, it } from 'vitest';
import { materialMethodDefaults } from '@/lib/growing/material-method-suitability';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import type { SumFacts, SumReader } from '@/lib/ui/sums/sum-input';
import { type SumKind, workOut } from '@/lib/ui/sums/work-out';

const reader: SumReader = {
  locale: 'en-US',
  massUnit: 'kg',
  temperatureUnit: 'celsius',
  volumeUnit: 'litre',
  language: 'en',
};
const oyster = speciesDefaults.find(({ code }) => code === 'pleurotus_ostreatus');
const shiitake = speciesDefaults.find(({ code }) => code === 'lentinula_edodes');
if (!oyster || !shiitake) throw new Error('the defaults lack oyster or shiitake');

const facts: SumFacts = {
  containerKind: 'bag',
  lots: [
    {
      id: 'straw',
      materialId: 'wheat',
      materialKind: 'straw',
      received: { percent: 12, source: 'measured' },
    },
    {
      id: 'grounds',
      materialId: 'coffee',
      materialKind: 'coffee_grounds',
      received: { percent: null, source: 'none' },
    },
  ],
  methods: [
    { id: 'lime', kind: 'cold_lime_soak' },
    { id: 'hot', kind: 'hot_water_bath' },
  ],
  runs: [{ id: 'run1', methodId: 'hot' }],
  drained: [{ materialId: 'wheat', methodId: 'hot', percent: 70 }],
  spawnLots: [
    { id: 'sp1', code: 'OY-1' },
    { id: 'sp2', code: 'OY-2' },
  ],
  spawnLeft: [{ lotId: 'sp1', siteId: 'mill', grams: 1_000, unweighed: 1 }],
  species: [
    { id: 'oyster', name: 'Oyster mushroom' },
    { id: 'shiitake', name: 'Shiitake' },
  ],
  suitability: { oyster, shiitake },
  pairs: materialMethodDefaults,
};

/** The sentences, with plain spaces. */
function told(
  kind: SumKind,
  values: Record<string, string>,
  changes: { reader?: Partial<SumReader>; facts?: Partial<SumFacts> } = {},
): string[] {
  const own = { ...reader, ...changes.reader };
  const { lines } = workOut([kind], {
    values,
    facts: { ...facts, ...changes.facts },
    words: loadMessages(own.language).sums.lines,
    reader: own,
  });
  return lines.map(({ text }) => text.replace(/\u00a0/g, ' '));
}

describe('lime for a bath', () => {
  it('is 250 g for 50 L at 5 g/L, keeps a reserve and expects pH 12.64 at 20 C', () => {
    const lines = told('lime', { water: '50', water__unit: 'L', 'plan.waterCelsius': '20' });
    expect(lines[0]).toBe('50.0 L (13.2 gal) of water at 5 g/L takes 250 g (8.8 oz) of hydrated lime');
    // HJ 1147-2020 has 12.637 at 20 C, a handbook's table 1.65 g/L dissolved.
    expect(lines[1]).toContain(
      '1.65 g/L dissolves at 20.0 °C (68 °F), 3.35 g/L stays undissolved as reserve',
    );
    expect(lines[1]).toContain('Expect pH 12.64');
  });

  it('says "no reserve" below solubility and foretells no pH', () => {
    const lines = told('lime', { water: '15', water__unit: 'gal', lime: '59', lime__unit: 'g' });
    const reserve = lines.find((line) => line.startsWith('No reserve'));
    expect(reserve).toContain('1.04 g/L');
    expect(reserve).not.toContain('Expect');
    expect(lines).toContainEqual(expect.stringContaining('is not typed: 20.0 °C'));
  });

  it('questions a pH above saturation + 0.2 at that temperature, and not one just below it', () => {
    const at = (ph: string) => told('lime', { 'plan.ph': ph, 'plan.waterCelsius': '25' });
    expect(at('12.7')[0]).toContain('12.66 at most');
    expect(at('12.6')[0]).toContain('can be');
    expect(at('11')[0]).toContain('below 12');
    expect(at('15')[0]).toBe('pH 15 cannot be');
  });

  it('says that its figures end at 50 C', () => {
    expect(told('lime', { water: '50', 'plan.waterCelsius': '60' }).at(-1)).toMatch(/0 to 50/);
  });
});

describe('heat for a bath', () => {
  const bath = { water: '100', load: '10', 'plan.startCelsius': '15', 'plan.targetCelsius': '75' };

  it('is 7.3 kWh for 100 L and 10 kg of straw from 15 to 75 C, and names its assumptions', () => {
    const lines = told('heat', bath);
    expect(lines[0]).toContain('7.3 kWh');
    expect(lines[1]).toContain('propane');
    expect(lines[1]).toContain('45 %');
    expect(lines[2]).toContain('12 %');
    expect(told('heat', { ...bath, 'plan.loadMoisture': '15' })).toHaveLength(2);
  });

  it('reads and writes a reader of pounds, gallons and Fahrenheit', () => {
    const lines = told(
      'heat',
      { water: '26.4', load: '22', 'plan.startCelsius': '59', 'plan.targetCelsius': '167' },
      { reader: { massUnit: 'lb', temperatureUnit: 'fahrenheit', volumeUnit: 'gallon' } },
    );
    expect(lines[0]).toContain('26.4 gal (99.9 L)');
    expect(lines[0]).toContain('167 °F (75.0 °C)');
    expect(lines[0]).toContain('7.3 kWh');
  });

  it('refuses a target above boiling', () => {
    expect(told('heat', { ...bath, 'plan.targetCelsius': '120' })[0]).toMatch(/100 °C at most/);
  });
});

describe('water to add', () => {
  it('is 19.3 L for 10 kg at 12 % to 70 %, 8.8 kg dry', () => {
    const values = { 'plan.wetMass': '10', 'plan.fromMoisture': '12', 'plan.targetMoisture': '70' };
    expect(told('water', values)[0]).toBe(
      '10 kg (22 lb 1 oz) at 12 % moisture is 8.8 kg (19 lb 6 oz) dry. To reach 70 % it takes up 19.3 L (5.1 gal) of water and weighs 29.333 kg (64 lb 11 oz).',
    );
    expect(told('water', { ...values, 'plan.fromMoisture': '80' })[0]).toContain('already wetter');
  });

  it('says that a number with two readings was not understood', () => {
    const lines = told('water', { 'plan.wetMass': '1.2.3' });
    expect(lines).toEqual([expect.stringContaining('not understood')]);
  });
});

describe('spawn, layers and volumes', () => {
  it('need 2 kg for 20 bags of 2.5 kg at 4 %', () => {
    const values = { unitCount: '20', 'plan.wetPerUnit': '2.5', 'plan.spawnPercent': '4' };
    expect(told('spawn', values)[0]).toContain('is 2 kg (4 lb 7 oz) of spawn');
    expect(told('spawn', { ...values, 'plan.spawnLeft': '1.5' })[1]).toContain(
      '500 g (1 lb 2 oz) of spawn is lacking',
    );
    expect(told('spawn', { ...values, 'plan.spawnLeft': '2.5' })[1]).toContain('Enough');
  });

  it('lay a bed of 2 by 1 m in five layers from the ground up', () => {
    const values = { 'plan.bedLength': '2', 'plan.bedLength__unit': 'm', 'plan.bedWidth': '100' };
    const lines = told('bed', values);
    expect(lines[0]).toContain('2 m² (21.5 ft²): 1.08 kg');
    expect(lines.slice(1)).toEqual([
      '1. Chips: 50.8 L (13.4 gal)',
      '2. Spawn: 540 g (1 lb 3 oz)',
      '3. Chips: 101.6 L (26.8 gal)',
      '4. Spawn: 540 g (1 lb 3 oz)',
      '5. Straw, loose: 101.6 L (26.8 gal)',
    ]);
    expect(told('bed', { ...values, 'plan.bedBottom': 'cardboard' })[1]).toBe(
      '1. Clean cardboard: a few sheets',
    );
  });

  it('measure a bucket wider at the top, and several boxes', () => {
    const bucket = {
      shape: 'bucket',
      'plan.topDiameter': '30',
      'plan.bottomDiameter': '26',
      'plan.height': '33',
    };
    // A truncated cone: pi / 12 x 33 x (30^2 + 30 x 26 + 26^2) = 20,356 cm3.
    expect(told('volume', bucket)[0]).toContain('20.4 L');
    const boxes = {
      shape: 'box',
      'plan.length': '60',
      'plan.width': '40',
      'plan.height': '20',
      unitCount: '3',
    };
    expect(told('volume', boxes)[0]).toContain('48.0 L (12.7 gal); 3 of them hold 144.0 L');
  });
});

describe('the sums of a batch form', () => {
  const straw = {
    siteId: 'mill',
    speciesId: 'oyster',
    unitCount: '20',
    'components.0.lotId': 'straw',
    'components.0.treatment': 'run:run1',
    'components.0.role': 'substrate',
    'components.0.massStage': 'before_treatment',
    'components.0.mass': '10',
    moistureSource: 'assumed',
  };

  it('show the dry mass that will be saved: 8.8 kg before treatment, or from what was filled', () => {
    expect(told('dry', straw)[0]).toContain('8.8 kg');
    const filled = {
      ...straw,
      'components.0.mass': '',
      'components.0.massStage': 'filled',
      filledMass: '29.33',
    };
    const lines = told('dry', filled);
    expect(lines[0]).toContain('8.799 kg');
    expect(lines[0]).toContain('70 % moisture');
    expect(lines[1]).toContain('assumed');
    expect(lines[2]).toContain('1.467 kg');
    expect(told('dry', { ...filled, filledMass: '' })[0]).toContain('not known yet');
  });

  it('show the water up to the usual moisture, or to the one wanted', () => {
    expect(told('material', straw)[0]).toContain('19.3 L');
    expect(told('material', { ...straw, 'plan.targetMoisture': '60' })[0]).toContain('12.0 L');
  });

  it('show the spawn for the rate, and what is left of the lot at this site', () => {
    const lines = told('batchSpawn', { ...straw, 'spawn.0.lotId': 'sp1' });
    expect(lines[0]).toContain('5 % of 29.333 kg (64 lb 11 oz) wet is 1.467 kg');
    expect(lines).toContain('OY-1: 1 kg (2 lb 3 oz) left at this site (received minus used)');
    expect(lines).toContainEqual(expect.stringContaining('1 batches took some without a mass'));
    expect(lines.at(-1)).toContain('OY-1 is 467 g');
    expect(told('batchSpawn', { ...straw, 'spawn.0.lotId': 'sp2' }).at(-1)).toContain('nobody can tell');
  });

  it('warn of what does not suit, with the reason, and of what takes care', () => {
    const limed = { ...straw, speciesId: 'shiitake', 'components.0.treatment': 'method:lime' };
    expect(told('suitability', limed)).toEqual([
      expect.stringMatching(/^This material with Shiitake does not suit: /),
      expect.stringMatching(/^This method with Shiitake does not suit: Use a lime soak only/),
    ]);
    expect(told('suitability', straw)).toEqual([]);
    expect(told('suitability', { ...limed, speciesId: 'oyster', 'components.0.lotId': 'grounds' })).toEqual([
      expect.stringMatching(/^This method with this material does not suit: Brewing/),
    ]);
    expect(told('suitability', { ...limed, 'components.0.role': 'additive' })).toEqual([]);
  });

  it('speak Spanish with its own decimal sign', () => {
    const es = { reader: { language: 'es', locale: 'es-ES' } } as const;
    const values = { water: '50,5', 'plan.waterCelsius': '20' };
    expect(told('lime', values, es)[0]).toMatch(/^50,5 L \(13,3 gal\) de agua a 5 g\/L llevan 253 g/);
  });
});
