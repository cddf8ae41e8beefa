import type { Actor } from '@/lib/access/actor';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import { listChoices, type NetworkChoices } from '@/lib/records/network/list-choices.query';
import { addSite } from '@/lib/records/site/add-site.command';
import { addSiteInput } from '@/lib/records/site/site.input';
import { makeNetwork, storyZone } from '@/seed/write/make-network';
import { enter } from './enter';

export type TrialNetwork = {
  readonly coordinator: Actor;
  readonly siteId: string;
  readonly choices: NetworkChoices;
};

/** Codes of what the trials need beyond a new network's defaults. */
export const asPublished = 'as_published';

/** A network of the trials' own, with the species, material and method that the defaults lack. */
export async function makeTrialNetwork(): Promise<TrialNetwork> {
  const coordinator = await makeNetwork({
    name: 'Published trials',
    code: 'trials',
    coordinator: { name: 'Linnet Hartwood', email: 'linnet@trials.example' },
    password: 'wooden crate on a long bench',
  });
  const site = await enter(coordinator, addSiteInput, addSite, {
    code: 'PAPERS',
    name: 'As published',
    kind: 'other',
    timeZone: storyZone,
    trimDefault: 'as_picked',
  });
  await writeAs(coordinator, {}, async ({ db, actor: { networkId } }) => {
    const row = () => ({ networkId, id: newId() });
    const name = { nameEn: 'As its source names it', nameEs: 'Como lo nombra su fuente' };
    await db.material.create({ data: { ...row(), code: asPublished, ...name, kind: 'other' } });
    await db.method.create({ data: { ...row(), code: asPublished, ...name, kind: 'untreated' } });
    const scientificName = 'Pleurotus sapidus';
    await db.species.create({
      data: {
        ...{ ...row(), code: 'pleurotus_sapidus', scientificName },
        ...{ nameEn: scientificName, nameEs: scientificName },
      },
    });
    return ok(null);
  });
  return { coordinator, siteId: site.id, choices: await readAs(coordinator, listChoices) };
}
