import { addDays } from '@/lib/growing/calendar-date';
import { addSite } from '@/lib/records/site/add-site.command';
import { addSiteInput } from '@/lib/records/site/site.input';
import { planBagBatch } from './plan/plan-bag-batch';
import { planSpawnLots } from './plan/plan-spawn-lots';
import type { PlannedRun } from './plan/story-plan';
import { storyStreams } from './plan/story-stream';
import { bagCrops } from './story/crops';
import { demoPassword } from './story/people';
import type { StorySite } from './story/sites';
import { addLots } from './write/add-lots';
import { inOneGo } from './write/in-one-go';
import { invite } from './write/invite';
import { makeNetwork, storyZone } from './write/make-network';
import { recordSite } from './write/record-story';

const site: StorySite = {
  code: 'SHEDS',
  name: 'Saltbrook Sheds',
  kind: 'farm',
  methods: { hot_water_bath: 1 },
  tidy: false,
  trims: false,
  grows: 'bags',
};

const days = 150;

/** A small second network, which has nothing to do with the first: nothing of either shows in the other. */
export async function seedSaltbrook(today: string) {
  const coordinator = await makeNetwork({
    name: 'Saltbrook Growers',
    code: 'saltbrook',
    coordinator: { name: 'Sorrel Vane', email: 'sorrel@saltbrook.example' },
    password: demoPassword,
  });
  const { id } = await inOneGo(coordinator, (take) =>
    take(addSiteInput, addSite, {
      code: site.code,
      name: site.name,
      kind: site.kind,
      timeZone: storyZone,
      trimDefault: 'as_picked',
    }),
  );
  const name = 'Juniper Oakes';
  const email = 'juniper@saltbrook.example';
  const member = await invite(coordinator, {
    name,
    email,
    password: demoPassword,
    role: 'member',
    siteIds: [id],
    language: 'en',
    massUnit: 'kg',
  });
  const streams = storyStreams(7);
  const start = addDays(today, -days);
  const lots = planSpawnLots(streams, start, days);
  const runs: PlannedRun[] = [];
  const state = { streams, today, start, lots, runs };
  const oysters = bagCrops.filter((crop) => crop.speciesCode === 'pleurotus_ostreatus');
  const batches = [10, 30, 55, 80, 110].flatMap((offset) =>
    planBagBatch(state, site, 0, addDays(start, offset), 2, oysters),
  );
  const book = await addLots(coordinator, lots, start, days);
  await recordSite(member, { runs, batches, lots }, book, site.code, id);
  return { role: 'member of the other network', name, email, password: demoPassword };
}
