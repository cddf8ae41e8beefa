import { describe, expect, it } from 'vitest';
import { told } from './told';

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
