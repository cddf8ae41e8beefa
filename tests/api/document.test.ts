import { Validator } from '@seriousme/openapi-schema-validator';
import { describe, expect, it } from 'vitest';
import { operations } from '@/lib/api/operation/operations';
import { testDatabase } from '../support/database';
import { document, takes } from './document-client';

await testDatabase();

describe('the document of the API', () => {
  it('is OpenAPI 3.1 by an independent validator', async () => {
    const validator = new Validator();
    const { valid, errors } = await validator.validate(JSON.parse(JSON.stringify(document)));
    expect(errors ?? []).toEqual([]);
    expect(valid).toBe(true);
    expect(validator.version).toBe('3.1');
  });

  it('would not be valid with an operation that has no answers', async () => {
    const broken = JSON.parse(JSON.stringify(document));
    broken.paths['/looks'].get.responses = undefined;
    broken.paths['/looks'].get.parameters = 'none';
    expect((await new Validator().validate(JSON.parse(JSON.stringify(broken)))).valid).toBe(false);
  });

  it('names each operation once', () => {
    const names = operations.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    const places = operations.map(({ method, path }) => `${method} ${path}`);
    expect(new Set(places).size).toBe(places.length);
  });

  it('writes the unit into the name of every quantity', () => {
    const weighing = { weighedOn: '2026-05-04', freshGrams: 3000, lines: [{ batchId: crypto.randomUUID() }] };
    expect(takes('createWeighings', weighing)).toBe(true);
    expect(takes('createWeighings', { ...weighing, freshGrams: undefined, fresh: 3000 })).toBe(false);
  });

  it('asks for whole grams, for what must be given, and for nothing unknown', () => {
    const weighing = { weighedOn: '2026-05-04', freshGrams: 3000 };
    expect(takes('createWeighings', { ...weighing, freshGrams: 3000.5 })).toBe(false);
    expect(takes('createWeighings', { ...weighing, freshGrams: '3 kg' })).toBe(false);
    expect(takes('createWeighings', { freshGrams: 3000 })).toBe(false);
    expect(takes('createWeighings', { ...weighing, colour: 'white' })).toBe(false);
  });
});
