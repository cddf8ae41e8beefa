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

/** The sentences of a sum of a form that holds these values, with plain spaces. */
export function told(
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
