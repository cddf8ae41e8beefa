import { describe, expect, it } from 'vitest';
import { told } from './told';

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
    expect(lines).toContainEqual(expect.stringContaining('some was taken without a mass (batches: 1)'));
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
