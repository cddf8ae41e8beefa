import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import type { MethodKind } from '@/lib/growing/vocabulary';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';

/** What trials of the story are made from: ids of sites, methods and lots of the network. */
export type TrialBook = {
  readonly siteIds: (codes: readonly string[]) => string[];
  readonly siteCode: (id: string) => string;
  readonly methodId: (kind: MethodKind | null) => string;
  readonly speciesId: string;
  /** The latest lot of straw received by a day, and the latest of spawn; never the lot that went bad. */
  readonly straw: (day: string) => string;
  readonly spawn: string;
};

export async function readTrialBook(coordinator: Actor, badLot: string): Promise<TrialBook> {
  const { sites, choices } = await readAs(coordinator, async (context) => ({
    sites: await listSites(context),
    choices: await listStartChoices(context),
  }));
  const species = choices.species.find(({ code }) => code === 'pleurotus_ostreatus');
  const spawn = choices.spawnLots.find((lot) => lot.speciesId === species?.id && lot.code !== badLot);
  const straw = choices.substrateLots.filter(({ material }) => material.en === 'Wheat straw');
  if (species === undefined || spawn === undefined || straw.length === 0)
    throw new Error('the story has no oyster spawn or no straw for its trials');
  return {
    siteIds: (codes) => sites.filter(({ code }) => codes.includes(code)).map(({ id }) => id),
    siteCode: (id) => sites.find((site) => site.id === id)?.code ?? '',
    methodId: (kind) =>
      kind === null ? '' : (choices.methods.find((method) => method.kind === kind)?.id ?? ''),
    speciesId: species.id,
    straw: (day) => (straw.find(({ receivedOn }) => receivedOn <= day) ?? straw.at(-1))?.id ?? '',
    spawn: spawn.id,
  };
}
