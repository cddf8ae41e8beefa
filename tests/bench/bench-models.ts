import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { type BinomialMixedFit, fitBinomialMixed } from '../../lib/stats/mixed/binomial/fit-binomial';
import { fitLinearMixed, type LinearMixedFit } from '../../lib/stats/mixed/linear/fit-linear';
import { estimated, mixedTerms } from '../reference/mixed/mixed-case';
import { type DataColumns, numbers, parseFormula } from '../reference/mixed/model-formula';
import { modelColumns, readNetwork } from '../reference/mixed/network-data';

/** A model to time: the same data and formula for the library and for R. */
export type BenchModel = {
  readonly name: string;
  /** R's formula; binomial ones begin with cbind(events, trials - events). */
  readonly formula: string;
  readonly data: DataColumns;
};

const referenceFile = z.object({
  cases: z.array(z.object({ id: z.string(), input: z.unknown() })),
});
const modelInput = z.object({
  formula: z.string(),
  data: z.record(z.string(), z.array(z.union([z.string(), z.number(), z.null()]))),
});

function readCases(name: string) {
  const file = new URL(`../reference/data/${name}.json`, import.meta.url);
  return referenceFile.parse(JSON.parse(readFileSync(file, 'utf8'))).cases;
}

function referenceModel(file: string, id: string): BenchModel {
  const found = readCases(file).find((own) => own.id === id);
  const { formula, data } = modelInput.parse(found?.input);
  return { name: id, formula: formula.replace(/\s+/g, ' '), data };
}

/** The models of the speed bars, from the reference data. */
export function benchModels(): BenchModel[] {
  const network = readNetwork(readCases('15_network_simulated')[0]?.input);
  const counts = modelColumns(network.closed, {
    contaminated: ({ contaminated }) => contaminated,
    units: ({ units }) => units,
  });
  const harvested = modelColumns(network.harvested, {
    be: ({ freshKg, dryKg }) => (100 * freshKg) / dryKg,
  });
  const positive = modelColumns(
    network.harvested.filter(({ freshKg }) => freshKg > 0),
    { logbe: ({ freshKg, dryKg }) => Math.log(freshKg / dryKg) },
  );
  const linear = ['sleepstudy_intercept', 'dyestuff', 'penicillin_crossed', 'pastes_nested', 'be_site_lot'];
  const contamination = 'cbind(contaminated, units - contaminated) ~ method + (1 | site) + (1 | lot)';
  return [
    referenceModel('08_glmm_binomial', 'cbpp'),
    ...linear.map((id) => referenceModel('07_lmm', id)),
    { name: 'network_be_percent', formula: 'be ~ method + (1 | site) + (1 | lot)', data: harvested },
    { name: 'network_be_log', formula: 'logbe ~ method + (1 | site) + (1 | lot)', data: positive },
    { name: 'network_contamination', formula: contamination, data: counts },
    { name: 'network_contamination_batch', formula: `${contamination} + (1 | obs)`, data: counts },
  ];
}

/** A function that fits the model from its raw columns, design included. */
export function fitter({ formula, data }: BenchModel): () => LinearMixedFit | BinomialMixedFit {
  const parsed = parseFormula(formula);
  const { fixed, random, intercept } = mixedTerms(parsed, data);
  const [, events, trials] = /^cbind\(\s*(\w+)\s*,\s*(\w+)\s*-/.exec(parsed.response) ?? [];
  if (events === undefined || trials === undefined) {
    const response = numbers(data, parsed.response);
    return () => estimated(fitLinearMixed({ response, fixed, random, intercept }));
  }
  const counts = { events: numbers(data, events), trials: numbers(data, trials) };
  return () => estimated(fitBinomialMixed({ ...counts, fixed, random, intercept }));
}
