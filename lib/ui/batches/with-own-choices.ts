import type { Language } from '@/lib/database/generated/enums';
import type { BatchView } from '@/lib/records/batch/batch-view';
import type { ChoiceOption } from '../form/field-spec';
import type { StartOptions } from './start-options';

function withMissing(options: readonly ChoiceOption[], own: readonly ChoiceOption[]): ChoiceOption[] {
  const known = new Set(options.map(({ value }) => value));
  return [
    ...options,
    ...own.filter(({ value }, at) => !known.has(value) && own.findIndex((one) => one.value === value) === at),
  ];
}

/** The lists of the batch form with what the batch itself names, which may be too old to be offered. */
export function withOwnChoices(options: StartOptions, batch: BatchView, language: Language): StartOptions {
  const { components, spawn } = batch;
  return {
    ...options,
    sites: options.sites.some(({ id }) => id === batch.siteId)
      ? options.sites
      : [...options.sites, { id: batch.siteId, name: batch.siteName }],
    species: withMissing(options.species, [{ value: batch.speciesId, label: batch.species[language] }]),
    lots: withMissing(
      options.lots,
      components.map((one) => ({ value: one.lotId, label: `${one.material[language]} · ${one.lotCode}` })),
    ),
    treatments: withMissing(
      options.treatments,
      components.map((one) => ({
        value: one.runId === null ? `method:${one.methodId}` : `run:${one.runId}`,
        label: one.runCode === null ? one.method[language] : `${one.method[language]} · ${one.runCode}`,
      })),
    ),
    spawn: withMissing(
      options.spawn,
      spawn.map(({ lotId, lotCode }) => ({ value: lotId, label: lotCode })),
    ),
  };
}
